package reseat.fasten;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.internal.fasten.SeatReach;
import reseat.internal.fasten.SwapJudge;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.ScrewType;
import reseat.model.Seat;

/**
 * How a screw lies in a seat, along its axis.
 *
 * <p>With L the length of the screw, c the thickness clamped and t the depth of usable thread, the
 * screw reaches r = L - c past the first thread of the seat and engages min(r, t), less what an
 * unthreaded shank takes. In a hole of depth h the clearance at the bottom is h - r; beyond a
 * through thread the screw protrudes r - t. Lengths of cone heads count from the top of the head,
 * and so does what they clamp.
 *
 * @param joint id of the joint
 * @param screw id of the screw type
 * @param reachMm how far the screw reaches past the first thread of the seat, in millimetres; may
 *     be negative
 * @param engagementMm length of engaged thread in millimetres, not below 0
 * @param goodEngagementMm engagement that good practice requires in this seat, in millimetres
 * @param bottomClearanceMm what is left to the bottom of a blind hole, or to the end of its thread
 *     where that comes first, in millimetres; negative where the screw bottoms; empty for a through
 *     hole
 * @param protrusionMm how far the tip stands out of the last thread of a through hole, or would go
 *     through the bottom of a blind one, in millimetres; not below 0
 * @param behind what lies behind, nearest first
 * @param outcome what happens when the screw is driven home here
 * @param told the outcome as a sentence
 * @param missing names of missing facts that would allow more to be said
 */
public record StackUp(
        String joint,
        String screw,
        OptionalDouble reachMm,
        OptionalDouble engagementMm,
        double goodEngagementMm,
        OptionalDouble bottomClearanceMm,
        OptionalDouble protrusionMm,
        List<Behind> behind,
        Outcome outcome,
        String told,
        List<String> missing) {

    public StackUp {
        behind = List.copyOf(behind);
        missing = List.copyOf(missing);
    }

    /** What happens when a screw is driven home in a seat; worse ones come later. */
    public enum Outcome {
        /** It does not start: another thread, too thick, or too short to reach. */
        NO_ENTRY,
        /** It clamps as it should. */
        FITS,
        /** Cannot be determined, because facts are missing. */
        UNKNOWN,
        /** It goes in and does not hold. */
        LOOSE,
        /** It holds on too little thread, or cuts another thread, and strips. */
        STRIPS,
        /** It meets the bottom, the end of the thread or its own shank before the head clamps. */
        BOTTOMS,
        /** Its tip touches what lies behind. */
        TOUCHES,
        /** Its tip goes into what lies behind. */
        PIERCES
    }

    /**
     * A part behind the seat.
     *
     * @param part id of the part
     * @param name its name
     * @param role its role, if the toolkit computes with it: a cell, a board, a display, a cable
     * @param clearanceMm distance from the tip to the part in millimetres; negative where the tip
     *     is in the part
     */
    public record Behind(String part, String name, Optional<Kind.Role> role, double clearanceMm) {}

    /**
     * Returns how the right screw lies in the seat of a joint.
     *
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     * @throws FastenerInputException if the tables do not have the thread or the material
     */
    public static StackUp of(FastenerTables tables, Device device, String joint) {
        Seat seat = seat(device, joint);
        return new SeatReach(tables, device, joint, seat).right();
    }

    /**
     * Returns what happens when another screw goes into the seat of a joint.
     *
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     * @throws FastenerInputException if the tables do not have a thread or the material
     */
    public static StackUp of(FastenerTables tables, Device device, String joint, ScrewType other) {
        return new SwapJudge(tables, device, joint, seat(device, joint)).judge(other);
    }

    /**
     * Returns what happens with every other screw type of the device that would physically start in
     * the seat, worst first.
     *
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     * @throws FastenerInputException if the tables do not have a thread or the material
     */
    public static List<StackUp> swaps(FastenerTables tables, Device device, String joint) {
        Seat seat = seat(device, joint);
        SwapJudge judge = new SwapJudge(tables, device, joint, seat);
        return device.screwTypes().values().stream()
                .filter(type -> !type.id().equals(seat.screw()))
                .map(judge::judge)
                .filter(swap -> swap.outcome() != Outcome.NO_ENTRY)
                .sorted((a, b) -> b.outcome().compareTo(a.outcome()))
                .toList();
    }

    private static Seat seat(Device device, String joint) {
        return device.joint(joint)
                .seat()
                .orElseThrow(
                        () -> new IllegalArgumentException(joint + " is not a screw in a seat"));
    }
}
