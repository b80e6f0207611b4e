package reseat.fasten;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import reseat.internal.fasten.RingOrder;
import reseat.model.Point;

/**
 * The order in which the screws of one part are tightened, pass by pass.
 *
 * <p>A <em>ring</em> has all seats on the edge of the area they span; they are numbered round it
 * and visited criss-cross. A <em>row</em> is tightened from its middle outwards, side by side. A
 * <em>field</em> has seats inside as well: it is taken apart into rings, one within the other, and
 * worked from the innermost ring outwards, each ring criss-cross.
 *
 * <p>The criss-cross order of an even ring of {@code 2m} visits each place of the order of {@code
 * m} together with the one opposite; for powers of two this is bit reversal of the index, and it
 * gives the orders in use for 4, 6, 8, 12 and 16. An odd ring is visited as a star, in steps of
 * {@code (n-1)/2}. Shares of torque: 50 and 100 per cent for hard joints, 30, 60 and 100 per cent
 * and one round at full torque where something gives way (PCC-1 appendix F, as described in
 * secondary sources; common practice for small housings).
 *
 * @param shape how the seats lie
 * @param passes passes in order; the first starts every screw by hand
 */
public record TighteningPattern(Shape shape, List<Pass> passes) {

    public TighteningPattern {
        Objects.requireNonNull(shape, "shape");
        passes = List.copyOf(passes);
    }

    /** How seats lie. */
    public enum Shape {
        /** One seat. */
        SINGLE,
        /** All in one line. */
        ROW,
        /** All on the edge of the area they span. */
        RING,
        /** Some inside the area. */
        FIELD
    }

    /** What lies between the parts that the screws draw together. */
    public enum Backing {
        /** Part on part, no gasket, pad or spring. */
        HARD,
        /** A gasket, a thermal pad or springs, which give way while neighbours are tightened. */
        YIELDING
    }

    /** The action of a pass. */
    public enum Stage {
        /** Set in place and turned two to three turns by hand, so that no thread is crossed. */
        START_BY_HAND,
        /** Tightened to a share of the torque. */
        TIGHTEN,
        /** Gone round once more at the full torque; nothing should turn. */
        GO_ROUND
    }

    /**
     * One pass over all screws.
     *
     * @param stage what is done
     * @param torqueShare share of the torque, from 0 (by hand) to 1
     * @param order indices into the list of seats, counted from 0; each occurs once
     */
    public record Pass(Stage stage, double torqueShare, List<Integer> order) {
        public Pass {
            Objects.requireNonNull(stage, "stage");
            order = List.copyOf(order);
            if (!(torqueShare >= 0 && torqueShare <= 1)) {
                throw new IllegalArgumentException("a share must be from 0 to 1: " + torqueShare);
            }
        }
    }

    /**
     * Returns the pattern of a hard joint.
     *
     * @param seats where the seats lie; at least one
     * @throws IllegalArgumentException if there is no seat
     */
    public static TighteningPattern of(List<Point> seats) {
        return of(seats, Backing.HARD);
    }

    /**
     * Returns the pattern of seats.
     *
     * <p>The first seat of a ring is the first in the list; from there the ring is numbered
     * counter-clockwise. O(n² log n) time for n seats.
     *
     * @param seats where the seats lie; at least one
     * @param backing what lies between the parts
     * @throws IllegalArgumentException if there is no seat
     */
    public static TighteningPattern of(List<Point> seats, Backing backing) {
        return of(
                seats,
                backing == Backing.HARD ? List.of(0.5, 1.0) : List.of(0.3, 0.6, 1.0),
                backing == Backing.YIELDING);
    }

    /**
     * Returns the pattern of seats with torque shares of one's own.
     *
     * @param seats where the seats lie; at least one
     * @param shares rising shares of torque, each above 0, the last 1; a single screw skips to the
     *     last
     * @param goRound whether a round at the full torque is added
     * @throws IllegalArgumentException if there is no seat, or shares do not rise to 1
     */
    public static TighteningPattern of(List<Point> seats, List<Double> shares, boolean goRound) {
        Objects.requireNonNull(seats, "seats");
        if (seats.isEmpty()) {
            throw new IllegalArgumentException("a tightening pattern must have at least one seat");
        }
        requireRising(shares);
        RingOrder rings = RingOrder.of(seats);
        List<Integer> order = rings.crissCross();
        List<Pass> passes = new ArrayList<>();
        passes.add(new Pass(Stage.START_BY_HAND, 0, order));
        for (double share :
                seats.size() == 1 ? shares.subList(shares.size() - 1, shares.size()) : shares) {
            passes.add(new Pass(Stage.TIGHTEN, share, order));
        }
        if (goRound && seats.size() > 1) {
            passes.add(new Pass(Stage.GO_ROUND, 1, rings.round()));
        }
        return new TighteningPattern(rings.shape(), passes);
    }

    /**
     * Returns the criss-cross order of a ring of n places.
     *
     * @param n number of places, at least 1
     * @return the places, counted from 0, each once
     * @throws IllegalArgumentException if n is not positive
     */
    public static List<Integer> crissCross(int n) {
        return RingOrder.crissCross(n);
    }

    /**
     * Returns the order of loosening: the reverse of the order of tightening. Where a board or a
     * heat spreader is under spring load, ease every screw by half a turn in this order first.
     */
    public List<Integer> loosening() {
        List<Integer> order = new ArrayList<>(passes.get(0).order());
        Collections.reverse(order);
        return List.copyOf(order);
    }

    private static void requireRising(List<Double> shares) {
        double before = 0;
        for (double share : shares) {
            if (!(share > before)) {
                throw new IllegalArgumentException("shares of torque must rise: " + shares);
            }
            before = share;
        }
        if (before != 1) {
            throw new IllegalArgumentException("the last share of torque must be 1: " + shares);
        }
    }
}
