package reseat.model;

import java.util.List;
import reseat.text.QuoteText;

/**
 * Something that is done to a device. Its {@link #id()} is stable: made from joint, way and parts
 * alone.
 */
public sealed interface Act {

    /** Returns the stable id, the same in every plan, procedure and job. */
    String id();

    /**
     * Returns the act of a stable id. Whether a device has it is not asked.
     *
     * @param id such as {@code prepare:shut-down}, {@code release:fan-plug/pull}, {@code
     *     move:lid+hinge}
     * @throws IllegalArgumentException with a message for the user if it is no id of an act
     */
    static Act parse(String id) {
        int colon = id.indexOf(':');
        String rest = id.substring(colon + 1);
        int slash = rest.indexOf('/');
        switch (id.substring(0, colon + 1)) {
            case Prepared.PREFIX -> {
                if (!rest.isEmpty()) {
                    return new Prepared(rest);
                }
            }
            case Release.PREFIX -> {
                if (slash > 0 && slash < rest.length() - 1) {
                    return new Release(rest.substring(0, slash), rest.substring(slash + 1));
                }
            }
            case MoveParts.PREFIX -> {
                List<String> parts = List.of(rest.split("\\+", -1));
                if (!parts.contains("")) {
                    return new MoveParts(parts);
                }
            }
            default -> {}
        }
        throw new IllegalArgumentException(
                "found "
                        + QuoteText.of(id)
                        + ", expected the id of an act: prepare:ID, release:JOINT/WAY or"
                        + " move:PART+PART");
    }

    /**
     * An authored act before work.
     *
     * @param prepare id of the prepare act
     */
    record Prepared(String prepare) implements Act {
        private static final String PREFIX = "prepare:";

        @Override
        public String id() {
            return PREFIX + prepare;
        }
    }

    /**
     * Releases a joint by one of its ways.
     *
     * @param joint id of the joint
     * @param way id of the way
     */
    record Release(String joint, String way) implements Act {
        private static final String PREFIX = "release:";

        @Override
        public String id() {
            return PREFIX + joint + "/" + way;
        }
    }

    /**
     * Moves parts that stay together to a new place.
     *
     * @param parts the parts, in the order of the device file; never empty, never the base
     */
    record MoveParts(List<String> parts) implements Act {
        private static final String PREFIX = "move:";

        public MoveParts {
            parts = List.copyOf(parts);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("a move must name at least one part");
            }
        }

        @Override
        public String id() {
            return PREFIX + String.join("+", parts);
        }
    }
}
