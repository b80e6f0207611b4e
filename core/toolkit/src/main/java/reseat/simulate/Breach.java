package reseat.simulate;

import java.util.OptionalInt;

/**
 * A breach of the rules in a sequence of acts: something forbidden, or something required that is
 * missing. The device itself would allow the acts.
 *
 * @param kind the kind of breach
 * @param id id of the act, joint, part, tool or prepare act that it is about
 * @param at place of the act in the sequence, from 0; empty if something is missing
 * @param why one sentence
 */
public record Breach(Kind kind, String id, OptionalInt at, String why) {

    /** The kind of a breach. */
    public enum Kind {
        /** An act that is forbidden by its id. */
        FORBIDDEN_ACT,
        /** A joint is released that must not be. */
        FORBIDDEN_JOINT,
        /** A part is moved that must not be. */
        FORBIDDEN_PART,
        /** A tool is used that must not be. */
        FORBIDDEN_TOOL,
        /** A way ruins a part without permission. */
        RUIN,
        /** A prepare act of the device is missing. */
        PREPARE_MISSING,
        /** An act that must occur does not. */
        REQUIRED_ACT,
        /** A joint that must be released at the end is not. */
        REQUIRED_JOINT,
        /** A part that must have been moved still lies with the base. */
        REQUIRED_PART,
        /** A tool that must be used is not. */
        REQUIRED_TOOL
    }
}
