package reseat.fasten;

import java.util.Optional;

/**
 * What a device file does not state about its screws.
 *
 * @param friction friction of thread and head; empty if unknown
 * @param assumeCautiously whether friction, head and drive may be assumed if they are not stated
 */
public record SeatConditions(Optional<Friction> friction, boolean assumeCautiously) {

    /**
     * Returns conditions that allow no assumption on friction, head, drive or form. A device file
     * does not state the hole under the head: the ISO 273 medium hole is assumed, and listed.
     */
    public static SeatConditions of(Friction friction) {
        return new SeatConditions(Optional.of(friction), false);
    }

    /**
     * Returns conditions in which nothing is known, so that every assumption is cautious and is
     * listed.
     */
    public static SeatConditions unknown() {
        return new SeatConditions(Optional.empty(), true);
    }
}
