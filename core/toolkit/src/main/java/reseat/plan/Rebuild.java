package reseat.plan;

import java.util.List;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.State;

/**
 * A teardown run backwards: parts laid aside are folded back, parts lifted off are set in place,
 * and each released joint is made again with its restore act.
 *
 * <p>Every joint that needs a supply cut is made while that supply is still cut. The plain reverse
 * of a valid plan has this property: just before such a joint was released, an isolator of the
 * supply was already open, and running backwards it is open still when the joint has been made. So
 * no act is ever moved from its place in the reverse.
 *
 * <p>Tools: screws and moves use the tool of the teardown, connectors, hooks and fits too;
 * adhesives and snaps are pressed on by hand. Set-ups and dwell are stated, never minimised.
 *
 * @param acts the acts in order
 * @param fastenings screws that go in together, in order; every screw of the rebuild with a seat is
 *     in exactly one
 * @param tests what to test, in the order in which it is to be done
 * @param consumables what is used up, added up by consumable and unit, in order of first use
 * @param spares what to have in stock
 * @param wear joints with a limited number of cycles, in order
 * @param leftOpen joints that were already released when the teardown began; the rebuild leaves
 *     them open
 * @param leftApart parts that lay apart when the teardown began; the rebuild does not put them back
 */
public record Rebuild(
        Device device,
        List<RebuildAct> acts,
        List<Fastening> fastenings,
        List<PlacedTest> tests,
        List<ConsumableUse> consumables,
        List<SpareNeed> spares,
        List<Wear> wear,
        List<String> leftOpen,
        List<String> leftApart) {

    public Rebuild {
        acts = List.copyOf(acts);
        fastenings = List.copyOf(fastenings);
        tests = List.copyOf(tests);
        consumables = List.copyOf(consumables);
        spares = List.copyOf(spares);
        wear = List.copyOf(wear);
        leftOpen = List.copyOf(leftOpen);
        leftApart = List.copyOf(leftApart);
    }

    /** Returns the rebuild of a plan. */
    public static Rebuild of(Plan plan) {
        PlanRequest request = plan.request();
        List<String> targets =
                request.goal() instanceof Goal.Free free ? free.targets() : List.of();
        return of(request.device(), request.start(), plan.acts(), targets);
    }

    /**
     * Returns the rebuild of acts that were carried out, from any source.
     *
     * @param start where the unit stood before
     * @param acts valid acts in order
     * @param targets parts that may be replaced
     */
    public static Rebuild of(
            Device device, State start, List<CostedAct> acts, List<String> targets) {
        return new RebuildMaker(device, start, acts).make(targets);
    }

    /** Returns the time of the acts; it is part of the cost of the plan. */
    public long restoreMs() {
        return acts.stream().mapToLong(RebuildAct::ms).sum();
    }

    /** Returns the time of the set-ups; it is not part of the cost. */
    public long setupMs() {
        return acts.stream().mapToLong(RebuildAct::setupMs).sum();
    }

    /** Returns the waiting times, one after the other; they are not part of the cost. */
    public long dwellMs() {
        return acts.stream().mapToLong(RebuildAct::dwellMs).sum();
    }
}
