package reseat.internal.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ApiRangeTest {

    @Test
    void readsRanges() {
        assertEquals(new ApiRange(1, 1), ApiRange.parse("[1,2)"));
        assertEquals(new ApiRange(1, 2), ApiRange.parse(" [1, 2] "));
        assertEquals(new ApiRange(2, 4), ApiRange.parse("(1,4]"));
        assertEquals(new ApiRange(3, 3), ApiRange.parse("3"));
    }

    @Test
    void holdsWhatLiesInside() {
        assertTrue(ApiRange.parse("[1,2)").holds(1));
        assertFalse(ApiRange.parse("[1,2)").holds(2));
        assertFalse(ApiRange.parse("(1,2)").holds(1));
    }

    @Test
    void refusesAnythingElse() {
        for (String text : new String[] {"", "1.0", "[1,2", "any", "[,2)"}) {
            assertThrows(IllegalArgumentException.class, () -> ApiRange.parse(text), text);
        }
    }
}
