package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.internal.graph.Bits;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/** Needs as work to be put in order. */
class WorksTest {

    /**
     * The board lies under the case. The case's screw is hidden by the lid; the lid has a clip with
     * two ways, and a cable to the board.
     */
    private final Outset at =
            new Outset(
                    PlanRequest.of(
                            Toy.of(
                                    "part board under case posture face-down",
                                    "part case",
                                    "part lid",
                                    "joint screw holds case frame under lid tool t5",
                                    "joint clip holds lid frame tool spudger or t5 dearer 400",
                                    "joint cable holds lid board slack",
                                    "joint bolt holds board frame tool t5"),
                            new Goal.Free(List.of("board"))));

    private final Visits visits = new Visits(at.c);
    private final Works works = new Works(at.c, at.landmarks, visits);

    private static int item(Outset at, OrderWork work, String id) {
        for (int i = 0; i < work.n; i++) {
            if (work.names[i] == at.work(id)) {
                return i;
            }
        }
        throw new AssertionError("no " + id);
    }

    @Test
    void eachNeedIsAnItemAfterWhatItNeeds() {
        assertEquals(
                "{board=bolt case clip lid screw, bolt=, cable=, case=clip lid screw, clip=, lid=clip,"
                        + " screw=clip lid}",
                order(at, works.of(at.needs)));
        assertEquals(order(at, works.of(at.needs)), order(at, works.byTool(at.needs)));
        assertEquals(order(at, works.of(at.needs)), order(at, works.byPosture(at.needs)));
    }

    /** The clip by the T5 bit takes 400 more than by the spudger. */
    @Test
    void aWayThatIsDearerCostsWhatItIsDearer() {
        OrderWork whole = works.of(at.needs);
        int clip = item(at, whole, "clip");
        assertArrayEquals(
                new int[] {at.clazz("spudger", "face-up"), at.clazz("t5", "face-up")},
                whole.classes[clip]);
        assertArrayEquals(new long[] {0, 400}, whole.extra[clip]);
        int board = item(at, whole, "board");
        assertArrayEquals(new int[] {at.clazz("hand", "face-down")}, whole.classes[board]);
        assertArrayEquals(new long[] {0}, whole.extra[board]);
    }

    @Test
    void extraCostsCountWithTheToolsAlone() {
        OrderWork tools = works.byTool(at.needs);
        int clip = item(at, tools, "clip");
        int spudger = visits.toolOf[at.clazz("spudger", "face-up")];
        int t5 = visits.toolOf[at.clazz("t5", "face-up")];
        assertArrayEquals(new int[] {spudger, t5}, tools.classes[clip]);
        assertArrayEquals(new long[] {0, 400}, tools.extra[clip]);
        OrderWork postures = works.byPosture(at.needs);
        int up = visits.postureOf[at.c.startClass];
        assertArrayEquals(new int[] {up, up}, postures.classes[item(at, postures, "clip")]);
        assertArrayEquals(new long[] {0, 0}, postures.extra[item(at, postures, "clip")]);
        int board = item(at, postures, "board");
        assertArrayEquals(
                new int[] {visits.postureOf[at.clazz("hand", "face-down")]},
                postures.classes[board]);
    }

    /**
     * Fan, duct and mat are to be had; a bolt links fan and duct, the mat lies beneath the duct.
     * One move may take fan and duct before the bolt is undone; each moved by itself waits for the
     * bolt, and so does the mat. The cord has slack, so that nobody waits for it.
     */
    @Test
    void whereEachMovesByItselfItWaitsForAllItsRigidJoints() {
        Outset of =
                free(
                        List.of("fan", "duct", "mat"),
                        "part mat under duct",
                        "part fan",
                        "part duct",
                        "part flag",
                        "joint bolt holds fan duct",
                        "joint cord holds fan flag slack",
                        "joint clip holds fan frame under flag");
        Works each = new Works(of.c, of.landmarks, new Visits(of.c));
        assertEquals(
                "{bolt=, clip=flag, cord=, duct=, fan=clip flag, flag=, mat=duct}",
                order(of, each.of(of.needs)));
        assertEquals(
                "{bolt=, clip=flag, cord=, duct=bolt, fan=bolt clip flag, flag=, mat=bolt duct}",
                order(of, each.eachByItself(of.needs)));
    }

    /**
     * The tail between fan and sock lies on the frame: both are lifted before it can be undone, so
     * the fan does not wait for it even where each moves by itself.
     */
    @Test
    void aPartDoesNotWaitForAJointThatWaitsForIt() {
        Outset of =
                free(
                        List.of("fan"),
                        "part fan",
                        "part sock",
                        "joint tail holds sock fan under frame",
                        "joint clip holds fan frame");
        Works each = new Works(of.c, of.landmarks, new Visits(of.c));
        assertEquals("{clip=, fan=clip, tail=clip fan}", order(of, each.eachByItself(of.needs)));
    }

    /**
     * The tab's lug lies under the duct. Where each moves by itself, the duct waits for the bolt,
     * that for the switch that cuts the cell, that for the cap above it, and the cap for the pin;
     * so the lug waits for all of them.
     */
    @Test
    void waitingGoesOnFromOneToTheNext() {
        Outset of =
                free(
                        List.of("tab", "duct", "fan", "cap"),
                        "part cap",
                        "part duct",
                        "part fan",
                        "part plate",
                        "part rim",
                        "part tab",
                        "joint lug holds tab frame under duct",
                        "joint bolt holds duct fan needs cell",
                        "joint switch holds plate frame cuts cell under cap",
                        "joint pin holds cap rim");
        Works each = new Works(of.c, of.landmarks, new Visits(of.c));
        assertEquals(
                "{bolt=cap switch, cap=, duct=, fan=, lug=duct, pin=, switch=cap, tab=duct lug}",
                order(of, each.of(of.needs)));
        assertEquals(
                "{bolt=cap pin switch, cap=pin, duct=bolt cap pin switch, fan=bolt cap pin switch,"
                        + " lug=bolt cap duct pin switch, pin=, switch=cap pin,"
                        + " tab=bolt cap duct lug pin switch}",
                order(of, each.eachByItself(of.needs)));
    }

    private static Outset free(List<String> targets, String... facts) {
        return new Outset(PlanRequest.of(Toy.of(facts), new Goal.Free(targets)));
    }

    /** Each item with all that comes before it, by name. */
    private static String order(Outset at, OrderWork work) {
        TreeMap<String, String> before = new TreeMap<>();
        for (int i = 0; i < work.n; i++) {
            long[] names = new long[at.landmarks.words()];
            for (int k = Bits.next(work.before[i], 0);
                    k >= 0;
                    k = Bits.next(work.before[i], k + 1)) {
                Bits.set(names, work.names[k]);
            }
            before.put(at.name(work.names[i]), at.names(names));
        }
        return before.toString();
    }
}
