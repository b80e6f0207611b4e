package reseat.devicechecks.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.check.CheckInput;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Rebuild;

class PowerCheckTest {

    private static final String[] OPEN = {"release:lid-screw/usual", "move:lid"};

    @Test
    void findsWorkOnACellBeforeItIsUnplugged() {
        assertEquals(
                List.of("live-cell-work /joints/cell-pad", "supply-not-cut /joints/cell-pad"),
                found(
                        Radio.with(),
                        "release:cell-pad/usual",
                        "release:cell-plug/usual",
                        "move:cell"));
        assertEquals(
                List.of(),
                found(
                        Radio.with(),
                        "release:cell-plug/usual",
                        "release:cell-pad/usual",
                        "move:cell"));
    }

    @Test
    void findsAPlanThatGoesInsideAndNeverCuts() {
        assertEquals(
                List.of("supply-not-cut /joints/tuner-plug"),
                found(
                        Radio.with(),
                        "release:tuner-plug/usual",
                        "release:tuner-hook/usual",
                        "move:tuner"));
        assertEquals(
                List.of(),
                found(Radio.with(), "release:cell-plug/usual", "release:tuner-plug/usual"));
    }

    @Test
    void leavesAloneWhatIsDoneOutsideOrOnTheWay() {
        assertEquals(List.of(), found(Radio.with(), "release:knob-fit/usual", "move:knob"));
        assertEquals(List.of(), found(Radio.with(), "release:cell-plug/usual"));
    }

    @Test
    void findsASupplyThatNothingCuts() {
        Device device =
                Radio.with(
                        "cell-plug: {kind: wire-plug, holds: [cell, board], under: [lid], cuts: [main]}",
                        "cell-plug: {kind: wire-plug, holds: [cell, board], under: [lid]}");
        assertEquals(
                List.of("supply-not-cut /parts/lid"),
                found(device, "release:cell-plug/usual").stream()
                        .filter(line -> line.startsWith("supply"))
                        .toList());
    }

    @Test
    void findsACellThatTheFileSaysNeedNotBeDead() {
        assertEquals(
                List.of("live-cell-work /joints/cell-pad/needs"),
                Radio.found(
                        Radio.with(
                                "cell-pad: {kind: pad-bond,",
                                "cell-pad: {kind: pad-bond, needs: [],")));
        assertEquals(
                List.of("live-cell-work /parts/cell/needs"),
                Radio.found(
                        Radio.with(
                                "kind: cell, under: [lid]",
                                "kind: cell, needs: [], under: [lid]")));
    }

    @Test
    void findsASupplyThatComesFromWhatIsNoCell() {
        assertEquals(
                List.of("cell-not-marked /parts/jack"),
                Radio.found(
                                Radio.with(
                                        "main: {name: Main cell, of: cell}",
                                        "main: {name: Main cell, of: jack}"))
                        .stream()
                        .filter(line -> line.startsWith("cell-not-marked"))
                        .toList());
    }

    private static List<String> found(Device device, String... inside) {
        boolean outside = inside[0].contains("knob");
        List<CostedAct> acts =
                Arrays.asList(
                                outside
                                        ? inside
                                        : Stream.concat(Arrays.stream(OPEN), Arrays.stream(inside))
                                                .toArray(String[]::new))
                        .stream()
                        .map(id -> new CostedAct(Act.parse(id), "hand", "face-up", 1000, 1000, 0))
                        .toList();
        Plan plan =
                new Plan(
                        PlanRequest.of(device, new Goal.Free(List.of("tuner"))),
                        acts,
                        2000L * acts.size(),
                        0,
                        Plan.Ended.TIME,
                        0,
                        // checks of other things ask for the rebuild
                        made ->
                                Rebuild.of(
                                        made,
                                        List.of(),
                                        0,
                                        Plan.Ended.PROVED,
                                        made.request().start()));
        return Radio.findings(CheckInput.of(device).withPlan(plan)).stream()
                .map(finding -> finding.check() + " " + finding.subject())
                .toList();
    }
}
