package reseat.fasten;

/**
 * How a driver fits a recess.
 *
 * @param verdict what happens
 * @param why the reason, as a clause
 * @param source the source
 */
public record DriverFit(Drive driver, Drive recess, Verdict verdict, String why, String source) {

    /** The fit of a driver in a recess. */
    public enum Verdict {
        /** Made for it. */
        FITS,
        /** Goes in and turns light loads, with play. */
        LOOSE,
        /** Appears to fit, but rides up or rounds the recess under load. */
        CAMS_OUT,
        /** Does not go in, or does not touch. */
        BLOCKED
    }

    /** Returns whether the driver may be used. */
    public boolean good() {
        return verdict == Verdict.FITS;
    }
}
