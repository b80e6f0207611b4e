package reseat.model;

/**
 * A safety message: the hazard, its consequence, and how to avoid it. All three are required, as
 * ANSI Z535.6 demands of a message in a manual.
 *
 * @param id id of the hazard
 * @param signal signal word
 * @param nature what the hazard is
 * @param consequence what happens if it is not avoided
 * @param avoidance what to do
 */
public record Hazard(
        String id, Signal signal, String nature, String consequence, String avoidance) {

    public Hazard {
        if (nature.isBlank() || consequence.isBlank() || avoidance.isBlank()) {
            throw new IllegalArgumentException(
                    "hazard " + id + " must state its nature, its consequence and how to avoid it");
        }
    }
}
