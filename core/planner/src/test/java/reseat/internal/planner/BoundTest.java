package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.oracle.SmallDevices;
import reseat.oracle.SmallDevices.Stand;
import reseat.plan.PlanRequest;

/** What the rest of a plan costs at least: never above the exhaustive optimum, and close to it. */
class BoundTest {

    private static final int DEVICES = 150;
    private static final int MEASURED = 60;
    private static final int ENOUGH = 10_000;

    @Test
    void neverPassesWhatTheRestCosts() {
        long first = SmallDevices.firstSeed();
        for (long seed = first; seed < first + SmallDevices.most(DEVICES); seed++) {
            for (Stand stand : SmallDevices.walk(seed, 4)) {
                Outset at = new Outset(stand.request());
                int clazz = at.clazz(stand.tool(), stand.posture());
                if (clazz >= 0) {
                    long rest = stand.restMs().orElse(Bound.NEVER);
                    for (int effort : new int[] {0, 1, 8, 40, ENOUGH}) {
                        long low = at.bound().of(at.needs, at.start.place, clazz, effort);
                        assertTrue(low <= rest, "seed " + seed + ": " + low + " of " + rest);
                    }
                }
            }
        }
    }

    private static Outset free(String target, String... facts) {
        return new Outset(PlanRequest.of(Toy.of(facts), new Goal.Free(List.of(target))));
    }

    private static long bound(Outset at) {
        return at.bound().of(at.needs, at.start.place, at.c.startClass, ENOUGH);
    }

    /** Screw and move at 1500 each, and 200 to take up the bit and to lay it down again. */
    @Test
    void releasesMovesAndSetupsAddUp() {
        Outset at = free("lid", "part lid", "joint screw holds lid frame tool t5");
        assertEquals(1500 + 1500 + 200 + 200, bound(at));
        assertEquals(1500 + 1500, at.bound().withoutSetups(at.needs, at.start.place));
    }

    /**
     * Glue, board and case at 1500 each; and so that the case can go, the strap at 900 or, if the
     * tray comes along, its bolt at 400.
     */
    @Test
    void choicesAddTheirCheaperSide() {
        Outset at =
                free(
                        "board",
                        "part board under case",
                        "part case",
                        "part tray",
                        "joint glue holds board frame",
                        "joint strap holds case tray takes 900 0",
                        "joint bolt holds tray frame takes 400 0");
        assertEquals(4500 + 400, bound(at));
    }

    /** Dearer by the spudger: 150 more, but no change of tool. */
    @Test
    void aReleaseCountsItsCheapestWayAndTheSetupsThatItTakes() {
        Outset at =
                free(
                        "lid",
                        "part lid tool spudger",
                        "joint screw holds lid frame tool t5 or spudger dearer 150");
        assertEquals(1500 + 1500 + 150 + 200, bound(at));
        assertEquals(1500 + 1500, at.bound().withoutSetups(at.needs, at.start.place));
    }

    /** The screw needs the cell cut, which plug or switch do. */
    private static String[] isolated(int plug, int toggle) {
        return new String[] {
            "part lid",
            "part shelf",
            "part wire",
            "part knob",
            "joint screw holds lid frame needs cell",
            "joint plug holds wire frame cuts cell under shelf takes " + plug + " 0",
            "joint toggle holds knob frame cuts cell takes " + toggle + " 0"
        };
    }

    /** By the plug, the shelf has to go as well, for 1500. */
    @Test
    void ofTwoIsolatorsTheCheaperCountsWithAllThatItNeeds() {
        assertEquals(3000 + 400, bound(free("lid", isolated(300, 400))));
        assertEquals(3000 + 1800, bound(free("lid", isolated(300, 2000))));
    }

    @Test
    void anIsolatorThatCannotBeReleasedIsNoChoice() {
        PlanRequest request =
                PlanRequest.of(Toy.of(isolated(300, 2000)), new Goal.Free(List.of("lid")));
        Outset at = new Outset(request.with(Rules.none().forbidParts(List.of("shelf"))));
        assertEquals(3000 + 2000, bound(at));
    }

    /** Cell and dock must be cut, each by one of two: the dearer of the two choices counts. */
    @Test
    void ofTwoSuppliesTheDearerChoiceCounts() {
        String[] facts = {
            "part lid",
            "part wire",
            "joint screw holds lid frame needs cell dock",
            "joint a holds wire frame cuts cell takes 300 0",
            "joint b holds wire frame cuts cell takes 200 0",
            "joint c holds wire frame cuts dock takes 500 0",
            "joint d holds wire frame cuts dock takes 900 0"
        };
        assertEquals(3000 + 500, bound(free("lid", facts)));
        facts[3] = "joint a holds wire frame cuts cell takes 800 0";
        facts[4] = "joint b holds wire frame cuts cell takes 700 0";
        assertEquals(3000 + 700, bound(free("lid", facts)));
    }

    @Test
    void whatCannotBeReachedIsNever() {
        PlanRequest request =
                PlanRequest.of(
                        Toy.of("part lid", "joint screw holds lid frame"),
                        new Goal.Free(List.of("lid")));
        Outset at = new Outset(request.with(Rules.none().forbidJoints(List.of("screw"))));
        assertEquals(Bound.NEVER, bound(at));
    }

    /**
     * Taking all apart, three parts at 1000, 2000 and 4000 with a joint at 1500 each. Where two lie
     * together aside, the cheaper has to leave the dearer; where all three do, the two cheaper.
     */
    @Test
    void separatingAllCostsAllButTheDearestOfEachPlaceAside() {
        Device device =
                Toy.of(
                        "part fan takes 1000 0",
                        "part cell takes 1000 1000",
                        "part board takes 4000 0",
                        "joint a holds fan frame",
                        "joint b holds cell frame",
                        "joint c holds board frame tool t5");
        Outset at = new Outset(PlanRequest.of(device, new Goal.Teardown()));
        long[] joints = at.works("a", "b", "c");
        char frame = 0;
        char fan = (char) at.c.part("fan");
        char cell = (char) at.c.part("cell");
        Bound bound = at.bound();
        assertEquals(
                4500 + 7000, bound.withoutSetups(joints, new char[] {frame, frame, frame, frame}));
        assertEquals(4500 + 5000, bound.withoutSetups(joints, new char[] {frame, fan, fan, frame}));
        assertEquals(4500 + 3000, bound.withoutSetups(joints, new char[] {frame, fan, fan, fan}));
        assertEquals(4500 + 2000, bound.withoutSetups(joints, new char[] {frame, fan, cell, cell}));
        assertEquals(1500 + 7000, bound.withoutSetups(at.works("a"), at.start.place));
    }

    /** Lid and flap are asked to move together: 700 and 500, the largest of each. */
    @Test
    void movesThatAreAskedForArePaidAsAWhole() {
        PlanRequest request =
                PlanRequest.of(
                        Toy.of(
                                "part board takes 100 0 under lid flap",
                                "part lid takes 700 300",
                                "part flap takes 600 500",
                                "joint hinge holds flap lid"),
                        new Goal.Free(List.of("board")));
        Outset at = new Outset(request.with(Rules.none().requireActs(List.of("move:flap+lid"))));
        assertEquals(100 + 1200, bound(at));
    }

    /** One change of tool rather than two: both screws before anything is moved. */
    @Test
    void anOrderTakesUpEachToolOnce() {
        Outset at =
                new Outset(
                        PlanRequest.of(
                                Toy.of(
                                        "part fan",
                                        "part cell",
                                        "joint a holds fan frame tool t5",
                                        "joint b holds cell frame tool t5"),
                                new Goal.Free(List.of("fan", "cell"))));
        List<String> order =
                at.bound().order(at.needs, at.c.startClass, 10).stream().map(at::name).toList();
        assertEquals(List.of("a", "b", "fan", "cell"), order);
    }

    /**
     * Measured on the 38 of these devices that can be done, not worked out: 1,631,010 ms of
     * 1,762,120 are known at the start, 92 %, 13 to the last millisecond; 1,406,380 of them for
     * releases and moves. Of set-ups 189,700 are known without a search, and 208,270 with the least
     * that looks at tools and postures each by itself. Laying aside and turning while parts hang is
     * not counted: where it costs nothing, 96 % are known, 22 to the last millisecond.
     */
    @Test
    void isCloseAtTheStart() {
        long[] known = new long[4];
        long all = 0;
        int exact = 0;
        int solvable = 0;
        for (long seed = 1; seed <= MEASURED; seed++) {
            Stand stand = SmallDevices.start(seed);
            if (stand.restMs().isPresent()) {
                Outset at = new Outset(stand.request());
                int clazz = at.c.startClass;
                long low = at.bound().of(at.needs, at.start.place, clazz, ENOUGH);
                known[0] += low;
                known[1] += at.bound().withoutSetups(at.needs, at.start.place);
                known[2] += at.bound().setups(at.needs, clazz, 0);
                known[3] += at.bound().setups(at.needs, clazz, 8);
                all += stand.restMs().getAsLong();
                exact += low == stand.restMs().getAsLong() ? 1 : 0;
                solvable++;
            }
        }
        assertEquals(38, solvable);
        assertTrue(known[0] >= 1_631_010 && known[0] <= all, known[0] + " of " + all);
        assertTrue(known[1] >= 1_406_380, "releases and moves: " + known[1]);
        assertTrue(known[2] >= 186_910, "set-ups without a search: " + known[2]);
        assertTrue(known[3] >= 207_540, "set-ups: " + known[3]);
        assertTrue(exact >= 13, exact + " of 38");
    }
}
