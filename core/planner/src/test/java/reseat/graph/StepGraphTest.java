package reseat.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** What the step graph says of toy devices. */
class StepGraphTest {

    private static final Device STACK =
            Toy.of(
                    "part lid",
                    "part board under lid",
                    "joint lid-1 holds lid frame tool t5",
                    "joint lid-2 holds lid frame tool t5",
                    "joint plug holds board frame under lid slack",
                    "joint board-screw holds board frame under lid tool t5");

    private static StepGraph graph(Device device) {
        return StepGraph.of(device, State.closed(), Rules.none());
    }

    private static List<String> labels(List<Work> works) {
        return works.stream().map(Work::label).toList();
    }

    private static List<String> conditions(Step step) {
        return step.conditions().stream().map(Condition::label).toList();
    }

    @Test
    void jointsThatAreAlikeAreOneNode() {
        assertEquals(
                List.of(List.of("lid-1", "lid-2"), List.of("plug"), List.of("board-screw")),
                graph(STACK).joints());
        assertEquals(
                List.of(
                        "lid-1/2 released",
                        "plug released",
                        "board-screw released",
                        "lid and frame apart",
                        "lid and board apart"),
                graph(STACK).facts().stream().map(Fact::label).toList());
    }

    @Test
    void tellsWhatMustComeBeforeAndWhatOfItJustBefore() {
        Before before = graph(STACK).mustComeBefore("board");
        assertTrue(before.possible());
        assertEquals(
                List.of("release lid-1/2", "move lid", "release board-screw"),
                labels(before.all()));
        assertEquals(List.of("release board-screw"), labels(before.immediate()));
    }

    @Test
    void aCableWithPlayDoesNotKeepItsPart() {
        Goal free = new Goal.Free(List.of("board"));
        assertFalse(labels(graph(STACK).mustComeBefore("board").all()).contains("release plug"));
        assertTrue(labels(graph(STACK).neededFor(free).works()).contains("release plug"));
    }

    @Test
    void tellsWhatAReleaseAndAMoveAreGoodFor() {
        Opens lid = graph(STACK).frees("lid");
        assertEquals(List.of("plug", "board-screw"), lid.uncovers());
        assertEquals(List.of("board"), lid.loosens());
        assertEquals(List.of("release plug", "release board-screw"), labels(lid.nowPossible()));
        assertEquals(
                List.of("release plug", "release board-screw", "move board"),
                labels(lid.neededBy()));
        assertEquals(List.of("lid"), graph(STACK).frees("lid-1").loosens());
    }

    @Test
    void ordersWhatAGoalNeeds() {
        Needed needed = graph(STACK).neededFor(new Goal.Free(List.of("board")));
        assertTrue(needed.possible());
        assertEquals(
                List.of(
                        "release lid-1/2",
                        "move lid",
                        "release plug",
                        "release board-screw",
                        "move board"),
                labels(needed.works()));
        assertEquals(
                List.of("move lid"),
                labels(needed.justBefore().get(new Work.Release(List.of("plug")))));
    }

    @Test
    void twoPartsComeApartByEitherOfThem() {
        Device device =
                Toy.of(
                        "part a",
                        "part b",
                        "part c under b",
                        "joint j holds a b",
                        "joint k holds b c",
                        "joint hidden holds c frame under a");
        List<Step> steps = graph(device).alternatives(new Fact.Apart("a", "b"));
        assertEquals(2, steps.size());
        assertEquals(Optional.of("b"), ((Step.Going) steps.get(0)).without());
        assertEquals(List.of("j released"), conditions(steps.get(0)));
        assertEquals(List.of("j released", "k released, or c along"), conditions(steps.get(1)));
    }

    @Test
    void theOneThatGoesTooLateIsPointless() {
        List<Step> steps = graph(STACK).alternatives(new Fact.Apart("lid", "board"));
        assertEquals(
                List.of(Step.Standing.OPEN, Step.Standing.NEVER),
                steps.stream().map(Step::standing).toList());
        Device under =
                Toy.of(
                        "part lid",
                        "part mat",
                        "part board under mat",
                        "joint mat-bond holds mat board under lid",
                        "joint lid-screw holds lid frame");
        List<Step> late = graph(under).alternatives(new Fact.Apart("lid", "mat"));
        assertEquals(
                List.of(Step.Standing.OPEN, Step.Standing.OPEN),
                late.stream().map(Step::standing).toList());
        List<Step> mat =
                StepGraph.of(under, State.closed(), Rules.none().forbidParts(List.of("board")))
                        .alternatives(new Fact.Apart("lid", "mat"));
        assertEquals(
                List.of(Step.Standing.OPEN, Step.Standing.POINTLESS),
                mat.stream().map(Step::standing).toList());
    }

    @Test
    void aSocketOnTheUndersideWaitsForTheMoveOfItsPart() {
        Device device =
                Toy.of(
                        "part lid",
                        "joint clip holds lid frame",
                        "joint cable holds frame lid under frame slack");
        assertEquals(
                List.of("release clip", "move lid"),
                labels(graph(device).mustComeBefore("cable").all()));
    }

    @Test
    void aSupplyIsCutByAnyIsolator() {
        Device device =
                Toy.of(
                        "part board",
                        "part door",
                        "joint main holds board frame needs cell",
                        "joint door-clip holds door frame",
                        "joint cell-plug holds board frame cuts cell under door",
                        "joint link holds board frame cuts cell under door");
        StepGraph graph = graph(device);
        List<String> before = labels(graph.mustComeBefore("main").all());
        assertEquals(List.of("release door-clip", "move door"), before);
        assertEquals(
                List.of("cell-plug", "link"),
                graph.alternatives(new Fact.Cut("cell")).stream()
                        .flatMap(step -> ((Step.ByWay) step).joints().stream())
                        .toList());
        assertEquals(List.of("main"), graph.frees("link").unpowers());
        StepGraph only =
                StepGraph.of(device, State.closed(), Rules.none().forbidJoints(List.of("link")));
        assertTrue(labels(only.mustComeBefore("main").all()).contains("release cell-plug"));
    }

    @Test
    void everyAllowedWayIsAnAlternative() {
        Device device =
                Toy.of("part a", "joint j holds a frame tool t5 or spudger", "part b under a");
        Fact released = new Fact.Released(List.of("j"));
        assertEquals(
                List.of("t5", "spudger"),
                graph(device).alternatives(released).stream()
                        .map(step -> ((Step.ByWay) step).way())
                        .toList());
        StepGraph without =
                StepGraph.of(device, State.closed(), Rules.none().forbidTools(List.of("t5")));
        assertEquals(1, without.alternatives(released).size());
        assertFalse(without.mustComeBefore(new Act.Release("j", "t5")).possible());
        assertTrue(without.mustComeBefore(new Act.Release("j", "spudger")).possible());
    }

    @Test
    void coversInARingLeaveTogether() {
        Device device =
                Toy.of(
                        "part a under b",
                        "part b under a",
                        "joint hook holds a b",
                        "joint screw holds b frame tool t5");
        StepGraph graph = graph(device);
        assertEquals(List.of("b"), graph.leavesWith("a").always());
        assertEquals(List.of("a"), graph.leavesWith("b").always());
        Group group = graph.groups().get(0);
        assertEquals(List.of("a", "b"), group.parts());
        assertEquals(
                List.of("hook holds a and b", "b lies over a", "a lies over b"),
                group.ties().stream().map(Tie::label).toList());
        assertEquals(List.of("screw released"), group.first().stream().map(Fact::label).toList());
        assertEquals(
                List.of("release screw"),
                labels(graph.mustComeBefore(new Act.MoveParts(List.of("a", "b"))).all()));
        assertFalse(graph.mustComeBefore(new Act.MoveParts(List.of("a"))).possible());
    }

    @Test
    void aCoverThatMayStayOnIsNoReasonToTakeItOff() {
        Device device =
                Toy.of(
                        "part shield",
                        "part board under shield",
                        "joint snap holds shield board",
                        "joint screw holds board frame");
        StepGraph graph = graph(device);
        assertEquals(List.of("release screw"), labels(graph.mustComeBefore("board").all()));
        assertEquals(List.of(), graph.leavesWith("board").always());
        assertEquals(List.of("shield"), graph.leavesWith("board").possible());
    }

    @Test
    void aScrewHiddenUntilThePartIsOutKeepsItsPartsTogether() {
        Device device =
                Toy.of(
                        "part case",
                        "part keys",
                        "joint case-screw holds case frame",
                        "joint keys-screw holds keys case under frame");
        assertEquals(List.of("keys"), graph(device).leavesWith("case").always());
        assertEquals(
                List.of("release case-screw", "move case"),
                labels(graph(device).mustComeBefore("keys-screw").all()));
    }

    @Test
    void partsOfDifferentToolsNeverLeaveTogether() {
        Device device =
                Toy.of("part a", "part b tool t5", "joint j holds a b", "joint k holds b frame");
        assertEquals(List.of(), graph(device).groups());
        assertEquals(List.of("release j"), labels(graph(device).mustComeBefore("a").all()));
    }

    @Test
    void whatIsDoneIsNotNeeded() {
        State open = new State(Set.of("lid-1", "lid-2"), List.of(Set.of("lid")));
        StepGraph graph = StepGraph.of(STACK, open, Rules.none());
        assertEquals(List.of("release board-screw"), labels(graph.mustComeBefore("board").all()));
        assertEquals(List.of(), graph.mustComeBefore("lid-1").all());
        assertEquals(List.of(), graph.alternatives(new Fact.Apart("lid", "board")));
        assertEquals(List.of(), graph.frees("lid-1").loosens());
    }

    @Test
    void aJointToBeReachedStaysConnected() {
        Needed needed = graph(STACK).neededFor(new Goal.Reach("plug"));
        assertEquals(List.of("release lid-1/2", "move lid"), labels(needed.works()));
    }

    @Test
    void whatIsRequiredIsNeeded() {
        Rules rules = Rules.none().requireJoints(List.of("plug")).requireParts(List.of("lid"));
        Needed needed =
                StepGraph.of(STACK, State.closed(), rules).neededFor(new Goal.Free(List.of("lid")));
        assertEquals(
                List.of("release lid-1/2", "move lid", "release plug"), labels(needed.works()));
    }

    @Test
    void refusesWhatTheDeviceHasNot() {
        assertThrows(IllegalArgumentException.class, () -> graph(STACK).mustComeBefore("fan"));
        assertThrows(
                IllegalArgumentException.class,
                () -> graph(STACK).alternatives(new Fact.Released(List.of("fan"))));
    }
}
