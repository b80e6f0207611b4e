package reseat.model;

/**
 * The signal words of a safety message, gravest first, with the meanings that ANSI Z535.6 and ISO
 * 3864-2 give them.
 */
public enum Signal {
    /** Death or serious injury will follow if the hazard is not avoided. */
    DANGER,
    /** Death or serious injury could follow. */
    WARNING,
    /** Minor or moderate injury could follow. */
    CAUTION,
    /** No injury: damage to property, or good practice. */
    NOTICE
}
