package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.prepared;
import static reseat.simulate.Sketch.release;
import static reseat.simulate.Sketch.way;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.simulate.Breach.Kind;

class UserRulesTest {

    private final Sketch sketch =
            new Sketch()
                    .part("lid")
                    .part("display")
                    .joint("lid-screw", "lid", "frame")
                    .ways(
                            "lid-screw",
                            way("turn", "t5", "face-up", 1, 1),
                            way("drill", "tweezers", "face-up", 1, 1, "lid"));

    private final Act[] usual = {release("lid-screw", "turn"), move("lid")};

    @Test
    void aForbiddenActIsCarriedOutAndReported() {
        Verdict verdict = judge(Rules.none().forbidActs(List.of("release:lid-screw/turn")), usual);
        assertTrue(verdict.allowed());
        assertFalse(verdict.valid());
        assertEquals(
                List.of(
                        new Breach(
                                Kind.FORBIDDEN_ACT,
                                "release:lid-screw/turn",
                                OptionalInt.of(0),
                                "Releasing the lid screw by the way \"turn\" is forbidden.")),
                verdict.breaches());
    }

    @Test
    void forbiddenJointsPartsAndToolsAreReportedWhereTheyAreUsed() {
        Rules rules =
                Rules.none()
                        .forbidJoints(List.of("lid-screw"))
                        .forbidParts(List.of("lid"))
                        .forbidTools(List.of("t5"));
        assertBroken(
                rules,
                List.of(
                        "Releasing the lid screw by the way \"turn\" takes the T5 bit,"
                                + " which must not be used.",
                        "The lid screw must not be released.",
                        "The lid must not be moved."),
                usual);
    }

    @Test
    void aWayThatRuinsAPartNeedsPermission() {
        Act[] drill = {release("lid-screw", "drill"), move("lid")};
        assertBroken(
                Rules.none(),
                List.of(
                        "Releasing the lid screw by the way \"drill\" ruins the lid,"
                                + " which is not permitted."),
                drill);
        assertTrue(judge(Rules.none().permitRuin(List.of("lid")), drill).valid());
        assertTrue(Simulator.simulate(sketch.device(), State.closed(), List.of(drill)).valid());
    }

    @Test
    void requiredThingsThatAreMissingAreNamed() {
        Rules rules =
                Rules.none()
                        .requireActs(List.of("move:display"))
                        .requireJoints(List.of("lid-screw"))
                        .requireParts(List.of("display"))
                        .requireTools(List.of("tweezers"));
        assertBroken(
                rules,
                List.of(
                        "The act \"move:display\" is required but missing.",
                        "The display must be moved and is not.",
                        "The tweezers must be used and is not."),
                usual);
        assertBroken(Rules.none().requireJoints(List.of("lid-screw")), List.of(), usual);
    }

    @Test
    void aRequiredJointThatIsStillMadeIsNamed() {
        sketch.joint("lid-clip", "lid", "frame");
        assertEquals(
                List.of(
                        new Breach(
                                Kind.REQUIRED_JOINT,
                                "lid-clip",
                                OptionalInt.empty(),
                                "The lid clip must be released and is not.")),
                judge(Rules.none().requireJoints(List.of("lid-clip")), usual[0]).breaches());
    }

    /** The act is the subject of the sentence, in the words of the device. */
    @Test
    void forbiddenActsOfAllKindsAreCalledByTheirNames() {
        sketch.prepare("shut-down", "Shut it down.", 1, 1).joint("display-clip", "display", "lid");
        Rules rules =
                Rules.none()
                        .forbidActs(
                                List.of(
                                        "prepare:shut-down",
                                        "release:display-clip/usual",
                                        "move:lid"));
        assertBroken(
                rules,
                List.of(
                        "\"Shut it down\" is forbidden.",
                        "Releasing the display clip is forbidden.",
                        "Moving the lid is forbidden."),
                prepared("shut-down"),
                usual[0],
                release("display-clip"),
                usual[1]);
    }

    @Test
    void whatIsWrongIsToldInTheOrderOfActsThenRulesThenGoal() {
        Rules rules = Rules.none().requireTools(List.of("tweezers"));
        Verdict verdict = judge(rules, usual[0], usual[0]);
        assertEquals(
                List.of(
                        "The lid screw is already released.",
                        "The tweezers must be used and is not."),
                verdict.sentences().subList(0, 2));
        assertEquals(verdict.goalMissing().orElseThrow(), verdict.sentences().get(2));
    }

    @Test
    void requiredJointsAndPartsMayHaveBeenDealtWithBeforeTheStart() {
        State start = new State(Set.of("lid-screw"), List.of(Set.of("lid")));
        Rules rules = Rules.none().requireJoints(List.of("lid-screw")).requireParts(List.of("lid"));
        Goal goal = new Goal.Free(List.of("lid"));
        assertTrue(Simulator.judge(sketch.device(), start, goal, rules, List.of()).valid());
    }

    @Test
    void prepareActsUseNoTool() {
        sketch.prepare("shut-down", "Shut it down", 1, 1);
        Act[] acts = {prepared("shut-down"), release("lid-screw", "turn")};
        Goal goal = new Goal.Reach("lid-screw");
        Rules forbid = Rules.none().forbidTools(List.of("hand"));
        Rules require = Rules.none().requireTools(List.of("hand"));
        assertEquals(
                List.of(),
                Simulator.judge(sketch.device(), State.closed(), goal, forbid, List.of(acts))
                        .breaches());
        assertEquals(
                1,
                Simulator.judge(sketch.device(), State.closed(), goal, require, List.of(acts))
                        .breaches()
                        .size());
    }

    private Verdict judge(Rules rules, Act... acts) {
        return Simulator.judge(
                sketch.device(),
                State.closed(),
                new Goal.Free(List.of("lid")),
                rules,
                List.of(acts));
    }

    private void assertBroken(Rules rules, List<String> sentences, Act... acts) {
        assertEquals(sentences, judge(rules, acts).sentences());
    }
}
