package reseat.text;

/**
 * Formats times for people: {@code 59.5 s}, {@code 3 min 20 s}, {@code 1 h 5 min}. Each is first
 * rounded to its smallest unit, so that no time reads 60 s or 60 min.
 */
public final class TimeText {

    private static final long MINUTE_MS = 60_000;
    private static final long HOUR_S = 3_600;

    private TimeText() {}

    /**
     * Returns a time in words with ordinary spaces.
     *
     * @param ms milliseconds; a negative time begins with a minus sign
     */
    public static String of(long ms) {
        return unbroken(ms).replace('\u00a0', ' ');
    }

    /**
     * Returns a time in words with no-break spaces, for text that is wrapped later.
     *
     * @param ms milliseconds; a negative time begins with a minus sign
     */
    public static String unbroken(long ms) {
        if (ms < 0) {
            return "-" + unbroken(ms == Long.MIN_VALUE ? Long.MAX_VALUE : -ms);
        }
        if (ms < MINUTE_MS) {
            return NumberText.of(ms / 1000.0) + "\u00a0s";
        }
        long s = nearest(ms, 1_000);
        if (s < HOUR_S) {
            return s / 60 + "\u00a0min" + rest(s % 60, "s");
        }
        long min = nearest(s, 60);
        return min / 60 + "\u00a0h" + rest(min % 60, "min");
    }

    /**
     * Returns an estimate, rounded to half minutes up to an hour and to whole minutes beyond, with
     * no-break spaces: {@code 3.5 min}, {@code 1 h 5 min}. Nothing above zero becomes zero.
     *
     * @param ms milliseconds, not negative
     */
    public static String estimate(long ms) {
        return halfMinutes(ms) + (isHours(ms) ? "" : "\u00a0min");
    }

    /**
     * Returns an estimated range, rounded likewise: {@code 3 to 6.5 min}.
     *
     * @param leastMs milliseconds, not negative
     * @param mostMs milliseconds, not less than the least
     */
    public static String range(long leastMs, long mostMs) {
        String least =
                isHours(leastMs) == isHours(mostMs) ? halfMinutes(leastMs) : estimate(leastMs);
        return least.equals(halfMinutes(mostMs))
                ? estimate(mostMs)
                : least + " to " + estimate(mostMs);
    }

    /**
     * Returns a time to wait, rounded up so that it is long enough: to 5 s below a minute, to
     * minutes below an hour, to 5 minutes beyond; with no-break spaces.
     *
     * @param ms milliseconds, not negative
     */
    public static String atLeast(long ms) {
        long unit = ms < MINUTE_MS ? 5_000 : ms < HOUR_S * 1_000 ? MINUTE_MS : 5 * MINUTE_MS;
        return unbroken((ms + unit - 1) / unit * unit);
    }

    private static boolean isHours(long ms) {
        return nearest(ms, MINUTE_MS / 2) >= 2 * 60;
    }

    private static String halfMinutes(long ms) {
        if (isHours(ms)) {
            return unbroken(nearest(ms, MINUTE_MS) * MINUTE_MS);
        }
        long halves = Math.max(ms > 0 ? 1 : 0, nearest(ms, MINUTE_MS / 2));
        return halves / 2 + (halves % 2 == 1 ? ".5" : "");
    }

    /**
     * Returns a time difference in words: {@code 5 s more}, {@code 2 min less}, or {@code the same
     * time}.
     *
     * @param ms milliseconds
     */
    public static String difference(long ms) {
        if (ms == 0) {
            return "the same time";
        }
        return ms < 0 ? of(ms).substring(1) + " less" : of(ms) + " more";
    }

    private static long nearest(long value, long unit) {
        return value / unit + (value % unit * 2 >= unit ? 1 : 0);
    }

    private static String rest(long value, String unit) {
        return value == 0 ? "" : "\u00a0" + value + "\u00a0" + unit;
    }
}
