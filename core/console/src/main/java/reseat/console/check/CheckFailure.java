package reseat.console.check;

/**
 * A check that failed, so that its findings are unknown.
 *
 * @param check id of the check, or the name of its class where it has none
 * @param source name of what was checked; empty if the check could not be used at all
 * @param device the device in its variant; empty if the check could not be used at all
 * @param what what went wrong, as a sentence
 */
public record CheckFailure(String check, String source, String device, String what) {

    /** Returns one line to display. */
    @Override
    public String toString() {
        return (source.isEmpty() ? "" : source + ": ")
                + "the check "
                + check
                + " failed"
                + (device.isEmpty() ? "" : " on " + device)
                + ": "
                + what;
    }
}
