package reseat.bench;

import java.io.IOException;
import java.io.InputStream;
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
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Rebuild;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;

/**
 * Makes the rebuild of every single target and of the full teardown of every device in a folder, in every variant, and
 * prints one CSV row for each; lines with # at the end sum up.
 */
public final class RebuildBench {

    private final List<DeviceFamily> families;
    private final List<Double> times = new ArrayList<>();
    private int proved;

    private RebuildBench(List<DeviceFamily> families) {
        this.families = families;
    }

    /**
     * Runs the bench.
     *
     * @param args folder with a folder for each device
     * @throws IOException when the folder cannot be read
     */
    public static void main(String[] args) throws IOException {
        RebuildBench bench = new RebuildBench(families(Path.of(args[0])));
        System.out.println("device,goal,acts,proved,setupMs,boundMs,restoreMs,ms");
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of(args[0]).toAbsolutePath(), 2)) {
            files = all.filter(f -> f.toString().endsWith(f.getParent().getFileName() + ".yaml")).sorted().toList();
        }
        for (Path file : files) {
            bench.device(file);
        }
        List<Double> sorted = bench.times.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "# %d rebuilds, %d proved (%.1f %%); median %.0f ms, 95th %.0f ms, greatest %.0f ms%n",
                sorted.size(),
                bench.proved,
                100.0 * bench.proved / sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() - 1));
    }

    private void device(Path file) {
        Reading base = DeviceFiles.read(file, Optional.empty(), families);
        List<Optional<String>> variants = new ArrayList<>(List.of(Optional.empty()));
        base.variants().forEach(variant -> variants.add(Optional.of(variant)));
        for (Optional<String> variant : variants) {
            DeviceFiles.read(file, variant, families).device().ifPresent(this::targets);
        }
    }

    private void targets(Device device) {
        for (String part : device.parts().keySet()) {
            if (!part.equals(device.base())) {
                one(device, new Goal.Free(List.of(part)));
            }
        }
        one(device, new Goal.Teardown());
    }

    private void one(Device device, Goal goal) {
        Rules rules = Rules.none().permitRuin(device.parts().keySet());
        for (long effort : new long[] {300, 30_000}) {
            PlanRequest request =
                    new PlanRequest(device, goal, State.closed(), rules, Effort.ofExpansions(effort));
            Optional<Plan> plan = new Planner().plan(request).best();
            if (plan.isPresent()) {
                made(device, goal, plan.get());
                return;
            }
        }
        System.out.println(device + "," + goal + ",no plan");
    }

    private void made(Device device, Goal goal, Plan plan) {
        long from = System.nanoTime();
        Rebuild rebuild = Planner.rebuild(plan);
        double ms = (System.nanoTime() - from) / 1e6;
        times.add(ms);
        if (rebuild.proved()) {
            proved++;
        }
        System.out.printf(
                Locale.ROOT,
                "%s,%s,%d,%s,%d,%d,%d,%.0f%n",
                device,
                goal,
                rebuild.acts().size(),
                rebuild.proved() ? "proved" : rebuild.ended(),
                rebuild.setupMs(),
                rebuild.setupBoundMs(),
                rebuild.restoreMs(),
                ms);
    }

    /** The families of the samples, out of the sources of the plugins beside them. */
    private static List<DeviceFamily> families(Path samples) throws IOException {
        try (Stream<Path> folders = Files.list(samples.toAbsolutePath().resolveSibling("plugins"))) {
            return folders.sorted()
                    .<DeviceFamily>map(folder -> new Family(
                            folder.getFileName().toString(),
                            folder.resolve("src/main/resources/META-INF/reseat-family/defaults.yaml")))
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
}
