package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.fasten.SeatOrder;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.State;
import reseat.plan.Fastening;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.SpareNeed;
import reseat.plan.Wear;
import reseat.simulate.Simulator;

class RebuildTest {

    private final Plan plan = Given.boardOut();
    private final Device device = plan.request().device();
    private final Rebuild rebuild = plan.rebuild();

    /** The acts that undo one of the plan. */
    private static List<RebuildAct> undoing(Rebuild rebuild) {
        return rebuild.acts().stream().filter(act -> act.kind().isUndoing()).toList();
    }

    private static String id(RebuildAct act) {
        return act.act().orElseThrow().id();
    }

    @Test
    void undoesEachActOfTheTeardownOnce() {
        assertEquals(
                plan.acts().stream().map(act -> act.act().id()).sorted().toList(),
                undoing(rebuild).stream().map(RebuildTest::id).sorted().toList());
    }

    @Test
    void readBackwardsItIsAValidTeardown() {
        List<Act> backwards =
                new ArrayList<>(
                        undoing(rebuild).stream().map(act -> act.act().orElseThrow()).toList());
        Collections.reverse(backwards);

        assertTrue(Simulator.simulate(device, State.closed(), backwards).allowed());
    }

    @Test
    void costsWhatThePlanChargedForIt() {
        assertEquals(
                plan.acts().stream().mapToLong(CostedAct::restoreMs).sum(), rebuild.restoreMs());
    }

    @Test
    void makesEveryJointWhileTheSupplyItNeedsCutIsCut() {
        makesAllJointsDead(device, State.closed(), rebuild);
    }

    @Test
    void connectsTheSupplyAfterAllThatNeededItCut() {
        List<String> made =
                rebuild.acts().stream()
                        .filter(act -> act.kind() == RebuildAct.Kind.MAKE)
                        .map(act -> act.joints().get(0))
                        .toList();
        for (Joint joint : device.joints().values()) {
            if (device.power().needs(joint).contains("cell") && made.contains(joint.id())) {
                assertTrue(
                        made.indexOf(joint.id()) < made.indexOf("cell-plug"),
                        joint.id() + " after the isolator in " + made);
            }
        }
    }

    static void makesAllJointsDead(Device device, State start, Rebuild rebuild) {
        Set<String> open = new LinkedHashSet<>(start.released());
        undoing(rebuild).forEach(act -> open.addAll(act.joints()));
        for (RebuildAct act : undoing(rebuild)) {
            if (act.act().orElseThrow() instanceof Act.Release release) {
                for (String supply : device.power().needs(device.joint(release.joint()))) {
                    assertTrue(
                            device.joints().values().stream()
                                    .anyMatch(
                                            isolator ->
                                                    isolator.cuts().contains(supply)
                                                            && open.contains(isolator.id())
                                                            && !isolator.id()
                                                                    .equals(release.joint())),
                            release.joint() + " is made while " + supply + " is live");
                }
                open.remove(release.joint());
            }
        }
        assertEquals(start.released(), open);
    }

    @Test
    void foldsBackWhatWasLaidAsideWhileConnected() {
        Plan openOnly = Given.plan(device, new Goal.Reach("speaker-plug"));
        RebuildAct display =
                openOnly.rebuild().acts().stream()
                        .filter(act -> act.kind().isPlacing() && id(act).equals("move:display"))
                        .findFirst()
                        .orElseThrow();

        assertEquals(RebuildAct.Kind.FOLD_BACK, display.kind());
    }

    @Test
    void bringsBackWhatHangsByNothingBeforeItIsConnected() {
        List<RebuildAct> flex =
                rebuild.acts().stream()
                        .filter(act -> act.joints().equals(List.of("display-flex")))
                        .toList();

        assertEquals(1, flex.size());
        assertFalse(flex.get(0).brings().isEmpty());
    }

    @Test
    void addsUpWhatIsUsed() {
        Rebuild two = Given.plan(device, new Goal.Free(List.of("board", "cell"))).rebuild();
        ConsumableUse tape =
                two.consumables().stream()
                        .filter(use -> use.consumable().equals("tape-10"))
                        .findFirst()
                        .orElseThrow();
        long tapes =
                two.acts().stream()
                        .flatMap(act -> act.consumes().stream())
                        .filter(use -> use.consumable().equals("tape-10"))
                        .count();

        assertTrue(tapes > 1, "the test needs two tapes");
        assertEquals(BigDecimal.valueOf(30 * tapes), tape.quantity());
        assertEquals("mm", tape.unit());
    }

    @Test
    void namesSparesForTargetRuinAndSpentLockingPatches() {
        assertEquals(
                List.of(
                        new SpareNeed(
                                "board",
                                "Board",
                                java.util.Optional.of("B-1"),
                                1,
                                SpareNeed.Reason.TARGET),
                        new SpareNeed(
                                "label",
                                "Label",
                                java.util.Optional.of("L-1"),
                                1,
                                SpareNeed.Reason.RUINED),
                        new SpareNeed(
                                "m2x6",
                                "m2x6",
                                java.util.Optional.of("S-26"),
                                1,
                                SpareNeed.Reason.LOCKING_PATCH)),
                rebuild.spares());
        assertEquals(
                List.of(List.of("label")),
                rebuild.acts().stream()
                        .map(RebuildAct::fresh)
                        .filter(fresh -> !fresh.isEmpty())
                        .toList());
    }

    @Test
    void statesCuringAndSetupsOutsideTheCost() {
        assertTrue(rebuild.dwellMs() >= 86_400_000, "24 h of curing");
        assertTrue(rebuild.setupMs() > 0);
        assertEquals(
                plan.totalMs(),
                plan.acts().stream().mapToLong(CostedAct::costMs).sum(),
                "neither is in the cost");
    }

    @Test
    void startsAllScrewsByHandThenTightensOppositeOnes() {
        Fastening fastening = rebuild.fastenings().get(0);
        List<SeatOrder.Pass> passes = fastening.order().passes();

        assertEquals(5, fastening.joints().size());
        assertEquals(Stage.START_BY_HAND, passes.get(0).stage());
        assertEquals(0.5, passes.get(1).torqueShare());
        assertEquals(1.0, passes.get(passes.size() - 1).torqueShare());
        List<String> order = passes.get(1).joints();
        assertEquals("board-bolt", order.get(0), "from the centre outwards");
        String second = order.get(1);
        String opposite =
                switch (second) {
                    case "board-screw.a" -> "board-screw.c";
                    case "board-screw.b" -> "board-screw.d";
                    case "board-screw.c" -> "board-screw.a";
                    default -> "board-screw.b";
                };
        assertEquals(opposite, order.get(2), "crosswise");
    }

    @Test
    void countsMakingAgainAgainstTheRatedCycles() {
        Wear flex =
                rebuild.wear().stream()
                        .filter(wear -> wear.joint().equals("display-flex"))
                        .findFirst()
                        .orElseThrow();

        assertEquals(device.joint("display-flex").madeCycles() + 1, flex.made());
        assertEquals(20, flex.rated());
        assertFalse(flex.isSpent());
    }

    @Test
    void leavesOpenWhatWasOpenAtTheStartIfAskedTo() {
        State start = new State(Set.of("display-bond"), List.of());
        PlanRequest request = plan.request().from(start).leavingOpen();
        Rebuild half = Given.plan(request).rebuild();

        assertEquals(List.of("display-bond"), half.leftOpen());
        assertTrue(half.acts().stream().noneMatch(RebuildAct::irreversible));
        makesAllJointsDead(device, start, half);
    }

    @Test
    void closesWholeWhatCameHalfOpen() {
        State start = new State(Set.of("display-bond", "display-flex"), List.of(Set.of("display")));
        Rebuild whole = Given.plan(plan.request().from(start)).rebuild();

        assertEquals(List.of(), whole.leftOpen());
        assertEquals(List.of(), whole.leftApart());
        assertTrue(making(whole, "display-bond").irreversible());
        assertEquals(List.of("display-flex"), making(whole, "display-flex").joints());
        assertTrue(
                undoing(whole).stream().anyMatch(act -> id(act).equals("move:display")),
                whole.acts()::toString);
    }

    private static RebuildAct making(Rebuild rebuild, String joint) {
        return rebuild.acts().stream()
                .filter(act -> act.kind().isUndoing())
                .filter(act -> act.joints().equals(List.of(joint)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pressesAdhesiveOnByHandAndDrivesScrewsWithTheirBit() {
        assertEquals("pick", toolOf("release:display-bond/usual"), "to cut it");
        assertEquals("hand", making(rebuild, "display-bond").tool());
        assertEquals("hand", making(rebuild, "label-glue").tool());
        assertEquals("ph0", making(rebuild, "board-bolt").tool());
        assertEquals("tweezers", making(rebuild, "cell-plug").tool());
    }

    private String toolOf(String act) {
        return plan.acts().stream()
                .filter(each -> each.act().id().equals(act))
                .findFirst()
                .orElseThrow()
                .tool();
    }

    /** Only the display lies loose on the bench when its flex is made; all else is in place. */
    @Test
    void bringsOnlyWhatHangsByNothing() {
        assertEquals(
                List.of("release:display-flex/usual [display]"),
                rebuild.acts().stream()
                        .filter(act -> !act.brings().isEmpty())
                        .map(act -> id(act) + " " + act.brings())
                        .toList());
        Rebuild flexes =
                Given.acts(Given.turned(), Given.move("deck", "flap"), Given.release("deck-flex"))
                        .rebuild();
        assertEquals(
                List.of(),
                making(flexes, "deck-flex").brings(),
                "the deck still hangs by the flex of the flap taped to it");
    }

    @Test
    void waitsForWhatCuresAfterTheAct() {
        List<RebuildAct> after =
                rebuild.acts()
                        .subList(
                                rebuild.acts().indexOf(making(rebuild, "display-bond")) + 1,
                                rebuild.acts().size());
        RebuildAct wait =
                after.stream()
                        .filter(act -> act.kind() == RebuildAct.Kind.WAIT)
                        .findFirst()
                        .orElseThrow();
        long meanwhile =
                after.subList(0, after.indexOf(wait)).stream().mapToLong(RebuildAct::ms).sum();
        assertEquals(List.of("display-bond"), wait.joints());
        assertEquals(86_400_000, meanwhile + wait.dwellMs());
    }

    @Test
    void aWayMayCureAndCloseForGoodLikeAKindOfJoint() {
        Rebuild lid = Given.acts(Given.turned(), Given.release("lid-clip")).rebuild();
        RebuildAct wait = lid.acts().get(lid.acts().indexOf(making(lid, "lid-clip")) + 1);
        assertEquals(RebuildAct.Kind.WAIT, wait.kind());
        assertEquals(60_000, wait.dwellMs());
        assertTrue(making(lid, "lid-clip").irreversible());
    }

    @Test
    void putsBackWhatIsOffWhileAnotherPartHangs() {
        Rebuild two =
                Given.acts(
                                Given.turned(),
                                Given.move("deck", "flap"),
                                Given.release("lid-clip"),
                                Given.move("lid"))
                        .rebuild();
        assertEquals(
                List.of(RebuildAct.Kind.PUT_BACK, RebuildAct.Kind.FOLD_BACK, RebuildAct.Kind.MAKE),
                undoing(two).stream().map(RebuildAct::kind).toList());
    }

    /** The device still lies face down: only the bit is fetched, from the hand. */
    @Test
    void beginsInThePostureInWhichTheTeardownEnded() {
        Device turned = Given.turned();
        RebuildAct first =
                Given.acts(turned, Given.release("bottom-screw.a")).rebuild().acts().get(0);
        assertEquals(turned.setup().toolChangeMs("hand", "ph0"), first.setupMs());
    }

    @Test
    void leavesApartWhatLayApartAtTheStartIfAskedTo() {
        State start = new State(Set.of("display-bond", "display-flex"), List.of(Set.of("display")));
        Rebuild half = Given.plan(plan.request().from(start).leavingOpen()).rebuild();
        assertEquals(List.of("display"), half.leftApart());
        assertEquals(Set.of("display-bond", "display-flex"), Set.copyOf(half.leftOpen()));
        assertTrue(
                undoing(half).stream().noneMatch(act -> id(act).contains("display")),
                half.acts()::toString);
    }

    @Test
    void aFasteningSpansItsActs() {
        Fastening fastening = rebuild.fastenings().get(0);
        assertEquals(
                fastening.joints(),
                rebuild.acts().subList(fastening.first(), fastening.last() + 1).stream()
                        .map(act -> act.joints().get(0))
                        .toList());
    }
}
