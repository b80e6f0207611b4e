package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.PlanRequest;

/**
 * Carries out works in an order that is only roughly known. Each act takes 1500 ms and each change
 * of tool 200 ms unless a device says otherwise ({@link Toy}).
 */
class FollowingTest {

    private static final String NOWHERE = "does not lead there";

    /** A board under a lid; upon the lid lies a tape. */
    private static final Device LID =
            Toy.of(
                    "part tape",
                    "part lid under tape",
                    "part board under lid",
                    "joint seal holds tape lid",
                    "joint screw holds lid frame tool t5",
                    "joint clip holds lid frame",
                    "joint plug holds board frame under lid");

    private static String follow(PlanRequest request, String... works) {
        Trial trial = new Trial(request);
        Node start = trial.judged();
        List<Integer> numbers = new ArrayList<>();
        for (String work : works) {
            int node = trial.task.c.node(work);
            numbers.add(node >= 0 ? node : trial.task.c.nodes + trial.task.c.part(work));
        }
        Node end = new Following(trial.task, trial.judge.landmarks).follow(start, numbers);
        if (end == null) {
            return NOWHERE;
        }
        String steps =
                end.steps().stream()
                        .map(step -> name(trial, step))
                        .collect(Collectors.joining(" "));
        return steps + ": " + end.cost;
    }

    private static String name(Trial trial, Node.Step step) {
        List<String> names = new ArrayList<>();
        for (int work : step.works(trial.task.c)) {
            names.add(
                    work < trial.task.c.nodes
                            ? trial.task.c.members[work][0]
                            : trial.task.c.partIds[work - trial.task.c.nodes]);
        }
        String way =
                step instanceof Node.Step.Release release && release.option() > 0
                        ? "/" + trial.task.c.options[release.node()][release.option()].id()
                        : "";
        return names.stream().sorted().collect(Collectors.joining("+")) + way;
    }

    private static PlanRequest free(Device device, String part) {
        return PlanRequest.of(device, new Goal.Free(List.of(part)));
    }

    @Test
    void doesFirstWhatTheToolInHandCanDo() {
        assertEquals(
                "seal tape clip screw lid: 7900",
                follow(free(LID, "lid"), "screw", "seal", "tape", "clip", "lid"));
    }

    @Test
    void takesAlongWhatLiesUponAPartOrHangsOnIt() {
        assertEquals(
                "clip screw lid+tape plug board: 7900",
                follow(free(LID, "board"), "clip", "screw", "lid", "plug", "board"));
        // what went along need not be moved again
        assertEquals(
                "clip screw lid+tape plug board: 7900",
                follow(free(LID, "board"), "clip", "screw", "lid", "tape", "plug", "board"));
    }

    @Test
    void keepsPartsTogetherOnlyWhileNoJointBetweenThemIsToBeReleased() {
        assertEquals(
                "clip seal tape screw lid plug board: 10900",
                follow(
                        free(LID, "board"),
                        "clip",
                        "screw",
                        "lid",
                        "seal",
                        "tape",
                        "plug",
                        "board"));
    }

    @Test
    void doesNotGoOnWithoutWhatIsNeeded() {
        assertEquals(NOWHERE, follow(free(LID, "board"), "clip", "lid", "plug", "board"));
        assertEquals(NOWHERE, follow(free(LID, "board")));
    }

    @Test
    void endsAtTheGoalWhateverIsLeftToDo() {
        assertEquals(
                "clip screw lid+tape: 4900",
                follow(
                        PlanRequest.of(LID, new Goal.Reach("plug")),
                        "clip",
                        "screw",
                        "lid",
                        "plug",
                        "board"));
    }

    @Test
    void choosesTheWayThatIsCheapestWithItsChangeOfTool() {
        String plug = "joint plug holds board frame tool spudger or hand dearer ";
        // with a spudger 200 + 1500
        assertEquals(
                "plug/hand board: 3100",
                follow(free(Toy.of("part board", plug + 100), "board"), "plug", "board"));
        assertEquals(
                "plug board: 3400",
                follow(free(Toy.of("part board", plug + 300), "board"), "plug", "board"));
        // as dear as each other: the one that the device names first
        assertEquals(
                "plug board: 3400",
                follow(free(Toy.of("part board", plug + 200), "board"), "plug", "board"));
    }

    @Test
    void makesARequiredMoveAsSoonAsItIsPossible() {
        PlanRequest together =
                free(LID, "board").with(Rules.none().requireActs(List.of("move:lid+tape")));
        assertEquals(
                "clip screw lid+tape plug board: 7900",
                follow(together, "clip", "screw", "plug", "board"));
        // nor before a screw that holds one of them is out, whatever is done last
        assertEquals(NOWHERE, follow(together, "clip", "plug", "board"));
    }

    @Test
    void makesARequiredMoveOnlyWithWhatLiesUponIt() {
        PlanRequest alone = free(LID, "lid").with(Rules.none().requireActs(List.of("move:lid")));
        // the tape lies upon the lid until it is moved
        assertEquals(
                "clip seal tape screw lid: 7900", follow(alone, "screw", "clip", "seal", "tape"));
    }

    @Test
    void waitsWithARequiredMoveForWhatStillLiesUponItThoughNothingHoldsIt() {
        Device clipped =
                Toy.of(
                        "part tape",
                        "part lid under tape",
                        "joint seal holds tape lid",
                        "joint clip holds lid frame");
        PlanRequest alone =
                free(clipped, "lid").with(Rules.none().requireActs(List.of("move:lid")));
        assertEquals("clip seal tape lid: 6000", follow(alone, "clip", "seal", "tape"));
    }

    @Test
    void makesNoForbiddenMove() {
        PlanRequest apart =
                free(LID, "board").with(Rules.none().forbidActs(List.of("move:lid+tape")));
        assertEquals(NOWHERE, follow(apart, "clip", "screw", "lid", "plug", "board"));
        assertEquals(
                "clip seal tape screw lid plug board: 10900",
                follow(apart, "clip", "seal", "screw", "lid", "tape", "plug", "board"));
    }

    @Test
    void movesNothingThatWouldOnlyBeCarriedAboutTogether() {
        PlanRequest lifted =
                PlanRequest.of(LID, new Goal.Teardown())
                        .from(new State(Set.of("clip", "screw"), List.of(Set.of("lid", "tape"))));
        assertEquals(NOWHERE, follow(lifted, "lid", "plug", "board"));
        assertEquals("seal plug board tape: 6000", follow(lifted, "seal", "plug", "board", "tape"));
    }
}
