package reseat.plan;

import java.util.List;
import java.util.Optional;
import reseat.model.Problem;

/** A plan, or the reason why there is none. */
public sealed interface PlanResult {

    /** Returns the plan; empty if there is none. */
    default Optional<Plan> best() {
        return Optional.empty();
    }

    /**
     * Returns why there is no plan, as clauses without a full stop; empty if there is one, else at
     * least one.
     */
    List<String> reasons();

    /** A plan was found. */
    record Found(Plan plan) implements PlanResult {

        @Override
        public Optional<Plan> best() {
            return Optional.of(plan);
        }

        @Override
        public List<String> reasons() {
            return List.of();
        }
    }

    /**
     * No valid plan exists; this is proved.
     *
     * @param reasons the obstacles, as clauses; at least one
     */
    record Impossible(List<String> reasons) implements PlanResult {
        public Impossible {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * The effort limit was reached before any plan was found.
     *
     * @param ended why the search ended
     * @param lowerBoundMs no valid plan costs less than this, in milliseconds
     */
    record Unfinished(Plan.Ended ended, long lowerBoundMs) implements PlanResult {

        @Override
        public List<String> reasons() {
            return List.of(
                    "no plan was found before the "
                            + switch (ended) {
                                case TIME -> "time limit";
                                case EXPANSIONS -> "effort limit";
                                case MEMORY -> "memory limit";
                                default -> "search was cancelled";
                            });
        }
    }

    /**
     * The request is invalid for the device.
     *
     * @param problems the errors in the request; at least one
     */
    record Refused(List<Problem> problems) implements PlanResult {
        public Refused {
            problems = List.copyOf(problems);
        }

        @Override
        public List<String> reasons() {
            return problems.stream().map(Problem::message).toList();
        }
    }
}
