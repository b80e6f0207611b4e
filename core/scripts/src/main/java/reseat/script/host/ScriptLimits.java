package reseat.script.host;

/**
 * The resource limits of a script.
 *
 * @param statements number of JavaScript statements
 * @param seconds time for one script on the clock
 * @param heapMb heap of the process that scripts run in, in MiB
 * @param printed number of bytes that one script may print
 * @param findings number of findings that one script may return
 */
public record ScriptLimits(long statements, int seconds, int heapMb, int printed, int findings) {

    /** Generous limits for a check of a device. */
    public static final ScriptLimits USUAL = new ScriptLimits(20_000_000, 10, 256, 64 * 1024, 1000);

    public ScriptLimits {
        if (statements < 1 || seconds < 1 || heapMb < 64 || printed < 0 || findings < 0) {
            throw new IllegalArgumentException("the limits of a script are too low");
        }
    }
}
