package reseat.internal.order;

import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * Which costs an order can have at all: they differ by multiples of one number.
 *
 * <p>Every act but the last is left once and every act but the first is entered once, so taking an
 * amount off all steps from one act, or into one act, takes it off every order. When all that is
 * left is multiples of a number, costs of orders differ by multiples of it, and a bound may be
 * rounded up to the next cost that is possible. Published and measured costs are often multiples of
 * 5 or 10.
 */
final class Grain {

    private final long step;
    private final long offset;

    private Grain(long step, long offset) {
        this.step = step;
        this.offset = offset;
    }

    /** Finds the largest such number. */
    static Grain of(Network net) {
        int n = net.n;
        long[] leaving = new long[n];
        long[] entering = new long[n];
        boolean[] left = new boolean[n];
        boolean[] entered = new boolean[n];
        long step = 0;
        ArrayDeque<Integer> open = new ArrayDeque<>(); // acts to leave, and n + acts to enter
        for (int first = 0; first < n - 1; first++) {
            if (!left[first]) {
                left[first] = true;
                open.add(first);
            }
            while (!open.isEmpty()) {
                int node = open.remove();
                boolean leave = node < n;
                int act = leave ? node : node - n;
                for (int other : leave ? net.heads[act] : net.tails[act]) {
                    int tail = leave ? act : other;
                    int head = leave ? other : act;
                    long cost = net.cost[tail * n + head];
                    if (leave && !entered[other]) {
                        entered[other] = true;
                        entering[other] = cost - leaving[act];
                        open.add(n + other);
                    } else if (!leave && !left[other]) {
                        left[other] = true;
                        leaving[other] = cost - entering[act];
                        open.add(other);
                    }
                    step = gcd(step, Math.abs(cost - leaving[tail] - entering[head]));
                }
            }
        }
        return new Grain(step, Arrays.stream(leaving).sum() + Arrays.stream(entering).sum());
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** The least cost of an order that is not below the bound. */
    long up(long bound) {
        return step == 0 ? Math.max(bound, offset) : bound + Math.floorMod(offset - bound, step);
    }

    /** The greatest cost of an order that is below the given cost of one. */
    long below(long cost) {
        return cost - Math.max(1, step);
    }
}
