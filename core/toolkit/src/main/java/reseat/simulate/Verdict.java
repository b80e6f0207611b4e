package reseat.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.CostedAct;
import reseat.model.State;

/**
 * The simulator's verdict on a sequence of acts.
 *
 * @param refusal the first act that is not allowed; empty if all are
 * @param steps the acts that were carried out: all of them, or those before the refused one
 * @param end the state of the unit after these; places other than that of the base, in the order of
 *     the device file
 * @param goalMissing one sentence on what the goal still lacks at the end; empty if it holds, or if
 *     no goal was given
 * @param breaches forbidden things that were done, in the order of the acts, then required things
 *     that are missing
 */
public record Verdict(
        Optional<Refusal> refusal,
        List<Step> steps,
        State end,
        Optional<String> goalMissing,
        List<Breach> breaches) {

    public Verdict {
        steps = List.copyOf(steps);
        breaches = List.copyOf(breaches);
    }

    /**
     * Returns whether each act is allowed in turn, the goal holds at the end and no rule is broken.
     */
    public boolean valid() {
        return refusal.isEmpty() && goalMissing.isEmpty() && breaches.isEmpty();
    }

    /** Returns whether the device allows each act in turn, regardless of goal and rules. */
    public boolean allowed() {
        return refusal.isEmpty();
    }

    /** Returns the acts that were carried out, with tool, posture and cost. */
    public List<CostedAct> acts() {
        return steps.stream().map(Step::costed).toList();
    }

    /**
     * Returns the cost of the acts that were carried out, in milliseconds: times, restore times and
     * set-ups.
     */
    public long totalMs() {
        long total = 0;
        for (Step step : steps) {
            total = Math.addExact(total, step.costed().costMs());
        }
        return total;
    }

    /** Returns all errors, a sentence each: the refused act, then the breaches, then the goal. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        refusal.map(Refusal::why).ifPresent(all::add);
        breaches.forEach(breach -> all.add(breach.why()));
        goalMissing.ifPresent(all::add);
        return List.copyOf(all);
    }
}
