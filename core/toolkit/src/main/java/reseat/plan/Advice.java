package reseat.plan;

import java.util.OptionalInt;
import reseat.model.Signal;

/**
 * Something that a person must know at one act.
 *
 * @param kind what it is about
 * @param signal how grave it is
 * @param subject id of the hazard, part or joint that it is about; never empty
 * @param text one sentence or a few; for a hazard its nature in one line
 * @param again whether the same was said at an earlier act
 * @param until place of the act in the same list until which it holds, counted from 0; empty where
 *     it holds for this act alone
 */
public record Advice(
        Kind kind, Signal signal, String subject, String text, boolean again, OptionalInt until) {

    /** What advice is about; within one signal word it is given in this order. */
    public enum Kind {
        /** A hazard that the device file names; its whole text is in {@code Device.hazards()}. */
        HAZARD,
        /** The device is turned while a part hangs by a joint. */
        HANGING,
        /** The device is turned while screws are loose in it. */
        LOOSE_SCREWS,
        /** The device is turned while parts lie loose in it. */
        LOOSE_PARTS,
        /** A part stays connected where it is laid. */
        TETHER,
        /** Something must be held until a later act. */
        KEEP_HOLD,
        /** A magnet is near a screw that is being turned. */
        MAGNET,
        /** A closing that cannot be opened again without destroying it. */
        NO_WAY_BACK,
        /** A joint that may be made only so often. */
        WEAR,
        /** How to handle it. */
        HANDLING,
        /** What to look at. */
        INSPECT
    }
}
