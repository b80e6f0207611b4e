package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Why an act of a plan must be done: the chain of facts from the act to the goal.
 *
 * <p>Each link is found by leaving the act out and asking the simulator what goes wrong first.
 *
 * @param links the links in order; empty if the plan holds without the act
 */
public record Reasons(List<Link> links) {

    public Reasons {
        links = List.copyOf(links);
    }

    /**
     * One link of the chain.
     *
     * @param act place of the act in the plan, counted from 0
     * @param forAct place of the first later act that cannot be done without it; empty where the
     *     goal or a rule needs it
     * @param why what goes wrong without it, one sentence
     */
    public record Link(int act, OptionalInt forAct, String why) {}

    /**
     * Finds the chain for one act. O(n) simulations of n acts at worst.
     *
     * @param plan a valid plan
     * @param at place of the act in the plan, counted from 0
     * @throws IndexOutOfBoundsException if the plan has no such act
     */
    public static Reasons of(Plan plan, int at) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        List<Link> links = new ArrayList<>();
        OptionalInt next = OptionalInt.of(at);
        while (next.isPresent()) {
            int here = next.getAsInt();
            List<Act> without = new ArrayList<>(acts);
            without.remove(here);
            Verdict verdict =
                    Simulator.judge(
                            request.device(),
                            request.start(),
                            request.goal(),
                            request.rules(),
                            without);
            next = OptionalInt.empty();
            if (verdict.refusal().isPresent()) {
                int refused = verdict.refusal().get().index();
                next = OptionalInt.of(refused < here ? refused : refused + 1);
                links.add(new Link(here, next, verdict.refusal().get().why()));
            } else if (!verdict.valid()) {
                links.add(new Link(here, OptionalInt.empty(), verdict.sentences().get(0)));
            }
        }
        return new Reasons(links);
    }
}
