package reseat.fasten;

import java.util.OptionalDouble;

/**
 * The bearing of a head.
 *
 * @param head form of the head
 * @param bearing how it bears
 * @param bearingMm outer diameter of the bearing face in millimetres; 0 where there is none
 * @param headMm diameter of the head in millimetres; empty if unknown
 * @param heightMm height of the head in millimetres; empty if unknown
 * @param source where the numbers come from
 */
public record HeadSize(
        String head,
        Bearing bearing,
        double bearingMm,
        OptionalDouble headMm,
        OptionalDouble heightMm,
        String source) {

    /**
     * Bearing outer diameter over head diameter where only the head is known: the ISO 4762 rows.
     */
    public static final double BEARING_SHARE = 0.92;

    /** How a head bears on what it clamps. */
    public enum Bearing {
        /** On a flat face. */
        FLAT,
        /** On a cone of 90 degrees. */
        CONE,
        /** Not at all: set screws. */
        NONE
    }
}
