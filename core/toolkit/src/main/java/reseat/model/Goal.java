package reseat.model;

import java.util.List;

/** What a plan is to achieve. */
public sealed interface Goal {

    /**
     * The targets are free: no unreleased joint leads from a target except to parts that its spare
     * unit includes, and it shares its place with those alone.
     *
     * @param targets one or more parts other than the base
     */
    record Free(List<String> targets) implements Goal {
        public Free {
            targets = List.copyOf(targets);
            if (targets.isEmpty()) {
                throw new IllegalArgumentException("name at least one target");
            }
        }

        @Override
        public String toString() {
            return "free " + String.join(", ", targets);
        }
    }

    /**
     * The joint is reached: it is unreleased and could be released now.
     *
     * @param joint id of the joint
     */
    record Reach(String joint) implements Goal {
        @Override
        public String toString() {
            return "reach " + joint;
        }
    }

    /** Every joint is released and every part is alone in its place. */
    record Teardown() implements Goal {
        @Override
        public String toString() {
            return "full teardown";
        }
    }
}
