package reseat.internal.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Graphs whose chromatic number is known. */
class ColouringTest {

    private static final long ENOUGH = 1_000_000;

    private static boolean[][] graph(int n, int... ends) {
        boolean[][] adjacent = new boolean[n][n];
        for (int i = 0; i < ends.length; i += 2) {
            adjacent[ends[i]][ends[i + 1]] = true;
            adjacent[ends[i + 1]][ends[i]] = true;
        }
        return adjacent;
    }

    private static boolean[][] ring(int n) {
        boolean[][] adjacent = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            adjacent[i][next] = true;
            adjacent[next][i] = true;
        }
        return adjacent;
    }

    private static Colouring colour(boolean[][] adjacent, int fewest) {
        Colouring colouring = Colouring.fewest(adjacent, ENOUGH);
        List<Integer> colours = colouring.colours();
        for (int a = 0; a < adjacent.length; a++) {
            for (int b = 0; b < adjacent.length; b++) {
                if (adjacent[a][b]) {
                    assertNotEquals(colours.get(a), colours.get(b), a + " and " + b);
                }
            }
        }
        for (int a : colouring.clique()) {
            for (int b : colouring.clique()) {
                assertEquals(a != b, adjacent[a][b], "the clique is one");
            }
        }
        assertEquals(fewest, colouring.count());
        assertEquals(fewest, colours.stream().distinct().count());
        assertTrue(colouring.proved());
        return colouring;
    }

    @Test
    void anEvenRingNeedsTwoColoursAndAnOddOneThree() {
        colour(ring(6), 2);
        colour(ring(7), 3);
    }

    @Test
    void coloursAreNumberedInTheOrderOfFirstUse() {
        assertEquals(List.of(0, 1, 0, 1), colour(ring(4), 2).colours());
        assertEquals(List.of(0, 0, 0), colour(new boolean[3][3], 1).colours());
    }

    @Test
    void whatIsAllAdjacentIsItsOwnClique() {
        Colouring four = colour(graph(5, 1, 2, 1, 3, 1, 4, 2, 3, 2, 4, 3, 4, 0, 1), 4);
        assertEquals(List.of(1, 2, 3, 4), four.clique());
    }

    /** A hub beside a ring of five: no four are mutually adjacent, yet four colours are needed. */
    @Test
    void aWheelWithFiveSpokesNeedsFour() {
        Colouring wheel =
                colour(graph(6, 0, 1, 1, 2, 2, 3, 3, 4, 4, 0, 5, 0, 5, 1, 5, 2, 5, 3, 5, 4), 4);
        assertEquals(3, wheel.clique().size());
    }

    /** Grötzsch's graph (1959): eleven vertices, no triangle, four colours. */
    @Test
    void groetzschsGraphHasNoTriangleAndNeedsFour() {
        boolean[][] adjacent = new boolean[11][11];
        for (int i = 0; i < 5; i++) {
            int next = (i + 1) % 5;
            int before = (i + 4) % 5;
            for (int[] pair :
                    new int[][] {{i, next}, {5 + i, next}, {5 + i, before}, {5 + i, 10}}) {
                adjacent[pair[0]][pair[1]] = true;
                adjacent[pair[1]][pair[0]] = true;
            }
        }
        assertEquals(2, colour(adjacent, 4).clique().size());
    }

    /**
     * Two rows of six, each vertex adjacent to all of the other row but its own opposite. Taking
     * the vertex with the most colours round it next colours bipartite graphs at once (Brélaz
     * 1979).
     */
    @Test
    void aBipartiteGraphIsColouredWithoutTurningBack() {
        boolean[][] crown = new boolean[12][12];
        for (int a = 0; a < 6; a++) {
            for (int b = 0; b < 6; b++) {
                // rows interleaved, so that the order of the list is the worst
                crown[2 * a][2 * b + 1] = a != b;
                crown[2 * b + 1][2 * a] = a != b;
            }
        }
        assertEquals(13, colour(crown, 2).states());
    }

    @Test
    void aSearchThatIsCutShortProvesNothingUnlessAClique() {
        Colouring cut = Colouring.fewest(ring(5), 0);
        assertFalse(cut.proved());
        assertEquals(5, cut.count(), "each its own colour");
        assertTrue(Colouring.fewest(graph(3, 0, 1, 0, 2, 1, 2), 0).proved());
        assertTrue(Colouring.fewest(new boolean[0][0], 0).proved());
    }
}
