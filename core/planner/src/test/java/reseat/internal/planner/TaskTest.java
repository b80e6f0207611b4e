package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.internal.graph.Bits;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.PlanRequest;

/** A request in numbers: when the goal holds, and what of the requirements is met. */
class TaskTest {

    /** Lid and flap cover the board; a hinge links them. The screw needs the cell cut. */
    private static final Device DEVICE =
            Toy.of(
                    "part board under lid flap",
                    "part lid",
                    "part flap",
                    "joint plug holds lid frame cuts cell slack",
                    "joint hinge holds flap lid",
                    "joint screw holds board frame under lid needs cell tool t5");

    private static Task task(Goal goal, Rules rules) {
        return new Task(PlanRequest.of(DEVICE, goal).with(rules));
    }

    private static Task task(Rules rules) {
        return task(new Goal.Free(List.of("board")), rules);
    }

    /** With some joints released and some parts each in a place of its own. */
    private static Position at(Task task, long met, List<String> released, String... away) {
        long[] nodes = new long[Bits.words(task.c.nodes)];
        released.forEach(joint -> Bits.set(nodes, task.c.node(joint)));
        char[] place = task.start().place.clone();
        for (String part : away) {
            place[task.c.part(part)] = (char) task.c.part(part);
        }
        return new Position(nodes, place, task.c.startClass, met);
    }

    private static Device parts(int parts, String... more) {
        Stream<String> facts =
                IntStream.range(0, parts)
                        .boxed()
                        .flatMap(
                                p ->
                                        Stream.of(
                                                "part p" + p,
                                                "joint j" + p + " holds p" + p + " frame"));
        return Toy.of(Stream.concat(facts, Stream.of(more)).toArray(String[]::new));
    }

    /** The frame, 59 parts with a joint each and a loose part are 120; with 60 it is 121. */
    @Test
    void fromMoreThan120PartsAndJointsOnADeviceIsLarge() {
        assertFalse(
                new Task(PlanRequest.of(parts(59, "part loose"), new Goal.Teardown())).isLarge());
        assertTrue(new Task(PlanRequest.of(parts(60), new Goal.Teardown())).isLarge());
    }

    @Test
    void upTo62RequirementsAreKept() {
        PlanRequest request = PlanRequest.of(parts(63), new Goal.Teardown());
        List<String> ids = IntStream.range(0, 63).mapToObj(p -> "p" + p).toList();
        Task most = new Task(request.with(Rules.none().requireParts(ids.subList(0, 62))));
        assertEquals((1L << 62) - 1, most.allMet);
        PlanRequest tooMany = request.with(Rules.none().requireParts(ids));
        IllegalArgumentException why =
                assertThrows(IllegalArgumentException.class, () -> new Task(tooMany));
        assertEquals("at most 62 tools, parts and moves can be required, not 63", why.getMessage());
    }

    @Test
    void aJointCanBeReleasedOnceItsCoversAreAwayAndItsSuppliesCut() {
        Task task = task(Rules.none());
        int screw = task.c.node("screw");
        assertFalse(task.available(task.start(), screw));
        assertFalse(task.available(at(task, 0, List.of("plug")), screw));
        assertFalse(task.available(at(task, 0, List.of(), "lid"), screw));
        assertTrue(task.available(at(task, 0, List.of("plug"), "lid"), screw));
        assertTrue(task.available(task.start(), task.c.node("plug")));
    }

    /** Lid and flap have to be moved as one: until then the hinge stays. */
    @Test
    void aJointThatARequiredMoveHangsOnCannotBeReleasedBeforeIt() {
        Task task = task(Rules.none().requireActs(List.of("move:flap+lid")));
        int hinge = task.c.node("hinge");
        assertFalse(task.available(at(task, 0, List.of()), hinge));
        assertTrue(task.available(at(task, 1, List.of()), hinge));
        assertTrue(task.available(at(task, 0, List.of()), task.c.node("plug")));
    }

    @Test
    void aPartIsFreeOnceItsJointsAreReleasedAndItLiesAlone() {
        Task task = task(Rules.none());
        assertFalse(task.reached(task.start()));
        assertFalse(task.reached(at(task, 0, List.of("screw"))));
        assertFalse(task.reached(at(task, 0, List.of("plug"), "board")));
        assertTrue(task.reached(at(task, 0, List.of("screw"), "board")));
    }

    @Test
    void whatTheSpareIncludesMayStayOnIt() {
        Device device =
                Toy.of(
                        "part board spare chip",
                        "part chip",
                        "part lid",
                        "joint screw holds board frame",
                        "joint pin holds chip board");
        Task task = new Task(PlanRequest.of(device, new Goal.Free(List.of("board"))));
        char board = (char) task.c.part("board");
        char frame = 0;
        long[] released = {1L << task.c.node("screw")};
        char[] together = {frame, board, board, frame};
        char[] withLid = {frame, board, board, board};
        assertTrue(task.reached(new Position(released, together, 0, 0)));
        assertFalse(task.reached(new Position(released, withLid, 0, 0)));
    }

    @Test
    void aJointIsReachedWhileItIsUnreleasedAndCouldBeReleased() {
        Task task = task(new Goal.Reach("screw"), Rules.none());
        assertFalse(task.reached(task.start()));
        assertTrue(task.reached(at(task, 0, List.of("plug"), "lid")));
        assertFalse(task.reached(at(task, 0, List.of("plug", "screw"), "lid")));
        Task plug = task(new Goal.Reach("plug"), Rules.none());
        assertTrue(plug.reached(plug.start()));
        assertFalse(plug.reached(at(plug, 0, List.of("plug"))));
        Task without = task(new Goal.Reach("screw"), Rules.none().forbidTools(List.of("t5")));
        assertFalse(without.reached(at(without, 0, List.of("plug"), "lid")));
    }

    @Test
    void allIsApartOnceEachJointIsReleasedAndEachPartAlone() {
        Task task = task(new Goal.Teardown(), Rules.none());
        List<String> all = List.of("hinge", "screw", "plug");
        assertTrue(task.reached(at(task, 0, all, "board", "lid", "flap")));
        assertFalse(task.reached(at(task, 0, all, "board", "lid")));
        assertFalse(task.reached(at(task, 0, all.subList(0, 2), "board", "lid", "flap")));
    }

    @Test
    void theGoalWaitsForTheRequirements() {
        Task task = task(Rules.none().requireParts(List.of("lid")).requireTools(List.of("t5")));
        assertEquals(0b11, task.allMet);
        assertFalse(task.reached(at(task, 0b01, List.of("screw"), "board")));
        assertTrue(task.reached(at(task, 0b11, List.of("screw"), "board")));
    }

    /** Tools come first, then parts, then moves. */
    @Test
    void anActMeetsTheToolThePartsAndTheMoveThatItIs() {
        Task task =
                task(
                        Rules.none()
                                .requireTools(List.of("t5", "hand"))
                                .requireParts(List.of("lid", "board"))
                                .requireActs(List.of("move:flap+lid", "move:lid")));
        int hand = task.c.startClass;
        int t5 = task.c.options[task.c.node("screw")][0].clazz();
        int lid = task.c.part("lid");
        int flap = task.c.part("flap");
        assertEquals(0b111111, task.allMet);
        assertEquals(0b000001, task.met(0, t5, new int[] {}));
        assertEquals(0b000010, task.met(0, hand, new int[] {}));
        assertEquals(0b100110, task.met(0, hand, new int[] {lid}));
        assertEquals(0b010110, task.met(0, hand, new int[] {lid, flap}));
        assertEquals(0b001011, task.met(0b000001, hand, new int[] {task.c.part("board")}));
        assertEquals(0, task(Rules.none()).met(0, hand, new int[] {lid}));
    }

    @Test
    void whatIsStillToMoveIsWhatIsNotMetYet() {
        Task task =
                task(
                        Rules.none()
                                .requireTools(List.of("t5"))
                                .requireParts(List.of("lid", "board"))
                                .requireActs(List.of("move:flap+lid", "move:board")));
        int lid = task.c.part("lid");
        int board = task.c.part("board");
        int flap = task.c.part("flap");
        assertArrayEquals(new int[] {lid, board, flap}, task.toMove(0));
        assertArrayEquals(new int[] {board, lid, flap}, task.toMove(0b10010));
        assertArrayEquals(new int[] {lid, flap}, task.toMove(0b10110));
        assertArrayEquals(new int[] {lid}, task.toMove(0b11101));
        assertArrayEquals(new int[] {board}, task.toMove(0b01111));
        assertArrayEquals(new int[] {}, task.toMove(0b11111));
        assertArrayEquals(new int[] {lid, flap}, task.asOne(0b10111).get(0));
        assertArrayEquals(new int[] {board}, task.asOne(0b01111).get(0));
        assertEquals(2, task.asOne(0b00111).size());
        assertEquals(List.of(), task.asOne(0b11000));
        assertEquals(List.of(), task.asOne(0b11111));
        assertTrue(task.requiresTools());
        assertFalse(task(Rules.none().requireParts(List.of("lid"))).requiresTools());
    }

    @Test
    void aPartThatLiesElsewhereAtTheStartHasBeenMoved() {
        Rules rules = Rules.none().requireTools(List.of("t5")).requireParts(List.of("flap", "lid"));
        PlanRequest request =
                PlanRequest.of(DEVICE, new Goal.Free(List.of("board")))
                        .with(rules)
                        .from(new State(Set.of("hinge"), List.of(Set.of("lid"))));
        assertEquals(0b100, new Task(request).start().met);
    }

    @Test
    void aMoveIsForbiddenAsThePartsThatItTakes() {
        Task task = task(Rules.none().forbidActs(List.of("move:flap+lid")));
        int lid = task.c.part("lid");
        int flap = task.c.part("flap");
        assertTrue(task.forbidden(new int[] {lid, flap}));
        assertFalse(task.forbidden(new int[] {lid}));
        assertFalse(task(Rules.none()).forbidden(new int[] {lid, flap}));
    }
}
