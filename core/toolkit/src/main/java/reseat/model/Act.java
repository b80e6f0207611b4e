package reseat.model;

import java.util.List;

/**
 * Something that is done to a device. Its {@link #id()} is stable: made from joint, way and parts
 * alone.
 */
public sealed interface Act {

    /** Returns the stable id, the same in every plan, procedure and job. */
    String id();

    /**
     * An authored act before work.
     *
     * @param prepare id of the prepare act
     */
    record Prepared(String prepare) implements Act {
        @Override
        public String id() {
            return "prepare:" + prepare;
        }
    }

    /**
     * Releases a joint by one of its ways.
     *
     * @param joint id of the joint
     * @param way id of the way
     */
    record Release(String joint, String way) implements Act {
        @Override
        public String id() {
            return "release:" + joint + "/" + way;
        }
    }

    /**
     * Moves parts that stay together to a new place.
     *
     * @param parts the parts, in the order of the device file; never empty, never the base
     */
    record MoveParts(List<String> parts) implements Act {
        public MoveParts {
            parts = List.copyOf(parts);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("a move must name at least one part");
            }
        }

        @Override
        public String id() {
            return "move:" + String.join("+", parts);
        }
    }
}
