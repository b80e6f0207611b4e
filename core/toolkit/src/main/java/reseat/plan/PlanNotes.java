package reseat.plan;

import java.util.List;

/**
 * The advice for each act of a plan and of its rebuild: hazards, the unit turned while something
 * hangs or lies loose in it, latches to keep hold of, magnets, wear, handling.
 *
 * <p>Advice at one act is sorted by signal word, gravest first.
 *
 * <p>A hazard of a part is told before the act that first uncovers the part or works on it,
 * whichever is first.
 *
 * @param teardown advice for each act of the teardown, in the order of its acts
 * @param uncovers ids of the parts that each act of the teardown is the first to uncover
 * @param rebuild advice for each act of the rebuild, in the order of its acts
 */
public record PlanNotes(
        List<List<Advice>> teardown, List<List<String>> uncovers, List<List<Advice>> rebuild) {

    public PlanNotes {
        uncovers = uncovers.stream().map(List::copyOf).toList();
        teardown = teardown.stream().map(List::copyOf).toList();
        rebuild = rebuild.stream().map(List::copyOf).toList();
    }

    /** Returns the notes on a plan and its rebuild. */
    public static PlanNotes of(Plan plan, Rebuild rebuild) {
        return new NoteMaker(plan.request().device(), plan.request().start(), plan.acts())
                .make(rebuild);
    }
}
