package reseat.console.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.files.Reading;
import reseat.model.Problem;

/** Reads a device file in all its variants and reports its errors. */
@Command(
        name = "proofread",
        description = "Read a device file with all its variants, and report every error in it.",
        customSynopsis = "reseat proofread FILE [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Example:",
            "  reseat proofread samples/tansy/tansy.yaml",
            "",
            "Exit code 2: the file has errors. Exit code 1: it has warnings, and --strict is given."
        })
final class ProofreadCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Option(names = "--strict", description = "Exit with 1 if there are warnings.")
    private boolean strict;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        OurPlugins.get(spec.commandLine().getErr());
        Map<Problem, List<String>> found = new LinkedHashMap<>();
        Reading base = deviceArgs.reading(deviceArgs.variant());
        List<String> read = new ArrayList<>(List.of(deviceArgs.variant().orElse("base")));
        base.problems().forEach(problem -> put(found, problem, read.get(0)));
        if (deviceArgs.variant().isEmpty()) {
            for (String variant : base.variants()) {
                read.add(variant);
                deviceArgs
                        .reading(Optional.of(variant))
                        .problems()
                        .forEach(problem -> put(found, problem, variant));
            }
        }
        found.keySet().stream()
                .sorted()
                .forEach(
                        problem ->
                                out.println(
                                        problem
                                                + (read.size() > 1
                                                                && get(found, problem).size()
                                                                        < read.size()
                                                        ? " ["
                                                                + String.join(
                                                                        ", ", get(found, problem))
                                                                + "]"
                                                        : "")));
        long errors = found.keySet().stream().filter(Problem::isError).count();
        long warnings = found.size() - errors;
        if (found.isEmpty()) {
            out.println(deviceArgs.file() + ": no errors (" + String.join(", ", read) + ")");
        } else {
            out.println(count(errors, "error") + ", " + count(warnings, "warning"));
        }
        return errors > 0 ? 2 : warnings > 0 && strict ? 1 : 0;
    }

    private static void put(Map<Problem, List<String>> found, Problem problem, String variant) {
        found.computeIfAbsent(problem, p -> new ArrayList<>()).add(variant);
    }

    private static List<String> get(Map<Problem, List<String>> found, Problem problem) {
        return found.getOrDefault(problem, List.of());
    }

    private static String count(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
