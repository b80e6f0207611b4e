package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * A colouring of a graph with the fewest colours. Branch and bound by saturation (Brélaz's DSATUR
 * order, exact): the vertex with the most colours among its neighbours is coloured next, ties by
 * degree, then by index, so that the same graph always gives the same colouring. A clique found
 * greedily bounds from below. Exponential in the worst case; the graphs of a device have tens of
 * vertices.
 */
public final class Colouring {

    private final boolean[][] adjacent;
    private final long effort;
    private final int[] colour;
    private int[] best;
    private int bestCount;
    private List<Integer> clique = List.of();
    private long states;
    private boolean cut;

    private Colouring(boolean[][] adjacent, long effort) {
        this.adjacent = adjacent;
        this.effort = effort;
        this.colour = new int[adjacent.length];
        Arrays.fill(colour, -1);
        this.best = new int[adjacent.length];
        for (int i = 0; i < best.length; i++) {
            best[i] = i;
        }
        this.bestCount = adjacent.length;
    }

    /**
     * Colours a graph.
     *
     * @param adjacent symmetric, false on the diagonal
     * @param effort number of states after which the search is cut short
     */
    public static Colouring fewest(boolean[][] adjacent, long effort) {
        Colouring colouring = new Colouring(adjacent, effort);
        colouring.clique = colouring.greedyClique();
        colouring.search(0, 0);
        return colouring;
    }

    /** Returns the colour of each vertex, numbered from 0 in the order of first use. */
    public List<Integer> colours() {
        List<Integer> seen = new ArrayList<>();
        List<Integer> all = new ArrayList<>();
        for (int c : best) {
            if (!seen.contains(c)) {
                seen.add(c);
            }
            all.add(seen.indexOf(c));
        }
        return all;
    }

    /** Returns the number of colours. */
    public int count() {
        return (int) Arrays.stream(best).distinct().count();
    }

    /** Returns vertices of which each is adjacent to each. */
    public List<Integer> clique() {
        return clique;
    }

    /** Returns whether fewer colours are impossible. */
    public boolean proved() {
        return !cut || clique.size() == count();
    }

    /** Returns the number of states searched. */
    public long states() {
        return states;
    }

    private void search(int done, int used) {
        if (cut || bestCount <= clique.size() || used >= bestCount) {
            return;
        }
        if (++states > effort) {
            cut = true;
            return;
        }
        if (done == colour.length) {
            best = colour.clone();
            bestCount = used;
            return;
        }
        int vertex = mostSaturated();
        for (int c = 0; c <= used && c < bestCount - 1; c++) {
            if (free(vertex, c)) {
                colour[vertex] = c;
                search(done + 1, Math.max(used, c + 1));
                colour[vertex] = -1;
            }
        }
    }

    private int mostSaturated() {
        int chosen = -1;
        int most = -1;
        for (int v = 0; v < colour.length; v++) {
            if (colour[v] < 0) {
                int weight = saturation(v) * (colour.length + 1) + degree(v);
                if (weight > most) {
                    most = weight;
                    chosen = v;
                }
            }
        }
        return chosen;
    }

    private int saturation(int v) {
        boolean[] seen = new boolean[colour.length];
        int count = 0;
        for (int w = 0; w < colour.length; w++) {
            if (adjacent[v][w] && colour[w] >= 0 && !seen[colour[w]]) {
                seen[colour[w]] = true;
                count++;
            }
        }
        return count;
    }

    private boolean free(int v, int c) {
        for (int w = 0; w < colour.length; w++) {
            if (adjacent[v][w] && colour[w] == c) {
                return false;
            }
        }
        return true;
    }

    private int degree(int v) {
        int count = 0;
        for (boolean edge : adjacent[v]) {
            count += edge ? 1 : 0;
        }
        return count;
    }

    private List<Integer> greedyClique() {
        List<Integer> largest = List.of();
        for (int start = 0; start < adjacent.length; start++) {
            List<Integer> members = new ArrayList<>(List.of(start));
            List<Integer> others = new ArrayList<>();
            for (int v = 0; v < adjacent.length; v++) {
                others.add(v);
            }
            others.sort((a, b) -> Integer.compare(degree(b), degree(a)));
            for (int v : others) {
                if (members.stream().allMatch(m -> adjacent[m][v])) {
                    members.add(v);
                }
            }
            if (members.size() > largest.size()) {
                largest = members;
            }
        }
        List<Integer> sorted = new ArrayList<>(largest);
        Collections.sort(sorted);
        return sorted;
    }
}
