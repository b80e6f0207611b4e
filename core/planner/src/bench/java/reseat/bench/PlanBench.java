package reseat.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;

/**
 * Plans every single target and the full teardown of every device in a folder, in every variant, and prints one CSV row
 * for each; lines with # at the end sum up.
 */
public final class PlanBench {

    private static final int READINGS = 20;

    private final PrintStream out;

    private PlanBench(PrintStream out) {
        this.out = out;
    }

    private record Unit(Path file, Optional<String> variant, Device device) {
        List<Goal> goals() {
            List<Goal> goals = new ArrayList<>();
            for (String part : device.parts().keySet()) {
                if (!part.equals(device.base())) {
                    goals.add(new Goal.Free(List.of(part)));
                }
            }
            goals.add(new Goal.Teardown());
            return goals;
        }
    }

    private record Row(boolean teardown, boolean found, boolean proved, double gap, double ms, double mb) {}

    /**
     * Runs the bench.
     *
     * @param args folder with a folder for each device
     * @throws IOException when the folder cannot be read
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length != 1) {
            out.println("usage: PlanBench FOLDER");
            return;
        }
        new PlanBench(out).run(Path.of(args[0]));
    }

    private void run(Path folder) throws IOException {
        List<Unit> units = new ArrayList<>();
        try (Stream<Path> files = Files.find(folder, 2, (file, a) -> file.toString().endsWith(".yaml"))) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                units.addAll(units(file));
            }
        }
        for (Unit unit : units) {
            for (Goal goal : unit.goals()) {
                new Planner().plan(PlanRequest.of(unit.device(), goal));
            }
        }
        out.println("device,variant,goal,cost_ms,bound_ms,proved,gap_percent,ms,expansions,peak_mb");
        List<Row> rows = new ArrayList<>();
        for (Unit unit : units) {
            for (Goal goal : unit.goals()) {
                rows.add(measure(unit, goal));
            }
        }
        double reading = 0;
        for (Unit unit : units) {
            reading += readingMs(unit);
        }
        sum(rows, reading);
    }

    private static List<Unit> units(Path file) throws IOException {
        // A folder of samples holds procedures and jobs as well.
        if (!Files.readString(file).contains("reseat-device/1")) {
            return List.of();
        }
        List<Unit> units = new ArrayList<>();
        Reading base = DeviceFiles.read(file, Optional.empty(), families(file));
        base.device().ifPresent(device -> units.add(new Unit(file, Optional.empty(), device)));
        for (String id : base.variants()) {
            DeviceFiles.read(file, Optional.of(id), families(file))
                    .device()
                    .ifPresent(device -> units.add(new Unit(file, Optional.of(id), device)));
        }
        if (units.size() != 1 + base.variants().size()) {
            throw new IOException(file + " has errors; reseat proofread tells them");
        }
        return units;
    }

    private Row measure(Unit unit, Goal goal) {
        System.gc(); // what earlier plans left behind would count as this one's
        pools().forEach(MemoryPoolMXBean::resetPeakUsage);
        long begun = System.nanoTime();
        PlanResult result = new Planner().plan(PlanRequest.of(unit.device(), goal));
        double ms = (System.nanoTime() - begun) / 1e6;
        double mb = pools().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / 1e6;
        String name = goal instanceof Goal.Free free ? "free " + free.targets().get(0) : "teardown";
        String head = unit.device().id() + "," + unit.variant().orElse("base") + "," + name + ",";
        boolean teardown = goal instanceof Goal.Teardown;
        if (result instanceof PlanResult.Found found) {
            var plan = found.plan();
            out.println(head + String.format(
                    Locale.ROOT,
                    "%d,%d,%b,%.2f,%.1f,%d,%.0f",
                    plan.totalMs(),
                    plan.lowerBoundMs(),
                    plan.proved(),
                    100 * plan.gap(),
                    ms,
                    plan.expansions(),
                    mb));
            return new Row(teardown, true, plan.proved(), plan.gap(), ms, mb);
        }
        String what = result instanceof PlanResult.Impossible ? "impossible" : "unfinished";
        boolean proved = result instanceof PlanResult.Impossible;
        out.println(head + String.format(Locale.ROOT, "%s,,%b,,%.1f,,%.0f", what, proved, ms, mb));
        return new Row(teardown, false, proved, proved ? 0 : 1, ms, mb);
    }

    /** The families of the samples, out of the sources of the plugins beside them. */
    private static List<DeviceFamily> families(Path file) throws IOException {
        Path plugins = file.toAbsolutePath().getParent().getParent().resolveSibling("plugins");
        if (!Files.isDirectory(plugins)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(plugins)) {
            return folders.map(each -> each.getFileName().toString())
                    .<DeviceFamily>map(id -> new Family(id, plugins.resolve(
                            id + "/src/main/resources/META-INF/reseat-family/defaults.yaml")))
                    .filter(each -> Files.exists(((Family) each).data()))
                    .toList();
        }
    }

    private record Family(String id, Path data) implements DeviceFamily {
        @Override
        public String title() {
            return id;
        }

        @Override
        public InputStream openDefaults() throws IOException {
            return Files.newInputStream(data);
        }
    }

    private static List<MemoryPoolMXBean> pools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }

    private static double readingMs(Unit unit) throws IOException {
        List<DeviceFamily> families = families(unit.file());
        double[] all = new double[READINGS];
        for (int k = 0; k < READINGS; k++) {
            long begun = System.nanoTime();
            DeviceFiles.read(unit.file(), unit.variant(), families);
            all[k] = (System.nanoTime() - begun) / 1e6;
        }
        java.util.Arrays.sort(all);
        return all[READINGS / 2];
    }

    private void sum(List<Row> rows, double readingMs) {
        List<Row> single = rows.stream().filter(row -> !row.teardown()).toList();
        List<Row> full = rows.stream().filter(Row::teardown).toList();
        double ms = single.stream().mapToDouble(Row::ms).sum();
        line("# single targets: %d, proved %d, impossible %d", single.size(), count(single), single.stream()
                .filter(row -> !row.found() && row.proved()).count());
        line("# single targets: slowest %.1f ms, over 500 ms: %d, all together %.1f ms",
                max(single.stream().map(Row::ms).toList()),
                single.stream().filter(row -> row.ms() >= 500).count(),
                ms);
        line("# full teardowns: %d, proved %d, largest gap %.2f %%",
                full.size(), count(full), 100 * max(full.stream().map(Row::gap).toList()));
        line("# peak heap: single targets %.0f MB, full teardowns %.0f MB",
                max(single.stream().map(Row::mb).toList()), max(full.stream().map(Row::mb).toList()));
        line("# baseline, reading each device in each variant once: %.1f ms", readingMs);
        line("# ratio, all single targets to the baseline: %.2f", ms / readingMs);
    }

    private static long count(List<Row> rows) {
        return rows.stream().filter(Row::proved).count();
    }

    private static double max(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
