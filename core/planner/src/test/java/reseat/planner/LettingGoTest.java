package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;

/** Joints that let go by themselves, and joints that would strain a way. */
class LettingGoTest {

    private static final Device CONTACTS =
            Toy.of(
                    "part cell",
                    "part board",
                    "joint contacts holds cell board gives",
                    "joint plug holds board frame");

    private static final Goal CELL = new Goal.Free(List.of("cell"));

    private static PlanResult plan(Device device, Goal goal, Rules rules) {
        return new Planner().plan(PlanRequest.of(device, goal).with(rules), Watch.NONE);
    }

    private static Plan found(Device device, Goal goal, Rules rules) {
        return assertInstanceOf(PlanResult.Found.class, plan(device, goal, rules)).plan();
    }

    private static List<String> acts(Plan plan) {
        return plan.acts().stream().map(act -> act.act().id()).toList();
    }

    @Test
    void aMoveMakesAJointLetGoAndTakesItsTime() {
        Plan plan = found(CONTACTS, CELL, Rules.none());
        assertEquals(List.of("move:cell"), acts(plan));
        assertEquals(2 * (1000 + 500), plan.totalMs());
        assertEquals(
                List.of("contacts holds cell to board and must be released to free cell"),
                Why.of(plan, new Planner()).explain("contacts").links());
    }

    @Test
    void aMoveThatWouldReleaseAForbiddenJointIsNotAllowed() {
        assertInstanceOf(
                PlanResult.Impossible.class,
                plan(CONTACTS, CELL, Rules.none().forbidJoints(List.of("contacts"))));
    }

    @Test
    void aRequiredReleaseIsAnActOfItsOwnButARequiredJointMayLetGo() {
        Rules joint = Rules.none().requireJoints(List.of("contacts"));
        assertEquals(List.of("move:cell"), acts(found(CONTACTS, CELL, joint)));
        Rules act = Rules.none().requireActs(List.of("release:contacts/hand"));
        assertEquals(
                List.of("release:contacts/hand", "move:cell"), acts(found(CONTACTS, CELL, act)));
    }

    private static final Device SPRINGS =
            Toy.of(
                    "part door",
                    "joint catch holds door frame",
                    "part cell under door",
                    "joint contacts holds cell frame under door springs cuts cell",
                    "part fan",
                    "joint screw holds fan frame needs cell tool t5");

    private static final Goal FAN = new Goal.Free(List.of("fan"));

    @Test
    void aCellOnSpringContactsIsTakenOutToCutIt() {
        Plan plan = found(SPRINGS, FAN, Rules.none());
        assertEquals(
                List.of(
                        "release:catch/hand",
                        "move:door",
                        "move:cell",
                        "release:screw/t5",
                        "move:fan"),
                acts(plan));
        assertTrue(plan.proved());
    }

    @Test
    void springContactsThatMustNotLetGoKeepTheirCellIn() {
        PlanResult.Impossible no =
                assertInstanceOf(
                        PlanResult.Impossible.class,
                        plan(SPRINGS, FAN, Rules.none().forbidJoints(List.of("contacts"))));
        assertEquals("releasing contacts is forbidden", last(no.reasons()));
    }

    @Test
    void whyThereIsNoWayNamesWhatKeepsTheCellIn() {
        PlanResult.Impossible no =
                assertInstanceOf(
                        PlanResult.Impossible.class,
                        plan(SPRINGS, FAN, Rules.none().forbidParts(List.of("cell"))));
        assertEquals(
                List.of(
                        "only contacts cuts cell",
                        "nothing but moving cell away releases contacts",
                        "moving cell is forbidden"),
                no.reasons().subList(no.reasons().size() - 3, no.reasons().size()));
    }

    @Test
    void nobodyAsksForTheReleaseOfSpringContactsByAnAct() {
        String why = ": nothing but moving cell away releases it";
        assertEquals(
                List.of("contacts cannot be released by an act" + why),
                problems(
                        PlanRequest.of(SPRINGS, FAN)
                                .with(Rules.none().requireActs(List.of("release:contacts/hand")))));
        assertEquals(
                List.of("contacts cannot be reached" + why),
                problems(PlanRequest.of(SPRINGS, new Goal.Reach("contacts"))));
        State open = new State(Set.of("contacts"), List.of());
        assertEquals(
                List.of("contacts cannot be released at the start" + why),
                problems(PlanRequest.of(SPRINGS, FAN).from(open)));
        Rules required = Rules.none().requireJoints(List.of("contacts"));
        assertEquals(
                List.of("release:catch/hand", "move:door", "move:cell"),
                acts(found(SPRINGS, new Goal.Free(List.of("door")), required)));
    }

    private static List<String> problems(PlanRequest request) {
        return request.problems().stream().map(problem -> problem.message()).toList();
    }

    private static String last(List<String> lines) {
        return lines.get(lines.size() - 1);
    }

    @Test
    void whatIsStrainedWaits() {
        Device device =
                Toy.of(
                        "part lid",
                        "joint clip holds lid frame tool spudger strained screw",
                        "joint screw holds lid frame tool t5");
        Plan plan = found(device, new Goal.Free(List.of("lid")), Rules.none());
        assertEquals(List.of("release:screw/t5", "release:clip/spudger", "move:lid"), acts(plan));
        assertTrue(plan.proved());
        Plan reach = found(device, new Goal.Reach("clip"), Rules.none());
        assertEquals(List.of("release:screw/t5"), acts(reach));
        assertEquals(
                List.of("screw would strain clip while tight and must be released to reach clip"),
                Why.of(reach, new Planner()).explain("screw").links());
    }

    @Test
    void whyThereIsNoWayNamesWhatStrains() {
        Device device =
                Toy.of(
                        "part lid",
                        "joint clip holds lid frame strained screw",
                        "joint screw holds lid frame");
        Rules rules = Rules.none().forbidJoints(List.of("screw"));
        PlanResult.Impossible no =
                assertInstanceOf(
                        PlanResult.Impossible.class, plan(device, new Goal.Reach("clip"), rules));
        assertEquals(
                List.of(
                        "clip cannot be reached: screw cannot be released",
                        "releasing screw is forbidden"),
                no.reasons());
    }
}
