package reseat.stock.desk;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Allocates lines of a stock to competing needs, so that as much as possible is served. Each need
 * takes from its lines in their order; where an earlier need has emptied a line that a later one
 * depends on, the earlier one moves to another of its own. This is a maximum flow by shortest
 * paths, so it ends after at most (needs x lines)^2 rounds.
 */
final class Allocation {

    private final List<List<Integer>> choices;
    private final BigDecimal[] left;
    private final BigDecimal[][] taken;

    /**
     * @param choices for each need, the lines that can serve it, best first
     * @param available how much there is of each line
     */
    Allocation(List<List<Integer>> choices, List<BigDecimal> available) {
        this.choices = choices;
        this.left = available.toArray(BigDecimal[]::new);
        this.taken = new BigDecimal[choices.size()][left.length];
        for (BigDecimal[] row : taken) {
            Arrays.fill(row, BigDecimal.ZERO);
        }
    }

    /** Takes a quantity for a need; returns how much was not available. */
    BigDecimal take(int need, BigDecimal quantity) {
        BigDecimal open = quantity;
        while (open.signum() > 0) {
            Path path = path(need);
            if (path.end < 0) {
                break;
            }
            BigDecimal amount = open.min(left[path.end]);
            for (int line = path.end; path.taker[line] != need; ) {
                int from = path.cameBy[path.taker[line]];
                amount = amount.min(taken[path.taker[line]][from]);
                line = from;
            }
            left[path.end] = left[path.end].subtract(amount);
            for (int line = path.end; ; ) {
                int taker = path.taker[line];
                taken[taker][line] = taken[taker][line].add(amount);
                if (taker == need) {
                    break;
                }
                int from = path.cameBy[taker];
                taken[taker][from] = taken[taker][from].subtract(amount);
                line = from;
            }
            open = open.subtract(amount);
        }
        return open;
    }

    /** Returns how much of a line a need has. */
    BigDecimal taken(int need, int line) {
        return taken[need][line];
    }

    /** Returns how much of a line is left. */
    BigDecimal left(int line) {
        return left[line];
    }

    /**
     * A path to a line that has something left: its end (-1 if there is none), for each line met
     * the need that would take from it, and for each need met the line that it would release.
     */
    private static final class Path {
        private final int[] taker;
        private final int[] cameBy;
        private int end = -1;

        Path(int lines, int needs) {
            taker = new int[lines];
            cameBy = new int[needs];
            Arrays.fill(taker, -1);
        }
    }

    private Path path(int start) {
        Path path = new Path(left.length, choices.size());
        boolean[] met = new boolean[choices.size()];
        met[start] = true;
        Deque<Integer> queue = new ArrayDeque<>(List.of(start));
        while (!queue.isEmpty()) {
            int need = queue.remove();
            for (int line : choices.get(need)) {
                if (path.taker[line] >= 0) {
                    continue;
                }
                path.taker[line] = need;
                if (left[line].signum() > 0) {
                    path.end = line;
                    return path;
                }
                for (int other = 0; other < met.length; other++) {
                    if (!met[other] && taken[other][line].signum() > 0) {
                        met[other] = true;
                        path.cameBy[other] = line;
                        queue.add(other);
                    }
                }
            }
        }
        return path;
    }
}
