package reseat.model;

/**
 * A time in whole milliseconds, with its basis.
 *
 * @param ms milliseconds, not negative
 * @param basis how the time is known
 * @param text how it was written ("A1 B0 G1 A1 B0 P3 L16 A1 B0 P1 A0", "4.2 s"); never empty
 */
public record Duration(long ms, Basis basis, String text) {

    /** Longest time accepted for one act: a day. */
    public static final long MAX_MS = 86_400_000L;

    public Duration {
        if (ms < 0 || ms > MAX_MS) {
            throw new IllegalArgumentException("a time must be between 0 and 24 h: " + ms + " ms");
        }
    }

    /** Returns a time that a device file states in milliseconds. */
    public static Duration stated(long ms) {
        return new Duration(ms, Basis.DEVICE, ms + " ms");
    }

    /** How a time is known, in rising order of trust. */
    public enum Basis {
        /** Added up from published elemental times. */
        ELEMENTS,
        /** A device family's default. */
        FAMILY,
        /** Stated in the device file. */
        DEVICE,
        /** Measured by the shop. */
        MEASURED
    }
}
