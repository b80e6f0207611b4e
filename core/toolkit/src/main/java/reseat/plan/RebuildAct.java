package reseat.plan;

import java.util.List;
import reseat.model.Act;
import reseat.model.ConsumableUse;

/**
 * One act of a rebuild: the undoing of one act of the teardown.
 *
 * @param undoes place of the act of the teardown that it undoes, counted from 0
 * @param kind what is done
 * @param act the act of the teardown
 * @param brings parts that lie apart and are brought alongside for it; they stay there until they
 *     are put or folded back
 * @param tool tool in hand
 * @param posture posture of the device
 * @param ms time of the act in milliseconds; it is part of the cost of the plan
 * @param setupMs set-up before it in milliseconds; printed, not part of the cost
 * @param dwellMs time to wait after it (curing) in milliseconds; printed, not part of the cost
 * @param consumes what it uses up
 * @param irreversible whether it closes something that cannot be opened again without destroying
 *     the closure
 * @param fresh parts that the teardown ruined and in whose place new ones go in here
 */
public record RebuildAct(
        int undoes,
        Kind kind,
        Act act,
        List<String> brings,
        String tool,
        String posture,
        long ms,
        long setupMs,
        long dwellMs,
        List<ConsumableUse> consumes,
        boolean irreversible,
        List<String> fresh) {

    public RebuildAct {
        brings = List.copyOf(brings);
        consumes = List.copyOf(consumes);
        fresh = List.copyOf(fresh);
    }

    /** What is done. */
    public enum Kind {
        /** A joint is made again. */
        MAKE,
        /** Parts that were lifted off are set in place. */
        PUT_BACK,
        /** Parts that were laid aside are folded back. */
        FOLD_BACK,
        /** A prepare act is undone. */
        UNDO_PREPARE
    }
}
