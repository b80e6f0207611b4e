package reseat.internal.time;

/**
 * The time of a whole service, and its ratio to the ideal.
 *
 * @param teardownMs time to take apart, in milliseconds
 * @param rebuildMs time to put together, in milliseconds
 * @param servicedParts number of parts that the service is for
 * @param idealMsPerPart time that a part would ideally take, in milliseconds
 */
public record ServiceTime(long teardownMs, long rebuildMs, int servicedParts, long idealMsPerPart) {

    public ServiceTime {
        if (teardownMs < 0 || rebuildMs < 0 || teardownMs + rebuildMs == 0) {
            throw new IllegalArgumentException("the time of a service must be above 0");
        }
    }

    /** Returns teardown and rebuild together, in milliseconds. */
    public long serviceMs() {
        return Math.addExact(teardownMs, rebuildMs);
    }

    /**
     * Returns ideal time over service time: 1 for a service that takes no longer than the ideal
     * one.
     */
    public double efficiency() {
        return (double) Math.multiplyExact(idealMsPerPart, (long) servicedParts) / serviceMs();
    }
}
