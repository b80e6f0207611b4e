package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What single facts refuse, and what they are called where people read them. */
class FactsTest {

    @ParameterizedTest
    @ValueSource(strings = {"a", "Z", "0", "lid-1", "m2.5_x-4", "A.", "9-"})
    void anIdIsLettersDigitsAndThreeMarks(String id) {
        assertTrue(Ids.valid(id), id);
        assertTrue(id.matches(Ids.PATTERN), id);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "-a", ".a", "_a", "a b", "a/b", "ü", "aé", "a:", "@a", "[a", "`a", "{a", "/a",
                ":a"
            })
    void anythingElseIsNoId(String text) {
        assertFalse(Ids.valid(text), text);
        assertFalse(text.matches(Ids.PATTERN), text);
    }

    @Test
    void anIdHasUpTo64Characters() {
        assertTrue(Ids.valid("x".repeat(64)));
        assertFalse(Ids.valid("x".repeat(65)));
    }

    @Test
    void anActLastsUpToADay() {
        assertEquals(86_400_000, Duration.stated(86_400_000).ms());
        assertEquals("0 ms", Duration.stated(0).text());
        assertThrows(IllegalArgumentException.class, () -> Duration.stated(86_400_001));
        assertThrows(IllegalArgumentException.class, () -> Duration.stated(-1));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, a.yaml", "7, 0, a.yaml:7", "7, 3, a.yaml:7:3"})
    void aPlaceLeavesOutWhatIsNotKnown(int line, int column, String text) {
        assertEquals(text, new Origin("a.yaml", line, column).toString());
    }

    @Test
    void aPlaceNeedsAFileAndCountsFrom1() {
        assertThrows(IllegalArgumentException.class, () -> new Origin("", 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Origin("a.yaml", -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Origin("a.yaml", 1, -1));
    }

    @Test
    void problemsStandInTheOrderOfTheFilesThenErrorsFirst() {
        Origin early = new Origin("a.yaml", 2, 9);
        Origin late = new Origin("a.yaml", 10, 1);
        List<Problem> inOrder =
                List.of(
                        Problem.warning(new Origin("a.yaml", 2, 8), "z"),
                        Problem.error(early, "b"),
                        Problem.error(early, "c"),
                        Problem.warning(early, "a"),
                        Problem.error(late, "a"),
                        Problem.error(new Origin("b.yaml", 1, 1), "a"));
        assertEquals(inOrder, inOrder.stream().sorted().toList());
        assertEquals(
                inOrder,
                Stream.iterate(inOrder.size() - 1, i -> i >= 0, i -> i - 1)
                        .map(inOrder::get)
                        .sorted()
                        .toList());
    }

    @Test
    void aProblemIsOneLine() {
        Origin at = new Origin("a.yaml", 7, 3);
        assertEquals("a.yaml:7:3: error: no part", Problem.error(at, "no part").toString());
        assertEquals("a.yaml:7:3: warning: odd", Problem.warning(at, "odd").toString());
        assertFalse(Problem.warning(at, "odd").isError());
    }

    /** Plans, procedures and jobs are compared by these: they must never change. */
    @Test
    void theIdOfAnActIsMadeFromJointWayAndParts() {
        assertEquals("prepare:shut-down", new Act.Prepared("shut-down").id());
        assertEquals("release:lid-1/turn", new Act.Release("lid-1", "turn").id());
        assertEquals("move:lid+tape", new Act.MoveParts(List.of("lid", "tape")).id());
        assertThrows(IllegalArgumentException.class, () -> new Act.MoveParts(List.of()));
    }

    @Test
    void aGoalIsCalledInAFewWords() {
        assertEquals("free fan, duct", new Goal.Free(List.of("fan", "duct")).toString());
        assertEquals("reach fan-plug", new Goal.Reach("fan-plug").toString());
        assertEquals("full teardown", new Goal.Teardown().toString());
        assertThrows(IllegalArgumentException.class, () -> new Goal.Free(List.of()));
    }

    @Test
    void aJointHoldsTwoPartsOrMoreAndCanBeReleased() {
        Way way =
                new Way(
                        "usual", "undo", "hand", "up", 1, 1, List.of(), List.of(), "", List.of(),
                        List.of());
        Map<String, Way> ways = Map.of("usual", way);
        assertThrows(IllegalArgumentException.class, () -> joint(List.of("lid"), ways));
        assertThrows(
                IllegalArgumentException.class, () -> joint(List.of("lid", "frame"), Map.of()));
        Joint screw = joint(List.of("lid", "tape", "frame"), ways);
        assertEquals("frame", screw.site());
        assertFalse(screw.isIsolator());
    }

    private static Joint joint(List<String> holds, Map<String, Way> ways) {
        return new Joint(
                "screw",
                "screw",
                "screw",
                holds,
                List.of(),
                false,
                List.of(),
                List.of(),
                ways,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    /** ANSI Z535.6 asks for all three in a message of a manual. */
    @ParameterizedTest
    @CsvSource({"' ', fire, keep off", "hot, ' ', keep off", "hot, fire, ' '"})
    void aHazardSaysWhatItIsWhatFollowsAndHowToAvoidIt(
            String nature, String consequence, String avoidance) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Hazard("heat", Signal.WARNING, nature, consequence, avoidance));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, true",
        "200, 120, true",
        "200, 0, true",
        "-0.1, 5, false",
        "5, -0.1, false",
        "200.1, 5, false",
        "5, 120.1, false"
    })
    void theEdgeBelongsToTheOutline(double x, double y, boolean inside) {
        Outline outline = new Outline(200, 120, OptionalDouble.empty());
        assertEquals(inside, outline.contains(new Point(x, y)));
    }

    static Stream<Arguments> rules() {
        return Stream.of(
                rule("forbidActs", Rules::forbidActs, Rules::forbiddenActs),
                rule("forbidJoints", Rules::forbidJoints, Rules::forbiddenJoints),
                rule("forbidParts", Rules::forbidParts, Rules::forbiddenParts),
                rule("forbidTools", Rules::forbidTools, Rules::forbiddenTools),
                rule("requireActs", Rules::requireActs, Rules::requiredActs),
                rule("requireJoints", Rules::requireJoints, Rules::requiredJoints),
                rule("requireParts", Rules::requireParts, Rules::requiredParts),
                rule("requireTools", Rules::requireTools, Rules::requiredTools),
                rule("permitRuin", Rules::permitRuin, Rules::permittedRuin));
    }

    private static Arguments rule(
            String name,
            BiFunction<Rules, List<String>, Rules> add,
            Function<Rules, Set<String>> get) {
        return Arguments.of(name, add, get);
    }

    /** Each kind of rule grows by itself and leaves all others as they were. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void rulesAreAddedOneKindAtATime(
            String name,
            BiFunction<Rules, List<String>, Rules> add,
            Function<Rules, Set<String>> get) {
        Rules rules =
                new Rules(
                        Set.of("a"),
                        Set.of("b"),
                        Set.of("c"),
                        Set.of("d"),
                        Set.of("e"),
                        Set.of("f"),
                        Set.of("g"),
                        Set.of("h"),
                        Set.of("i"));
        Rules more = add.apply(rules, List.of("y", "x"));
        String had = get.apply(rules).iterator().next();
        assertEquals(List.of(had, "y", "x"), List.copyOf(get.apply(more)), name);
        List<Set<String>> before = all(rules);
        List<Set<String>> after = all(more);
        long changed =
                Stream.iterate(0, i -> i < before.size(), i -> i + 1)
                        .filter(i -> !before.get(i).equals(after.get(i)))
                        .count();
        assertEquals(1, changed, name);
        assertEquals(Set.of(), get.apply(Rules.none()));
    }

    private static List<Set<String>> all(Rules r) {
        return List.of(
                r.forbiddenActs(),
                r.forbiddenJoints(),
                r.forbiddenParts(),
                r.forbiddenTools(),
                r.requiredActs(),
                r.requiredJoints(),
                r.requiredParts(),
                r.requiredTools(),
                r.permittedRuin());
    }
}
