package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Positions are the same where the same is released, parts lie alike, and so on. */
class PositionTest {

    private static Position position(long released, String place, int clazz, long met) {
        return new Position(new long[] {released}, place.toCharArray(), clazz, met);
    }

    @Test
    void isTheSameAsAnotherOfTheSameFacts() {
        Position one = position(5, "abc", 2, 3);
        Position other = position(5, "abc", 2, 3);
        assertEquals(one, other);
        assertEquals(one.hashCode(), other.hashCode());
    }

    @Test
    void differsInAnyFact() {
        Position one = position(5, "abc", 2, 3);
        assertNotEquals(one, position(4, "abc", 2, 3));
        assertNotEquals(one, position(5, "abd", 2, 3));
        assertNotEquals(one, position(5, "abc", 1, 3));
        assertNotEquals(one, position(5, "abc", 2, 1));
        assertNotEquals(one, new Object());
    }

    /** A sum of products takes these for one: less by 31 here, more by one there. */
    @Test
    void differsWhereHashesAreTheSame() {
        Position one = position(5, "abc", 2, 30_000);
        for (Position other :
                List.of(
                        position(5, "abc", 1, 30_000 + 31),
                        position(5, "abd", 2, 30_000 - 31 * 31),
                        position(5, "abd", 2 - 31, 30_000),
                        position(6, "abc", 2, 30_000 - 31 * 31 * 31))) {
            assertEquals(one.hashCode(), other.hashCode());
            assertNotEquals(one, other);
        }
    }

    @Test
    void hashesTellPositionsApart() {
        Random random = new Random(1);
        Set<Integer> hashes = new HashSet<>();
        Set<Position> positions = new HashSet<>();
        for (int i = 0; i < 1_000; i++) {
            Position at =
                    position(
                            random.nextInt(1 << 20),
                            "" + (char) random.nextInt(20) + (char) random.nextInt(20),
                            random.nextInt(6),
                            random.nextInt(8));
            hashes.add(at.hashCode());
            positions.add(at);
        }
        assertTrue(
                hashes.size() > 0.99 * positions.size(),
                () -> hashes.size() + " hashes of " + positions.size());
    }

    /**
     * Two arrays with their heads, references and the object: an estimate, so that memory is
     * bounded.
     */
    @Test
    void takesEightBytesForEachWordAndTwoForEachPart() {
        Position small = new Position(new long[1], new char[4], 0, 0);
        assertEquals(8, new Position(new long[2], new char[4], 0, 0).bytes() - small.bytes());
        assertEquals(2, new Position(new long[1], new char[5], 0, 0).bytes() - small.bytes());
        assertTrue(small.bytes() > 40);
    }
}
