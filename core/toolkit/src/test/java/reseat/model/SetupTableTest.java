package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SetupTableTest {

    private static final Map<String, Map<String, Long>> POSTURES =
            Map.of("up", Map.of("down", 700L), "down", Map.of("up", 800L));

    /** Rows for hand, T5 and tweezers, in this order; only the changes between different ones. */
    private static Map<String, Map<String, Long>> tools(long handToT5, long handToTweezers) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        table.put("hand", Map.of("t5", handToT5, "tweezers", handToTweezers));
        table.put("t5", Map.of("hand", 40L, "tweezers", 60L));
        table.put("tweezers", Map.of("hand", 50L, "t5", 70L));
        return table;
    }

    private static String refusal(Map<String, Map<String, Long>> table) {
        return SetupTable.check("tool", table).orElse("");
    }

    @Test
    void aSetupIsTheChangeOfToolPlusTheChangeOfPosture() {
        SetupTable table = new SetupTable(tools(100, 110), POSTURES);
        assertEquals(100, table.toolChangeMs("hand", "t5"));
        assertEquals(40, table.toolChangeMs("t5", "hand"));
        assertEquals(800, table.postureChangeMs("down", "up"));
        assertEquals(740, table.setupMs("t5", "up", "hand", "down"));
    }

    @Test
    void stayingCostsNothingStatedOrNot() {
        SetupTable table = new SetupTable(tools(100, 110), Map.of("up", Map.of("up", 0L)));
        assertEquals(0, table.setupMs("t5", "up", "t5", "up"));
    }

    @Test
    void keepsToolsAndPosturesInTheOrderOfTheTable() {
        SetupTable table = new SetupTable(tools(100, 110), Map.of("up", Map.of()));
        assertEquals(List.of("hand", "t5", "tweezers"), table.tools());
        assertEquals(List.of("up"), table.postures());
    }

    @Test
    void whatTheTableDoesNotKnowIsNamed() {
        SetupTable table = new SetupTable(tools(100, 110), POSTURES);
        assertEquals(
                "the set-up table has no tool ph0",
                assertThrows(IllegalArgumentException.class, () -> table.toolChangeMs("ph0", "t5"))
                        .getMessage());
        assertEquals(
                "the set-up table has no posture edge",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> table.postureChangeMs("up", "edge"))
                        .getMessage());
    }

    @Test
    void everyChangeHasATime() {
        Map<String, Map<String, Long>> table = tools(100, 110);
        table.put("t5", Map.of("hand", 40L));
        assertEquals("the change of tool from t5 to tweezers has no time", refusal(table));
    }

    /** Duration.MAX_MS is 24 h; it and zero are still allowed. */
    @Test
    void aChangeTakesUpToADay() {
        Map<String, Map<String, Long>> edges =
                Map.of("up", Map.of("down", 86_400_000L), "down", Map.of("up", 0L));
        assertEquals(Optional.empty(), SetupTable.check("posture", edges));
        assertEquals(
                "the change of posture from up to down must be between 0 and 24 h, not 86400001 ms",
                SetupTable.check("posture", ordered("up", 86_400_001L, "down", 5L)).orElse(""));
        assertEquals(
                "the change of posture from up to down must be between 0 and 24 h, not -1 ms",
                SetupTable.check("posture", ordered("up", -1L, "down", 5L)).orElse(""));
    }

    @Test
    void stayingMustNotBeCharged() {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>(tools(100, 110));
        table.put("t5", Map.of("hand", 40L, "t5", 5L, "tweezers", 60L));
        assertEquals("staying with tool t5 must cost 0 ms, not 5", refusal(table));
    }

    /**
     * hand to t5 (100) and on to tweezers (60) is 160: as much is allowed directly, more is not.
     */
    @Test
    void aDetourIsNeverCheaper() {
        assertEquals("", refusal(tools(100, 160)));
        assertEquals(
                "the change of tool from hand to tweezers costs 161 ms, but over t5 only 160 ms:"
                        + " set-ups must obey the triangle inequality",
                refusal(tools(100, 161)));
    }

    @Test
    void allThatIsWrongIsToldAtOnce() {
        assertEquals(
                "the change of tool from a to b has no time; the change of posture"
                        + " from up to down has no time",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        new SetupTable(
                                                twoWithoutTimes("a", "b"),
                                                twoWithoutTimes("up", "down")))
                        .getMessage());
    }

    private static Map<String, Map<String, Long>> ordered(
            String one, long toOther, String other, long back) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        table.put(one, Map.of(other, toOther));
        table.put(other, Map.of(one, back));
        return table;
    }

    private static Map<String, Map<String, Long>> twoWithoutTimes(String one, String other) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        table.put(one, Map.of());
        table.put(other, Map.of());
        return table;
    }
}
