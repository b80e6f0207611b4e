package reseat.model;

import java.util.List;

/**
 * A safety message: the hazard, its consequence, and how to avoid it. All three are required, as
 * ANSI Z535.6 demands of a message in a manual.
 *
 * @param id id of the hazard
 * @param signal signal word
 * @param nature what the hazard is
 * @param consequence what happens if it is not avoided
 * @param avoidance what to do
 * @param protection what to wear, one item each, such as "safety glasses"; empty if nothing is
 *     stated
 */
public record Hazard(
        String id,
        Signal signal,
        String nature,
        String consequence,
        String avoidance,
        List<String> protection) {

    public Hazard {
        protection = List.copyOf(protection);
        if (nature.isBlank() || consequence.isBlank() || avoidance.isBlank()) {
            throw new IllegalArgumentException(
                    "hazard " + id + " must state its nature, its consequence and how to avoid it");
        }
    }

    /** Creates a hazard for which nothing need be worn. */
    public Hazard(String id, Signal signal, String nature, String consequence, String avoidance) {
        this(id, signal, nature, consequence, avoidance, List.of());
    }
}
