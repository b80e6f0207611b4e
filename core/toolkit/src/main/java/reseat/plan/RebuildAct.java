package reseat.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.FunctionTest;

/**
 * One act of a rebuild.
 *
 * @param kind what is done
 * @param undoes place of the act of the plan that it undoes, or whose joint it lays or lets rest,
 *     counted from 0; empty for tests and what belongs to them, and for acts that close what was
 *     open when the unit arrived
 * @param act the act of a teardown that it undoes, or whose joint it lays or lets rest; empty for
 *     tests and what belongs to them
 * @param joints ids of the joints that close with it, whose bed it lays, or that rest; a placing
 *     closes those that give
 * @param test the test that it makes or serves; empty for everything else
 * @param brings parts that lie apart and are brought alongside for it; they stay there until they
 *     are put or folded back
 * @param tool tool in hand
 * @param posture posture of the device
 * @param ms time of the act in milliseconds; it is part of the cost of the plan but for the time of
 *     what was open when the unit arrived
 * @param setupMs set-up before it in milliseconds; not part of the cost of the plan
 * @param dwellMs time to wait in milliseconds; greater than zero for {@link Kind#WAIT} alone
 * @param rest why it waits, and so what may not be done meanwhile; present for {@link Kind#WAIT}
 *     alone
 * @param consumes what it uses up
 * @param irreversible whether it closes something that cannot be opened again without destroying
 *     the closure
 * @param fresh parts that the teardown ruined and in whose place new ones go in here
 * @param on ids of the supplies that no open isolator cuts while it is done, in the order of the
 *     device
 */
public record RebuildAct(
        Kind kind,
        OptionalInt undoes,
        Optional<Act> act,
        List<String> joints,
        Optional<FunctionTest> test,
        List<String> brings,
        String tool,
        String posture,
        long ms,
        long setupMs,
        long dwellMs,
        Optional<Rest> rest,
        List<ConsumableUse> consumes,
        boolean irreversible,
        List<String> fresh,
        List<String> on) {

    public RebuildAct {
        joints = List.copyOf(joints);
        brings = List.copyOf(brings);
        consumes = List.copyOf(consumes);
        fresh = List.copyOf(fresh);
        on = List.copyOf(on);
    }

    /** What is done. */
    public enum Kind {
        /** A joint is made again. */
        MAKE,
        /** Parts that were lifted off are set in place; joints that give close with it. */
        PUT_BACK,
        /** Parts that were laid aside are folded back; joints that give close with it. */
        FOLD_BACK,
        /** A prepare act is undone. */
        UNDO_PREPARE,
        /**
         * The site of a joint is cleaned, and adhesive, gasket, paste or pad is laid, before the
         * part that covers it is placed. It takes the restore time of the joint; making the joint
         * is then only pressing it home.
         */
        BED,
        /** Nothing is done until something has cured or dried. */
        WAIT,
        /** The device is set where a test runs. */
        DOCK,
        /** The device is switched on for the tests that follow. */
        SWITCH_ON,
        /** A test is made. */
        TEST,
        /** The device is switched off after the tests. */
        SWITCH_OFF,
        /** The device is taken from where a test ran. */
        UNDOCK;

        /** Returns whether it undoes an act of a teardown: a closing, a placing, a prepare act. */
        public boolean isUndoing() {
            return this == MAKE || isPlacing() || this == UNDO_PREPARE;
        }

        /** Returns whether parts are set in place. */
        public boolean isPlacing() {
            return this == PUT_BACK || this == FOLD_BACK;
        }
    }

    /** Why it waits. */
    public enum Rest {
        /**
         * A bond or clamp has to reach its strength. Meanwhile the device is not turned, docked or
         * tested for leaks, and no test is made of the joints or of the parts that they hold.
         */
        CURE,
        /**
         * A flammable cleaner has to dry. Meanwhile no supply is connected and nothing is switched
         * on.
         */
        DRY
    }
}
