package reseat.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The seat of one screw: boss, nut, insert or tapped hole.
 *
 * @param screw id of the screw type that belongs in it
 * @param at where it lies; empty if unknown
 * @param form the form of the seat
 * @param thread thread of the seat; empty if it is that of its screw
 * @param material id of the material that the thread is in; empty if unknown
 * @param clampedMm thickness between the bearing face of the head and the first thread of the seat,
 *     in millimetres
 * @param threadedMm depth of usable thread in millimetres
 * @param depthMm depth of the hole from the first thread of the seat, in millimetres; empty for a
 *     through hole
 * @param bossOuterMm outer diameter of boss or insert in millimetres
 * @param behind what lies behind the end of the hole, nearest first
 * @param torqueNm torque given by the maker, in newton metres; empty if none is given
 * @param torqueSource where that torque is given; empty if none is given
 * @param pass its pass in the maker's tightening order, counted from 1; empty if the maker gives
 *     none
 * @param formedCycles how often a thread-forming screw has been driven into it, factory included
 */
public record Seat(
        String screw,
        Optional<Point> at,
        Form form,
        Optional<String> thread,
        Optional<String> material,
        OptionalDouble clampedMm,
        OptionalDouble threadedMm,
        OptionalDouble depthMm,
        OptionalDouble bossOuterMm,
        List<Behind> behind,
        OptionalDouble torqueNm,
        String torqueSource,
        OptionalInt pass,
        int formedCycles) {

    public Seat {
        behind = List.copyOf(behind);
    }

    /** The form of a seat. */
    public enum Form {
        /** Tapped hole in a solid part. */
        TAPPED,
        /** Nut, loose or captive. */
        NUT,
        /** Threaded insert in a softer part. */
        INSERT,
        /** Plain hole in which the screw forms its own thread. */
        FORMED
    }

    /**
     * Something behind the end of a seat.
     *
     * @param part id of the part
     * @param gapMm distance from the end of the hole, or from the last thread of a through hole, in
     *     millimetres
     */
    public record Behind(String part, double gapMm) {}
}
