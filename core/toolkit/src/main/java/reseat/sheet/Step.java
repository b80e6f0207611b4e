package reseat.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import reseat.fasten.CutPlan;
import reseat.fasten.SeatOrder;
import reseat.fasten.StripPlan;
import reseat.model.ConsumableUse;
import reseat.model.Supply;

/**
 * One numbered step: one act, several that a person does as one, a check or a test. Everything that
 * a reader must see is in {@code cautions}, {@code reminders}, {@code text}, {@code aside} and
 * {@code details}, in this order; the other components give the same facts to programs.
 *
 * @param number its number, counted from 1 through teardown and rebuild
 * @param kind what kind of step it is
 * @param acts ids of its acts; in the rebuild those of the acts that it undoes; or whose joint it
 *     lays; empty for a check, a wait or a test
 * @param test id of the test that it is; empty for acts
 * @param cautions messages to print in full before it, gravest first
 * @param reminders messages printed in full at an earlier step and repeated briefly here
 * @param text what to do
 * @param aside text printed beside it: the running count of screws, or the boxes for the result of
 *     a test; empty if there is none
 * @param details how to do it, one or more sentences each
 * @param facts its facts for programs
 * @param on the supplies that are on when it begins
 * @param ms time of its acts in milliseconds, without set-ups; 0 for a test
 * @param waitMs time to wait after it, in milliseconds
 * @param doneMs time from the first step of the teardown to the end of this one in milliseconds,
 *     with set-ups, without waiting and tests
 */
public record Step(
        int number,
        Kind kind,
        List<String> acts,
        Optional<String> test,
        List<Caution> cautions,
        List<Caution> reminders,
        String text,
        String aside,
        List<String> details,
        Facts facts,
        List<Supply> on,
        long ms,
        long waitMs,
        long doneMs) {

    /** The kind of a step. */
    public enum Kind {
        /** Acts of the plan or of its rebuild. */
        WORK,
        /** Adhesive, gasket, paste or pad is laid before the part that covers it is placed. */
        BED,
        /** Nothing is done until something has cured or dried. */
        WAIT,
        /** The device is switched on or off, docked or undocked. */
        SWITCH,
        /** Something to look at or to measure before the work goes on. */
        CHECK,
        /** A test of what was touched. */
        TEST
    }

    public Step {
        Objects.requireNonNull(kind, "kind");
        acts = List.copyOf(acts);
        Objects.requireNonNull(test, "test");
        cautions = List.copyOf(cautions);
        reminders = List.copyOf(reminders);
        details = List.copyOf(details);
        Objects.requireNonNull(facts, "facts");
        on = List.copyOf(on);
    }

    /**
     * The facts of a step.
     *
     * @param screws the screws that it turns, in the order of the acts
     * @param tightening the order in which its screws are tightened; empty if none go in
     * @param cuts how deep a blade may go, by the id of the bond; only bonds whose geometry is
     *     known, and only in the teardown
     * @param strips the strips of adhesive to cut to length, by the id of the bond; only bonds
     *     whose geometry is known, and only where they are laid
     * @param uses what it uses up
     * @param ruins ids of the parts that it destroys
     * @param newParts ids of the parts in whose place new ones go in
     */
    public record Facts(
            List<Screw> screws,
            Optional<SeatOrder> tightening,
            Map<String, CutPlan> cuts,
            Map<String, StripPlan> strips,
            List<ConsumableUse> uses,
            List<String> ruins,
            List<String> newParts) {

        /** No facts, as for a test. */
        public static final Facts NONE =
                new Facts(
                        List.of(),
                        Optional.empty(),
                        Map.of(),
                        Map.of(),
                        List.of(),
                        List.of(),
                        List.of());

        public Facts {
            screws = List.copyOf(screws);
            Objects.requireNonNull(tightening, "tightening");
            cuts = Collections.unmodifiableMap(new LinkedHashMap<>(cuts));
            strips = Collections.unmodifiableMap(new LinkedHashMap<>(strips));
            uses = List.copyOf(uses);
            ruins = List.copyOf(ruins);
            newParts = List.copyOf(newParts);
        }
    }

    /**
     * A screw that a step turns.
     *
     * @param joint id of the joint
     * @param type id of the screw type
     * @param torqueNm torque that the maker gives, in newton metres; empty if none is given
     * @param torqueSource where that torque is given; empty if none is given
     * @param tray number of the tray compartment that it lies in, counted from 1; empty if it stays
     *     in its part or one tray holds all
     */
    public record Screw(
            String joint,
            String type,
            OptionalDouble torqueNm,
            String torqueSource,
            OptionalInt tray) {}
}
