package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.files.DeviceFiles;
import reseat.given.Samples;
import reseat.given.Toy;
import reseat.internal.planner.Planning;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.oracle.SmallDevices;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Among plans of the same cost, the power is cut as early as possible. */
class EarlyCutTest {

    /** The door is in the way of the plug; fan and lid have nothing to do with it. */
    private static final String[] FACTS = {
        "part door",
        "part wire",
        "part lid",
        "part fan under lid",
        "joint bolt holds lid frame tool t5",
        "joint screw holds fan frame tool t5 under lid",
        "joint plug holds wire frame under door cuts cell slack"
    };

    private static final Goal FREE = new Goal.Free(List.of("fan", "wire"));

    private static Plan plan(Device device, Goal goal, String... ids) {
        List<Act> acts = Arrays.stream(ids).map(Act::parse).toList();
        Verdict verdict = Simulator.judge(device, State.closed(), goal, Rules.none(), acts);
        assertEquals(List.of(), verdict.sentences());
        long ms = verdict.totalMs();
        return new Plan(
                PlanRequest.of(device, goal),
                verdict.acts(),
                ms,
                ms,
                Plan.Ended.PROVED,
                0,
                Planner::rebuild);
    }

    private static List<String> early(Plan plan) {
        Plan early = EarlyCut.of(plan, Watch.NONE);
        assertTrue(early.totalMs() <= plan.totalMs());
        return early.acts().stream().map(act -> act.act().id()).toList();
    }

    @Test
    void whatTheIsolatorDoesNotWaitForIsPutOff() {
        Plan late =
                plan(
                        Toy.of(FACTS),
                        FREE,
                        "release:bolt/t5",
                        "move:lid",
                        "release:screw/t5",
                        "move:fan",
                        "move:door",
                        "release:plug/hand",
                        "move:wire");
        assertEquals(
                List.of(
                        "move:door",
                        "release:plug/hand",
                        "release:bolt/t5",
                        "move:lid",
                        "release:screw/t5",
                        "move:fan",
                        "move:wire"),
                early(late));
    }

    /** The bolt first: then the bit is taken up once, for both. */
    @Test
    void whatWouldCostMoreLaterStaysWhereItIs() {
        String[] facts = FACTS.clone();
        facts[0] = "part door tool t5";
        Plan late =
                plan(
                        Toy.of(facts),
                        new Goal.Free(List.of("lid", "wire")),
                        "release:bolt/t5",
                        "move:door",
                        "release:plug/hand",
                        "move:lid",
                        "move:wire");
        assertSame(late, EarlyCut.of(late, Watch.NONE));
    }

    @Test
    void whereNothingIsCutThePlanStaysAsItIs() {
        Plan plan =
                plan(Toy.of(FACTS), new Goal.Free(List.of("lid")), "release:bolt/t5", "move:lid");
        assertSame(plan, EarlyCut.of(plan, Watch.NONE));
    }

    @Test
    void notOnceSomebodyCancelled() {
        Watch cancelled =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                };
        Plan late =
                plan(
                        Toy.of(FACTS),
                        FREE,
                        "release:bolt/t5",
                        "move:lid",
                        "release:screw/t5",
                        "move:fan",
                        "move:door",
                        "release:plug/hand",
                        "move:wire");
        assertSame(late, EarlyCut.of(late, cancelled));
    }

    /** The bumper has eight screws; it would cost the same to drive them first. */
    @Test
    void theCellOfBrambleIsDisconnectedBeforeTheBumperIsUnscrewed() throws Exception {
        Path file = Samples.folder().resolve("bramble").resolve("bramble.yaml");
        Device device = DeviceFiles.read(file, Optional.empty(), Samples.families()).orThrow();
        Plan plan =
                Given.plan(
                        PlanRequest.of(device, new Goal.Free(List.of("radio")))
                                .with(Effort.ofExpansions(100_000)));
        int cut = new Dependencies(plan.request(), acts(plan)).cutAt("cell").orElseThrow();
        assertTrue(
                acts(plan).subList(0, cut).stream().noneMatch(act -> act.id().contains("bumper")),
                () -> acts(plan).toString());
    }

    @Test
    void onRandomDevicesThePlanStaysValidAndNoSupplyOfTheFirstIsCutLater() {
        int earlier = 0;
        for (long seed = 1; seed <= SmallDevices.most(150); seed++) {
            PlanRequest request = SmallDevices.start(seed).request();
            if (!(new Planner().plan(request) instanceof PlanResult.Found early)
                    || !(Planning.plan(request, Watch.NONE, Planner::rebuild)
                            instanceof PlanResult.Found found)) {
                continue;
            }
            Planner.requireValid(early.plan());
            assertEquals(found.plan().totalMs(), early.plan().totalMs());
            for (String supply : request.device().power().first().stream().limit(1).toList()) {
                int before = cutAt(found.plan(), supply);
                int after = cutAt(early.plan(), supply);
                assertTrue(after <= before, "seed " + seed);
                earlier += after < before ? 1 : 0;
            }
        }
        assertTrue(earlier > 0, "no supply was cut earlier");
    }

    private static int cutAt(Plan plan, String supply) {
        return new Dependencies(plan.request(), acts(plan)).cutAt(supply).orElse(0);
    }

    private static List<Act> acts(Plan plan) {
        return plan.acts().stream().map(act -> act.act()).toList();
    }
}
