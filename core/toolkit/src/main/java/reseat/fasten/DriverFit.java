package reseat.fasten;

/**
 * What a driver does in a recess.
 *
 * @param verdict what happens
 * @param why a clause that says why
 * @param source where that comes from
 */
public record DriverFit(Drive driver, Drive recess, Verdict verdict, String why, String source) {

    /** What happens when a driver is put in a recess. */
    public enum Verdict {
        /** Made for it. */
        FITS,
        /** Goes in and turns light loads, with play. */
        LOOSE,
        /** Looks as if it fitted, and rides up or rounds the recess under load. */
        CAMS_OUT,
        /** Does not go in, or does not touch. */
        BLOCKED
    }

    /** Tells whether the driver may be used. */
    public boolean good() {
        return verdict == Verdict.FITS;
    }
}
