package reseat.script.host;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.script.host.ScriptOutcome.Status;
import reseat.script.host.WorkerProcess.Gone;

/**
 * Runs script files, each language in its own process: JavaScript always, Java only if the shop
 * approved it. A failing script does not affect the findings of others.
 */
public final class ScriptHost {

    private final ScriptLimits limits;
    private final Approvals approvals;
    private final List<Path> rows;

    /**
     * Creates a host.
     *
     * @param limits what each script may use up
     * @param approvals which Java scripts may run
     */
    public ScriptHost(ScriptLimits limits, Approvals approvals) {
        this(limits, approvals, List.of());
    }

    /**
     * Creates a host for a shop with its own fastener tables.
     *
     * @param rows files with further rows of fastener tables
     */
    public ScriptHost(ScriptLimits limits, Approvals approvals, List<Path> rows) {
        this.limits = limits;
        this.approvals = approvals;
        this.rows = List.copyOf(rows);
    }

    /**
     * The results of some scripts.
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

    /** A script and what to run it on. */
    public record Task(ScriptFile script, CheckInput input) {}

    /** Runs scripts on one input. */
    public Ran run(List<ScriptFile> scripts, CheckInput input) {
        return run(scripts.stream().map(script -> new Task(script, input)).toList());
    }

    /**
     * Runs scripts, each on its input. It is quickest where those of one input follow each other.
     */
    public Ran run(List<Task> tasks) {
        Map<Integer, ScriptOutcome> outcomes = new HashMap<>();
        Map<Language, List<Integer>> ready = new EnumMap<>(Language.class);
        for (int i = 0; i < tasks.size(); i++) {
            ScriptFile script = tasks.get(i).script;
            ScriptOutcome left = leftOut(script, tasks.get(i).input);
            if (left == null) {
                ready.computeIfAbsent(script.language(), l -> new ArrayList<>()).add(i);
            } else {
                outcomes.put(i, left);
            }
        }
        Map<Language, CompletableFuture<Group>> groups = new EnumMap<>(Language.class);
        ready.forEach(
                (language, of) ->
                        groups.put(
                                language,
                                CompletableFuture.supplyAsync(() -> group(language, of, tasks))));
        Map<Language, Long> starts = new EnumMap<>(Language.class);
        groups.forEach(
                (language, pending) -> {
                    Group group = joined(pending);
                    starts.put(language, group.startMicros);
                    outcomes.putAll(group.outcomes);
                });
        List<ScriptOutcome> ordered = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            ordered.add(Objects.requireNonNull(outcomes.get(i)));
        }
        return new Ran(ordered, starts);
    }

    private record Group(Map<Integer, ScriptOutcome> outcomes, long startMicros) {}

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

    private Group group(Language language, List<Integer> which, List<Task> tasks) {
        Map<Integer, ScriptOutcome> outcomes = new HashMap<>();
        long startMicros = -1;
        @Nullable HeldWorker worker = null;
        try {
            for (int each : which) {
                Task task = tasks.get(each);
                try {
                    long start = System.nanoTime();
                    if (worker == null) {
                        worker = new HeldWorker(language, limits);
                    }
                    worker.load(task.input, rows);
                    startMicros =
                            startMicros < 0 ? (System.nanoTime() - start) / 1000 : startMicros;
                    outcomes.put(each, worker.run(task.script, task.input));
                } catch (Gone e) {
                    if (worker != null) {
                        worker.close();
                        worker = null;
                    }
                    outcomes.put(
                            each,
                            ScriptOutcome.without(
                                    task.script, Status.FAILED, String.valueOf(e.getMessage())));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            if (worker != null) {
                worker.close();
            }
        }
        return new Group(outcomes, startMicros);
    }
}
