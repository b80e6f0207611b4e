package reseat.plan;

import java.util.OptionalInt;
import reseat.model.Signal;

/**
 * Advice for a person at one act.
 *
 * @param kind its resolved type about
 * @param signal how grave it is
 * @param subject id of the hazard, part or joint that it is about; never empty
 * @param text one sentence or a few; for a hazard its nature in one line
 * @param again whether the same advice was given at an earlier act
 * @param until place of the act in the same list until which it holds, counted from 0; empty if it
 *     holds for this act alone
 */
public record Advice(
        Kind kind, Signal signal, String subject, String text, boolean again, OptionalInt until) {

    /** The topic of advice; within one signal word, advice is given in this order. */
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
        /** A joint with a limited number of cycles. */
        WEAR,
        /** How to handle it. */
        HANDLING,
        /** What to inspect. */
        INSPECT
    }
}
