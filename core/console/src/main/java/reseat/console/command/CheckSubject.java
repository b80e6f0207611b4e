package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reseat.check.CheckInput;
import reseat.console.load.OurPlugins;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFolder;
import reseat.files.DeviceSource;
import reseat.files.JobFile;
import reseat.files.JobFiles;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.job.Job;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.planner.Planner;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;
import reseat.spi.DeviceFamily;

/** What is checked: files and folders, or one device with a plan or a job. */
final class CheckSubject {

    @Parameters(
            index = "0..*",
            arity = "1..*",
            paramLabel = "PATH",
            description =
                    "Device files, or folders. A folder and its subfolders are searched for"
                            + " files with"
                            + " format: reseat-device.")
    private List<Path> paths = new ArrayList<>();

    @Option(
            names = "--variant",
            paramLabel = "ID",
            description = "Only this variant (default: the base device and all variants).")
    private @Nullable String variant;

    @Option(
            names = "--plan",
            paramLabel = "FILE",
            description = "Check one device for this plan, as plan --json prints it.")
    private @Nullable Path planFile;

    @Option(
            names = "--free",
            paramLabel = "PART",
            split = ",",
            description = "Check one device for the best plan that takes these parts off.")
    private List<String> free = new ArrayList<>();

    @Option(
            names = "--job",
            paramLabel = "FILE",
            description = "Check one device for the unit of a job; see core/docs/checking.md.")
    private @Nullable Path jobFile;

    /** Returns the files to check, or fails the command if there is none. */
    List<DeviceSource> sources(FastenerTables tables, PrintWriter err) throws BadInputException {
        if (planFile == null && free.isEmpty() && jobFile == null) {
            return files(tables, OurPlugins.get(err).families());
        }
        if (planFile != null && !free.isEmpty()) {
            throw new BadInput("reseat: give --plan or --free, not both.");
        }
        if (paths.size() != 1 || Files.isDirectory(paths.get(0))) {
            throw new BadInput(
                    "reseat: a plan or a job belongs to one device: give exactly one device file.");
        }
        return List.of(one(paths.get(0), tables, err));
    }

    private List<DeviceSource> files(FastenerTables tables, List<DeviceFamily> families) {
        Map<Path, DeviceSource> files = new LinkedHashMap<>();
        for (Path path : paths) {
            if (!Files.isDirectory(path)) {
                DeviceSource source = DeviceSource.of(path, families).withTables(d -> tables);
                files.putIfAbsent(
                        key(path), variant == null ? source : source.only(Optional.of(variant)));
                continue;
            }
            List<Path> found = found(path);
            if (found.isEmpty()) {
                throw new BadInput("reseat: there is no device file in " + path + ".");
            }
            for (Path each : found) {
                DeviceSource source = DeviceSource.of(each, families).withTables(d -> tables);
                files.putIfAbsent(
                        key(each), variant == null ? source : source.onlyIfThere(variant));
            }
        }
        return List.copyOf(files.values());
    }

    private static Path key(Path path) {
        return path.toAbsolutePath().normalize();
    }

    private static List<Path> found(Path folder) {
        try {
            return DeviceFolder.files(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private DeviceSource one(Path file, FastenerTables tables, PrintWriter err)
            throws BadInputException {
        PlanFile given = planFile == null ? null : PlanFiles.readPlan(planFile);
        JobFile job = jobFile == null ? null : JobFiles.read(jobFile);
        Optional<String> id = Optional.ofNullable(variant);
        if (id.isEmpty() && given != null) {
            id = given.variant();
        }
        if (id.isEmpty() && job != null) {
            id = job.job().variant();
        }
        Device device = DeviceArgs.read(file, id, err);
        DeviceSource source =
                DeviceSource.of(file, OurPlugins.get(err).families())
                        .only(id)
                        .withTables(d -> tables);
        if (job != null) {
            Job held = held(job, device);
            source = source.with((CheckInput input) -> input.withJob(held));
        }
        if (given != null || !free.isEmpty()) {
            Plan plan = given == null ? best(device) : plan(device, given);
            source = source.with((CheckInput input) -> input.withPlan(plan));
        }
        return source;
    }

    private static Job held(JobFile file, Device device) throws BadInputException {
        List<Problem> problems = file.problems(device);
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        if (!file.job().variant().equals(device.variant())) {
            throw new BadInput(
                    "reseat: the job is on a unit of "
                            + name(file.job().device(), file.job().variant())
                            + ", not of "
                            + name(device.id(), device.variant())
                            + ".");
        }
        return file.job();
    }

    private static String name(String device, Optional<String> variant) {
        return device + variant.map(v -> " (" + v + ")").orElse("");
    }

    private Plan best(Device device) {
        PlanRequest request =
                new PlanRequest(
                        device,
                        new Goal.Free(free.stream().distinct().toList()),
                        State.closed(),
                        Rules.none(),
                        Effort.DEFAULT);
        return Planned.plan(request, Watch.NONE);
    }

    /** Returns the plan in a file; whether a better one exists is unknown. */
    private Plan plan(Device device, PlanFile given) {
        String name = String.valueOf(planFile);
        given.device()
                .filter(id -> !id.equals(device.id()))
                .ifPresent(
                        id -> {
                            throw new BadInput(
                                    name
                                            + ": this is a plan for "
                                            + id
                                            + ", and the device is "
                                            + device.id()
                                            + ".");
                        });
        Goal goal =
                given.goal()
                        .orElseThrow(
                                () ->
                                        new BadInput(
                                                name
                                                        + ": found acts without a goal, expected a"
                                                        + " plan as plan --json prints it"));
        State start = StartArgs.checked(device, given.start());
        try {
            Verdict verdict = Simulator.judge(device, start, goal, given.rules(), given.acts());
            if (!verdict.valid()) {
                throw new BadInput(
                        name
                                + ": the plan does not hold; `reseat judge` gives details. "
                                + String.join(" ", verdict.sentences()));
            }
            return new Plan(
                    new PlanRequest(device, goal, start, given.rules(), Effort.DEFAULT),
                    verdict.acts(),
                    verdict.totalMs(),
                    0,
                    Plan.Ended.CANCELLED,
                    0,
                    Planner::rebuild);
        } catch (IllegalArgumentException e) {
            throw new BadInput(name + ": " + e.getMessage());
        }
    }
}
