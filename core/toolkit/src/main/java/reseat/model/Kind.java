package reseat.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A registered kind of part, joint or manipulation: data, never a closed list in code. Families and
 * device files add their own.
 *
 * @param id id, unique within its scope
 * @param scope what it is a kind of
 * @param title the usual noun ("battery cell", "board-to-board connector", "lift at an angle")
 * @param verb wording of the act in the imperative ("Unscrew", "Lift at an angle"); empty for kinds
 *     of part
 * @param restoreVerb wording of the rebuild act ("Start by hand, then tighten"); empty for kinds of
 *     part
 * @param role its role, if the toolkit computes with it
 * @param tool default tool
 * @param posture default posture
 * @param time default time of the act
 * @param restoreTime default time of the restore act
 * @param hazards ids of hazards that the act, or any act on the part, brings
 * @param handling sentences to print with each act ("Hold the latch until the part is clear")
 * @param consumes what a rebuild uses up each time
 * @param restore what the rebuild must do ("new adhesive"); empty if putting back is enough
 * @param irreversible whether making it again closes something that cannot be opened without
 *     destroying the closure
 * @param keepHold whether the hand must stay on it until the next part is moved
 * @param magnetic whether it catches loose screws
 * @param captive whether a screw that it loosens stays in its part, so that it is not counted out
 * @param dwellMs time to wait after the restore act (curing), in milliseconds; printed, never
 *     minimised
 * @param ratedCycles how many times it may be made and broken; empty if no limit is known
 * @param needs supplies that must be cut before a joint of it is released or a part of it is moved;
 *     empty if it says nothing
 * @param forceful whether a manipulation puts force on what it works on (prying, snapping, cutting,
 *     peeling a part off, pulling hard), so that screws still tight would strain it
 * @param laid whether a joint of it is laid before the part that covers it is placed (adhesive,
 *     gasket, paste, pad)
 * @param flammable whether a manipulation uses something that burns, such as a solvent
 * @param storesCharge whether a part of it stays charged after the power is cut
 * @param heat the heat that a manipulation puts to the device; empty if none
 * @param source where the values come from, or "from memory", or "common practice, no source"
 */
public record Kind(
        String id,
        Scope scope,
        String title,
        String verb,
        String restoreVerb,
        Optional<Role> role,
        Optional<String> tool,
        Optional<String> posture,
        Optional<Duration> time,
        Optional<Duration> restoreTime,
        List<String> hazards,
        List<String> handling,
        List<ConsumableUse> consumes,
        String restore,
        boolean irreversible,
        boolean keepHold,
        boolean magnetic,
        boolean captive,
        long dwellMs,
        OptionalInt ratedCycles,
        Optional<List<String>> needs,
        boolean forceful,
        boolean laid,
        boolean flammable,
        boolean storesCharge,
        Optional<Heat> heat,
        String source) {

    public Kind {
        hazards = List.copyOf(hazards);
        handling = List.copyOf(handling);
        consumes = List.copyOf(consumes);
        needs = needs.map(List::copyOf);
    }

    /**
     * Returns a kind without wording or effects, for an unregistered name.
     *
     * @param scope what it is a kind of
     * @param id id, which is also its title
     */
    public static Kind plain(Scope scope, String id) {
        return new Kind(
                id,
                scope,
                id,
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                false,
                false,
                false,
                0,
                OptionalInt.empty(),
                Optional.empty(),
                false,
                false,
                false,
                false,
                Optional.empty(),
                "");
    }

    /**
     * Heat that is put to a device.
     *
     * @param source what gives it, such as "heat mat"
     * @param celsius temperature of the source, in degrees Celsius
     * @param ms how long, in milliseconds
     */
    public record Heat(String source, int celsius, long ms) {}

    /** The scope of a kind. */
    public enum Scope {
        PART,
        JOINT,
        MANIPULATION
    }

    /**
     * The roles that the toolkit computes with; every other property of a kind is only printed or
     * added up.
     */
    public enum Role {
        /** Joint: a screw in a seat. */
        SCREW,
        /** Joint: an electrical connector, with mating cycles. */
        CONNECTOR,
        /** Joint: adhesive, tape, gasket or thermal interface. */
        BOND,
        /** Joint: a snap-fit. */
        CLIP,
        /** Joint: cable routing. */
        HOOK,
        /** Joint: a hinge or slide fit. */
        FIT,
        /** Part: an energy store that can burn. */
        CELL,
        /** Part: a circuit board. */
        BOARD,
        /** Part: a display panel. */
        DISPLAY,
        /** Part: a cable or flexible circuit. */
        CABLE,
        /** Part: a cover, lid, flap, door or shield. */
        COVER
    }
}
