package reseat.plan;

import java.util.List;
import reseat.model.Problem;

/** What a planner answers. */
public sealed interface PlanResult {

    /**
     * A plan was found.
     *
     * @param plan the plan
     */
    record Found(Plan plan) implements PlanResult {}

    /**
     * No valid plan exists; this is proved.
     *
     * @param reasons what stands in the way, as sentences; at least one
     */
    record Impossible(List<String> reasons) implements PlanResult {
        public Impossible {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * The effort ended before any plan was found.
     *
     * @param ended what ended it
     * @param lowerBoundMs no valid plan costs less than this
     */
    record Unfinished(Plan.Ended ended, long lowerBoundMs) implements PlanResult {}

    /**
     * The request makes no sense for the device.
     *
     * @param problems what is wrong with it
     */
    record Refused(List<Problem> problems) implements PlanResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
