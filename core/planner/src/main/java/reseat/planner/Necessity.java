package reseat.planner;

import reseat.plan.Plan;

/** Whether a plan could do without something. */
public sealed interface Necessity {

    /** Returns one sentence. */
    String sentence();

    /** No valid plan can do without it; this is proved. */
    record EveryWay() implements Necessity {
        @Override
        public String sentence() {
            return "Every way to the goal needs it.";
        }
    }

    /**
     * There is a way without it.
     *
     * @param extraMs how much more the best plan found without it costs; negative if it costs less,
     *     which only happens to a plan that was not proved
     * @param proved whether both plans are proved optimal
     * @param other that plan
     */
    record Avoidable(long extraMs, boolean proved, Plan other) implements Necessity {
        @Override
        public String sentence() {
            return "There is a way without it, which takes "
                    + (extraMs < 0 ? -extraMs + " ms less" : extraMs + " ms more")
                    + (proved ? "." : "; this difference is not proved.");
        }
    }

    /** The effort limit was reached before this was known. */
    record Unknown() implements Necessity {
        @Override
        public String sentence() {
            return "Whether there is a way without it could not be determined in time.";
        }
    }

    /** The plan does not contain it. */
    record Absent() implements Necessity {
        @Override
        public String sentence() {
            return "The plan does without it.";
        }
    }
}
