package reseat.euindex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked cases of {@code shared/facts/eu-index.md} section 10: invented devices, added up there by
 * hand with exact decimals from the formula of Delegated Regulation (EU) 2023/1669, Annex IV 5.
 */
class RepairIndexTest {

    /**
     * Points in the order battery, display, back cover, cameras, port, button, microphone, speaker.
     */
    private static RepairIndex index(
            String depth, String fasteners, String tools, int parts, int updates, int information) {
        int[] d = numbers(depth);
        int[] f = numbers(fasteners);
        int[] t = numbers(tools);
        Map<PriorityPart, PartPoints> points = new EnumMap<>(PriorityPart.class);
        for (int i = 0; i < 9; i++) {
            points.put(PriorityPart.values()[i], new PartPoints(d[i], f[i], t[i]));
        }
        return RepairIndex.of(points, new ProductPoints(parts, updates, information), false);
    }

    private static int[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToInt(Integer::parseInt).toArray();
    }

    @Test
    void addsUpTheWorkedTablet() {
        RepairIndex index =
                index("3 3 1 3 3 3 2 2 3", "3 3 1 5 5 3 5 1 3", "4 1 5 4 4 4 4 4 4", 2, 3, 3);

        assertEquals(270, index.depth());
        assertEquals(300, index.fasteners());
        assertEquals(320, index.tools());
        assertEquals(new BigDecimal("2.8050"), index.exact());
        assertEquals(new BigDecimal("2.81"), index.rounded());
        assertEquals('C', index.letter());
        assertFalse(index.isOnTheLimit());
    }

    @Test
    void addsUpTheWorkedTabletUnderTheStrictReading() {
        RepairIndex index =
                index("2 2 1 3 2 2 1 1 2", "3 3 1 5 5 3 5 1 3", "4 1 5 4 4 4 4 4 4", 2, 3, 3);

        assertEquals(185, index.depth());
        assertEquals(new BigDecimal("2.5925"), index.exact());
        assertEquals('C', index.letter());
    }

    @ParameterizedTest
    @CsvSource({
        "5 5 5 5 5 5 5 5 5, 5 5 5 5 5 5 5 5 5, 5 5 5 5 5 5 5 5 5, 5, 5, 5, 5.0000, A, false",
        "1 1 1 1 1 1 1 1 1, 1 1 1 1 1 1 1 1 1, 1 1 1 1 1 1 1 1 1, 1, 1, 1, 1.0000, E, false",
        "4 5 4 3 4 3 1 3 2, 3 5 5 1 1 1 1 5 3, 1 2 4 2 3 3 5 5 2, 4, 1, 5, 3.3450, C, true",
        "1 3 1 4 1 2 3 5 2, 3 3 5 1 1 1 3 3 5, 1 4 3 4 1 2 3 4 5, 5, 3, 5, 3.3500, B, false"
    })
    void meetsTheEdges(
            String depth,
            String fasteners,
            String tools,
            int parts,
            int updates,
            int information,
            BigDecimal exact,
            char letter,
            boolean limit) {
        RepairIndex index = index(depth, fasteners, tools, parts, updates, information);

        assertEquals(exact, index.exact());
        assertEquals(letter, index.letter());
        assertEquals(limit, index.isOnTheLimit());
    }

    @Test
    void weighsToOneWithAndWithoutAHinge() {
        for (boolean foldable : new boolean[] {true, false}) {
            assertEquals(
                    100,
                    Arrays.stream(PriorityPart.values()).mapToInt(p -> p.weight(foldable)).sum());
        }
    }

    @Test
    void givesAbsentPartsTheHighestPoints() {
        RepairIndex index = RepairIndex.of(Map.of(), new ProductPoints(1, 1, 1), false);

        assertEquals(500, index.depth());
        assertEquals(new BigDecimal("3.2000"), index.exact());
    }

    @Test
    void refusesPointsThatTheLawDoesNotKnow() {
        assertThrows(IllegalArgumentException.class, () -> new PartPoints(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new PartPoints(1, 6, 1));
        assertThrows(IllegalArgumentException.class, () -> new ProductPoints(1, 2, 3));
        assertThrows(IllegalArgumentException.class, () -> new ProductPoints(0, 1, 1));
    }
}
