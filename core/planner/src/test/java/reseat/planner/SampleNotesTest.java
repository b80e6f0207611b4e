package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import reseat.files.DeviceFiles;
import reseat.given.Samples;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Prepare;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * The repairs of {@code samples/notes.md} whose best plan a careful person would not write down at
 * first: the obvious plan is valid and costs what the notes say, the planner's is proved, cheaper,
 * and costs what the notes say.
 */
class SampleNotesTest {

    private static final Pattern HEADING = Pattern.compile("### (\\w+): free (.+)");
    private static final Pattern COSTS = Pattern.compile("Obvious ([0-9.]+) s, best ([0-9.]+) s");
    private static final Effort ENOUGH = Effort.ofExpansions(1_000_000);

    private record Repair(
            String device, List<String> targets, long obviousMs, long bestMs, List<String> acts) {}

    @TestFactory
    Stream<DynamicTest> thePlannerBeatsTheObviousPlan() throws IOException {
        List<Repair> repairs = repairs();
        for (String device : List.of("quill", "sorrel", "bramble")) {
            long count = repairs.stream().filter(repair -> repair.device().equals(device)).count();
            assertTrue(count >= 3, () -> device + " has only " + count + " such repairs");
        }
        return repairs.stream()
                .map(
                        repair ->
                                DynamicTest.dynamicTest(
                                        repair.device() + " " + repair.targets(),
                                        () -> compare(repair)));
    }

    private static void compare(Repair repair) throws Exception {
        Path file = Samples.folder().resolve(repair.device()).resolve(repair.device() + ".yaml");
        Device device = DeviceFiles.read(file, Optional.empty(), Samples.families()).orThrow();
        Goal goal = new Goal.Free(repair.targets());
        long prepareMs =
                device.prepares().values().stream().mapToLong(p -> p.ms() + p.restoreMs()).sum();

        Verdict obvious =
                Simulator.judge(device, State.closed(), goal, Rules.none(), acts(device, repair));
        assertEquals(List.of(), obvious.sentences());
        assertEquals(repair.obviousMs() + prepareMs, obvious.totalMs(), "the obvious plan");

        PlanResult result = new Planner().plan(PlanRequest.of(device, goal).with(ENOUGH));
        Plan plan = ((PlanResult.Found) result).plan();
        List<Act> best = plan.acts().stream().map(CostedAct::act).toList();
        assertTrue(Simulator.judge(device, State.closed(), goal, Rules.none(), best).valid());
        assertTrue(plan.proved(), () -> "bound " + plan.lowerBoundMs() + " of " + plan.totalMs());
        assertEquals(repair.bestMs() + prepareMs, plan.totalMs(), "the best plan");
        assertTrue(plan.totalMs() < obvious.totalMs());
    }

    private static List<Act> acts(Device device, Repair repair) {
        List<Act> acts = new ArrayList<>();
        for (Prepare prepare : device.prepares().values()) {
            acts.add(new Act.Prepared(prepare.id()));
        }
        for (String line : repair.acts()) {
            if (line.startsWith("move:")) {
                List<String> named = List.of(line.substring("move:".length()).split("\\+"));
                acts.add(
                        new Act.MoveParts(
                                device.parts().keySet().stream().filter(named::contains).toList()));
            } else {
                String joint = line.substring("release:".length(), line.lastIndexOf('/'));
                String way = line.substring(line.lastIndexOf('/') + 1);
                joints(device, joint).forEach(id -> acts.add(new Act.Release(id, way)));
            }
        }
        return acts;
    }

    private static List<String> joints(Device device, String named) {
        if (!named.endsWith(".*")) {
            return List.of(named);
        }
        String group = named.substring(0, named.length() - 1);
        return device.joints().keySet().stream().filter(id -> id.startsWith(group)).toList();
    }

    private static List<Repair> repairs() throws IOException {
        List<Repair> repairs = new ArrayList<>();
        Matcher heading = null;
        Matcher costs = null;
        List<String> acts = null;
        for (String line : Files.readAllLines(Samples.folder().resolve("notes.md"))) {
            Matcher newHeading = HEADING.matcher(line);
            Matcher newCosts = COSTS.matcher(line);
            if (newHeading.matches()) {
                heading = newHeading;
            } else if (newCosts.find()) {
                costs = newCosts;
            } else if (line.equals("```") && acts == null && heading != null) {
                acts = new ArrayList<>();
            } else if (line.equals("```") && heading != null && costs != null) {
                repairs.add(
                        new Repair(
                                heading.group(1).toLowerCase(Locale.ROOT),
                                List.of(heading.group(2).split(" and ")),
                                ms(costs.group(1)),
                                ms(costs.group(2)),
                                List.copyOf(acts)));
                heading = null;
                acts = null;
            } else if (acts != null) {
                acts.add(line);
            }
        }
        return repairs;
    }

    private static long ms(String seconds) {
        return new BigDecimal(seconds).movePointRight(3).longValueExact();
    }
}
