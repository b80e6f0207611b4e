package reseat.model;

/**
 * An act with its cost at its place in a plan.
 *
 * @param tool tool in hand
 * @param posture posture of the device
 * @param ms time of the act, in milliseconds
 * @param restoreMs time of its restore act, in milliseconds
 * @param setupMs set-up charged before it, in milliseconds
 */
public record CostedAct(
        Act act, String tool, String posture, long ms, long restoreMs, long setupMs) {

    /** Returns everything that the act adds to the cost of a plan, in milliseconds. */
    public long costMs() {
        return ms + restoreMs + setupMs;
    }
}
