package reseat.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import reseat.files.DeviceFiles;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Rules;
import reseat.model.SetupTable;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.testkit.DeviceShape;
import reseat.testkit.GeneratedDevice;

/**
 * What choosing acts and their order together saves, against choosing the acts that are cheapest without set-ups first
 * and putting just these in the best order. A Markdown row for each device; repeatable, since the effort is counted in
 * expansions.
 */
public final class CoupledBench {

    private static final long EXPANSIONS = 1_000;

    private final PrintStream out;

    private CoupledBench(PrintStream out) {
        this.out = out;
    }

    /**
     * Runs the bench.
     *
     * @param args folder with a folder for each device
     * @throws IOException when the folder cannot be read
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length != 1) {
            out.println("usage: CoupledBench FOLDER");
            return;
        }
        CoupledBench bench = new CoupledBench(out);
        out.println("| device | targets | dearer if chosen first | saved on average % | saved at most % | target |");
        out.println("|---|---|---|---|---|---|");
        try (Stream<Path> files = Files.find(Path.of(args[0]), 2, (file, a) -> file.toString().endsWith(".yaml"))) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                if (Files.readString(file).contains("reseat-device/1")) {
                    DeviceFiles.read(file, Optional.empty(), List.of())
                            .device()
                            .ifPresent(device -> bench.row(device.id(), List.of(device)));
                }
            }
        }
        for (double alternatives : new double[] {0.15, 0.5, 1}) {
            List<Device> devices = new ArrayList<>();
            for (long seed = 1; seed <= 2; seed++) {
                devices.add(GeneratedDevice.of(new DeviceShape(20, 50, 1.2, 5, 3, alternatives, 0.15, 1, 2), seed));
            }
            bench.row(String.format(Locale.ROOT, "2 generated, %.2f with a second way", alternatives), devices);
        }
    }

    private void row(String name, List<Device> devices) {
        int all = 0;
        int dearer = 0;
        double sum = 0;
        double most = 0;
        String where = "";
        for (Device device : devices) {
            Device plain = withoutSetups(device);
            for (String part : device.parts().keySet()) {
                Goal goal = new Goal.Free(List.of(part));
                if (part.equals(device.base())) {
                    continue;
                }
                Optional<Plan> coupled = plan(device, goal, Rules.none());
                Optional<Plan> chosen = plan(plain, goal, Rules.none());
                if (coupled.isEmpty() || chosen.isEmpty()) {
                    continue;
                }
                Optional<Plan> ordered = plan(device, goal, only(device, chosen.get()));
                if (ordered.isEmpty()) {
                    continue;
                }
                all++;
                double saved = 1 - coupled.get().totalMs() / (double) ordered.get().totalMs();
                sum += Math.max(0, saved);
                dearer += saved > 0 ? 1 : 0;
                if (saved > most) {
                    most = saved;
                    where = devices.size() > 1 ? device.id() + " " + part : part;
                }
            }
        }
        out.printf(Locale.ROOT, "| %s | %d | %d | %.2f | %.2f | %s |%n", name, all, dearer, 100 * sum / all, 100 * most, where);
    }

    private static Optional<Plan> plan(Device device, Goal goal, Rules rules) {
        PlanRequest request = PlanRequest.of(device, goal).with(rules).with(Effort.ofExpansions(EXPANSIONS));
        return new Planner().plan(request) instanceof PlanResult.Found found
                ? Optional.of(found.plan())
                : Optional.empty();
    }

    /** Leaves a plan only the acts of another. */
    private static Rules only(Device device, Plan plan) {
        Map<String, String> ways = new LinkedHashMap<>();
        Set<String> moved = new HashSet<>();
        for (CostedAct each : plan.acts()) {
            if (each.act() instanceof Act.Release release) {
                ways.put(release.joint(), release.way());
            } else if (each.act() instanceof Act.MoveParts move) {
                moved.addAll(move.parts());
            }
        }
        List<String> joints = new ArrayList<>();
        List<String> acts = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            String way = ways.get(joint.id());
            if (way == null) {
                joints.add(joint.id());
            } else {
                joint.ways().keySet().stream()
                        .filter(other -> !other.equals(way))
                        .forEach(other -> acts.add(new Act.Release(joint.id(), other).id()));
            }
        }
        List<String> parts =
                device.parts().keySet().stream()
                        .filter(part -> !moved.contains(part) && !part.equals(device.base()))
                        .toList();
        return Rules.none().forbidJoints(joints).forbidActs(acts).forbidParts(parts);
    }

    private static Device withoutSetups(Device device) {
        return Device.build(device.id(), facts -> {
            facts.base(device.base()).hand(device.hand()).usualPosture(device.usualPosture());
            facts.setup(new SetupTable(zero(device.setup().tools()), zero(device.setup().postures())));
            for (Kind.Scope scope : Kind.Scope.values()) {
                device.kinds(scope).values().forEach(facts::add);
            }
            device.tools().values().forEach(facts::add);
            device.supplies().values().forEach(facts::add);
            device.screwTypes().values().forEach(facts::add);
            device.consumables().values().forEach(facts::add);
            device.hazards().values().forEach(facts::add);
            device.prepares().values().forEach(facts::add);
            device.tests().values().forEach(facts::add);
            device.parts().values().forEach(facts::add);
            device.joints().values().forEach(facts::add);
        });
    }

    private static Map<String, Map<String, Long>> zero(Iterable<String> ids) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (String from : ids) {
            Map<String, Long> row = new LinkedHashMap<>();
            ids.forEach(to -> row.put(to, 0L));
            table.put(from, row);
        }
        return table;
    }
}
