package reseat.plan;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;

/**
 * An ordered way to a goal.
 *
 * @param request the request
 * @param acts the acts in order; empty if the goal holds from the start
 * @param totalMs cost of the acts as the design defines it, in whole milliseconds
 * @param lowerBoundMs no valid plan costs less than this, in whole milliseconds
 * @param ended why the search ended
 * @param expansions number of states expanded
 */
public record Plan(
        PlanRequest request,
        List<CostedAct> acts,
        long totalMs,
        long lowerBoundMs,
        Ended ended,
        long expansions) {

    public Plan {
        acts = List.copyOf(acts);
        if (lowerBoundMs > totalMs) {
            throw new IllegalArgumentException(
                    "the lower bound of "
                            + lowerBoundMs
                            + " ms is above the cost "
                            + totalMs
                            + " ms");
        }
    }

    /** Returns whether no valid plan costs less. */
    public boolean proved() {
        return lowerBoundMs == totalMs;
    }

    /** Returns the parts that the plan moves, in the order in which they are moved first. */
    public Set<String> movedParts() {
        Set<String> parts = new LinkedHashSet<>();
        for (CostedAct act : acts) {
            if (act.act() instanceof Act.MoveParts move) {
                parts.addAll(move.parts());
            }
        }
        return Collections.unmodifiableSet(parts);
    }

    /** Returns whether another plan moves the same parts, in whatever order. */
    public boolean movesTheSameParts(Plan other) {
        return movedParts().equals(other.movedParts());
    }

    /** Returns the ids of the joints that the plan releases, in order. */
    public List<String> releasedJoints() {
        return acts.stream()
                .map(CostedAct::act)
                .filter(Act.Release.class::isInstance)
                .map(act -> ((Act.Release) act).joint())
                .toList();
    }

    /** Returns (cost - bound) / cost, from 0 to 1; 0 for a proved plan. */
    public double gap() {
        return totalMs == 0 ? 0 : (totalMs - lowerBoundMs) / (double) totalMs;
    }

    /** Why a search ended. */
    public enum Ended {
        /** The plan is proved optimal. */
        PROVED,
        /** The time limit was reached. */
        TIME,
        /** The limit on expansions was reached. */
        EXPANSIONS,
        /** The memory limit for open states was reached. */
        MEMORY,
        /** The search was cancelled. */
        CANCELLED
    }
}
