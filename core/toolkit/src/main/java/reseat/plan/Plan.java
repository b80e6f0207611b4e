package reseat.plan;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.model.Act;
import reseat.model.CostedAct;

/**
 * An ordered way to a goal. Immutable; plans are equal if their facts are.
 *
 * <p>It carries the maker of its rebuild, so that everyone who has the plan gets the same rebuild.
 */
public final class Plan {

    private final PlanRequest request;
    private final List<CostedAct> acts;
    private final long totalMs;
    private final long lowerBoundMs;
    private final Ended ended;
    private final long expansions;
    private final Rebuilds rebuilds;
    private volatile @Nullable Rebuild rebuild;

    /**
     * Creates a plan.
     *
     * @param request the request
     * @param acts the acts in order; empty if the goal holds from the start
     * @param totalMs cost of the acts as the design defines it, in whole milliseconds
     * @param lowerBoundMs no valid plan costs less than this, in whole milliseconds
     * @param ended why the search ended
     * @param expansions number of states expanded
     * @param rebuilds makes its rebuild
     * @throws IllegalArgumentException if the lower bound is above the cost
     */
    public Plan(
            PlanRequest request,
            List<CostedAct> acts,
            long totalMs,
            long lowerBoundMs,
            Ended ended,
            long expansions,
            Rebuilds rebuilds) {
        if (lowerBoundMs > totalMs) {
            throw new IllegalArgumentException(
                    "the lower bound of "
                            + lowerBoundMs
                            + " ms is above the cost "
                            + totalMs
                            + " ms");
        }
        this.request = request;
        this.acts = List.copyOf(acts);
        this.totalMs = totalMs;
        this.lowerBoundMs = lowerBoundMs;
        this.ended = ended;
        this.expansions = expansions;
        this.rebuilds = rebuilds;
    }

    /** Returns the request. */
    public PlanRequest request() {
        return request;
    }

    /** Returns the acts in order; empty if the goal holds from the start. */
    public List<CostedAct> acts() {
        return acts;
    }

    /** Returns the cost of the acts as the design defines it, in whole milliseconds. */
    public long totalMs() {
        return totalMs;
    }

    /** Returns the lower bound in whole milliseconds: no valid plan costs less. */
    public long lowerBoundMs() {
        return lowerBoundMs;
    }

    /** Returns why the search ended. */
    public Ended ended() {
        return ended;
    }

    /** Returns the number of states expanded. */
    public long expansions() {
        return expansions;
    }

    /**
     * Returns how the unit is put together again. It is made when first asked for, which takes up
     * to some seconds for a long plan.
     *
     * @throws IllegalStateException if the maker and the simulator disagree
     */
    public Rebuild rebuild() {
        Rebuild known = rebuild;
        if (known == null) {
            known = rebuilds.rebuild(this);
            rebuild = known;
        }
        return known;
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

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Plan plan
                && request.equals(plan.request)
                && acts.equals(plan.acts)
                && totalMs == plan.totalMs
                && lowerBoundMs == plan.lowerBoundMs
                && ended == plan.ended
                && expansions == plan.expansions;
    }

    @Override
    public int hashCode() {
        return Objects.hash(request, acts, totalMs, lowerBoundMs, ended, expansions);
    }

    @Override
    public String toString() {
        return "Plan["
                + request.goal()
                + ", "
                + acts.stream().map(act -> act.act().id()).toList()
                + ", "
                + totalMs
                + " ms, "
                + ended
                + "]";
    }
}
