package reseat.console.script;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.console.script.ScriptOutcome.Status;
import reseat.console.script.WorkerProcess.Gone;
import reseat.script.ScriptFile;
import reseat.script.ScriptFile.Language;

/**
 * Runs script files: each language in a process of its own, JavaScript always, Java where the shop
 * approved it. Whatever a script does, the findings of the others are kept.
 */
public final class ScriptHost {

    private final ScriptLimits limits;
    private final Approvals approvals;
    private final List<Path> rows;

    /**
     * Makes a host.
     *
     * @param limits what each script may use up
     * @param approvals which Java scripts may run
     */
    public ScriptHost(ScriptLimits limits, Approvals approvals) {
        this(limits, approvals, List.of());
    }

    /**
     * Makes a host for a shop with fastener tables of its own.
     *
     * @param rows files with further rows of fastener tables
     */
    public ScriptHost(ScriptLimits limits, Approvals approvals, List<Path> rows) {
        this.limits = limits;
        this.approvals = approvals;
        this.rows = List.copyOf(rows);
    }

    /**
     * What came of some scripts.
     *
     * @param outcomes one for each script, in order
     * @param startMicros how long the first worker of each language took to start, with the model
     *     loaded, in microseconds
     */
    public record Ran(List<ScriptOutcome> outcomes, Map<Language, Long> startMicros) {

        public Ran {
            outcomes = List.copyOf(outcomes);
            startMicros = Map.copyOf(startMicros);
        }

        /** Returns the findings of all scripts, worst first. */
        public List<Finding> findings() {
            return outcomes.stream().flatMap(o -> o.findings().stream()).sorted().toList();
        }

        /** Returns the scripts that failed or may not run. */
        public List<ScriptOutcome> problems() {
            return outcomes.stream()
                    .filter(o -> o.status() == Status.FAILED || o.status() == Status.NOT_APPROVED)
                    .toList();
        }
    }

    /** Runs scripts on one input. */
    public Ran run(List<ScriptFile> scripts, CheckInput input) {
        Map<ScriptFile, ScriptOutcome> outcomes = new HashMap<>();
        Map<Language, List<ScriptFile>> ready = new EnumMap<>(Language.class);
        for (ScriptFile script : scripts) {
            ScriptOutcome left = leftOut(script, input);
            if (left == null) {
                ready.computeIfAbsent(script.language(), l -> new ArrayList<>()).add(script);
            } else {
                outcomes.put(script, left);
            }
        }
        Map<Language, CompletableFuture<Group>> groups = new EnumMap<>(Language.class);
        ready.forEach(
                (language, of) ->
                        groups.put(
                                language,
                                CompletableFuture.supplyAsync(() -> group(language, of, input))));
        Map<Language, Long> starts = new EnumMap<>(Language.class);
        groups.forEach(
                (language, pending) -> {
                    Group group = joined(pending);
                    starts.put(language, group.startMicros);
                    outcomes.putAll(group.outcomes);
                });
        return new Ran(
                scripts.stream()
                        .map(script -> Objects.requireNonNull(outcomes.get(script)))
                        .toList(),
                starts);
    }

    private record Group(Map<ScriptFile, ScriptOutcome> outcomes, long startMicros) {}

    private static Group joined(CompletableFuture<Group> pending) {
        try {
            return pending.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    private @Nullable ScriptOutcome leftOut(ScriptFile script, CheckInput input) {
        List<String> missing =
                script.info().needs().stream()
                        .filter(need -> !input.has(need))
                        .map(CheckInfo.Need::name)
                        .map(name -> name.toLowerCase(Locale.ROOT))
                        .toList();
        if (!missing.isEmpty()) {
            return ScriptOutcome.without(
                    script, Status.LEFT_OUT, "it needs: " + String.join(", ", missing));
        }
        Optional<String> refusal =
                script.language() == Language.JAVA ? approvals.refusal(script) : Optional.empty();
        return refusal.map(why -> ScriptOutcome.without(script, Status.NOT_APPROVED, why))
                .orElse(null);
    }

    private Group group(Language language, List<ScriptFile> scripts, CheckInput input) {
        try {
            Path folder = Files.createTempDirectory("reseat-scripts");
            try {
                return group(language, scripts, input, folder);
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Group group(Language language, List<ScriptFile> scripts, CheckInput input, Path folder)
            throws IOException {
        Map<ScriptFile, ScriptOutcome> outcomes = new HashMap<>();
        long startMicros = -1;
        WorkerProcess worker = null;
        try {
            for (ScriptFile script : scripts) {
                try {
                    if (worker == null) {
                        long start = System.nanoTime();
                        worker = WorkerProcess.start(language, limits, input, rows, folder);
                        startMicros =
                                startMicros < 0 ? (System.nanoTime() - start) / 1000 : startMicros;
                    }
                    outcomes.put(script, outcome(script, input, worker.run(script)));
                } catch (Gone e) {
                    if (worker != null) {
                        worker.close();
                        worker = null;
                    }
                    outcomes.put(
                            script,
                            ScriptOutcome.without(
                                    script, Status.FAILED, String.valueOf(e.getMessage())));
                }
            }
        } finally {
            if (worker != null) {
                worker.close();
            }
        }
        return new Group(outcomes, startMicros);
    }

    private ScriptOutcome outcome(ScriptFile script, CheckInput input, Reply reply) {
        String problem = reply.problem();
        List<Finding> findings = List.of();
        if (problem.isEmpty()) {
            try {
                findings =
                        new Validation(script, input.device(), limits.findings())
                                .findings(reply.found());
            } catch (Validation.Unsound e) {
                problem = String.valueOf(e.getMessage());
            }
        }
        return new ScriptOutcome(
                script,
                problem.isEmpty() ? Status.RAN : Status.FAILED,
                findings,
                problem.isEmpty() ? "" : JsTrouble.shown(problem),
                printable(reply.printed()),
                reply.micros(),
                reply.compileMicros());
    }

    /** Keeps lines and takes away what a terminal should not be sent. */
    private static String printable(String text) {
        return text.lines().map(JsTrouble::shown).limit(200).collect(Collectors.joining("\n"));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
