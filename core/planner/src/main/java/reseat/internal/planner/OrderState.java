package reseat.internal.planner;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Work done, the class in hand, and the way there. Equal by work done and class. */
final class OrderState {

    final long[] done;

    /** Items not done of which all that come before are. */
    final long[] ready;

    final int clazz;

    /** How often sets of tools, and of postures, must still be taken up. */
    final short[] tools;

    final short[] postures;

    final long cost;
    final long bound;
    final @Nullable OrderState from;
    private final int hash;

    OrderState(
            long[] done,
            long[] ready,
            int clazz,
            short[] tools,
            short[] postures,
            long cost,
            long bound,
            @Nullable OrderState from) {
        this.done = done;
        this.ready = ready;
        this.clazz = clazz;
        this.tools = tools;
        this.postures = postures;
        this.cost = cost;
        this.bound = bound;
        this.from = from;
        // sets and classes that differ in few bits must not share a hash, as they would under a
        // sum of 31sts; the class is spread, or it would stand for the first items
        long mixed = clazz * 0xC2B2AE3D27D4EB4FL;
        for (long word : done) {
            mixed = (mixed ^ word) * 0x9E3779B97F4A7C15L;
            mixed ^= mixed >>> 32;
        }
        hash = (int) mixed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OrderState that
                && hash == that.hash
                && clazz == that.clazz
                && Arrays.equals(done, that.done);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
