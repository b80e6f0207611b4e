package reseat.internal.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for the colourings of all small graphs. */
class ColouringProperties {

    /** The fewest colours, against trying every colouring. */
    @Property(tries = 300)
    void colouringAgreesWithBruteForce(
            @ForAll @IntRange(min = 0, max = 7) int n, @ForAll long bits) {
        boolean[][] adjacent = new boolean[n][n];
        int bit = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                adjacent[i][j] = (bits >> bit++ & 1) == 1;
                adjacent[j][i] = adjacent[i][j];
            }
        }
        Colouring colouring = Colouring.fewest(adjacent, 1_000_000);
        assertTrue(colouring.proved());
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                assertTrue(
                        !adjacent[i][j]
                                || !colouring.colours().get(i).equals(colouring.colours().get(j)));
            }
        }
        assertEquals(fewest(adjacent), colouring.count());
        for (int i : colouring.clique()) {
            for (int j : colouring.clique()) {
                assertTrue(i == j || adjacent[i][j]);
            }
        }
    }

    private static int fewest(boolean[][] adjacent) {
        int n = adjacent.length;
        for (int k = 0; k <= n; k++) {
            if (colourable(adjacent, new int[n], 0, k)) {
                return k;
            }
        }
        throw new AssertionError();
    }

    private static boolean colourable(boolean[][] adjacent, int[] colours, int at, int k) {
        if (at == colours.length) {
            return true;
        }
        for (int c = 0; c < k; c++) {
            boolean free = true;
            for (int before = 0; before < at; before++) {
                free &= !adjacent[at][before] || colours[before] != c;
            }
            colours[at] = c;
            if (free && colourable(adjacent, colours, at + 1, k)) {
                return true;
            }
        }
        return false;
    }
}
