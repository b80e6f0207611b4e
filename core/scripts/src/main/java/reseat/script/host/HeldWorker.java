package reseat.script.host;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.script.host.ScriptOutcome.Status;
import reseat.script.host.WorkerProcess.Gone;

/**
 * A worker with its own folder and the input it has loaded. Its replies become findings here and
 * nowhere else. Unusable once it threw {@link Gone}.
 */
final class HeldWorker implements AutoCloseable {

    private static final int LINES = 200;

    private final ScriptFile.Language language;
    private final ScriptLimits limits;
    private final Path folder;
    private final WorkerProcess worker;
    private @Nullable CheckInput loaded;

    /** Starts a worker that has no input yet. */
    HeldWorker(ScriptFile.Language language, ScriptLimits limits) throws IOException {
        this.language = language;
        this.limits = limits;
        this.folder = Files.createTempDirectory("reseat-scripts");
        try {
            this.worker = WorkerProcess.start(language, limits, folder);
        } catch (IOException | RuntimeException e) {
            clear();
            throw e;
        }
    }

    ScriptFile.Language language() {
        return language;
    }

    /** Returns whether it has already loaded an input. */
    boolean holds(CheckInput input) {
        return loaded != null && loaded.isOfSameFacts(input);
    }

    /**
     * Makes it load an input.
     *
     * @param rows files with further rows of fastener tables
     */
    void load(CheckInput input, List<Path> rows) throws Gone {
        if (!holds(input)) {
            loaded = null;
            worker.load(input, rows);
            loaded = input;
        }
    }

    /** Runs a script on an input that it has loaded. */
    ScriptOutcome run(ScriptFile script, CheckInput input) throws IOException, Gone {
        Reply reply = worker.run(script);
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

    /** Keeps line feeds and removes control characters. */
    private static String printable(String text) {
        return text.lines().map(JsTrouble::shown).limit(LINES).collect(Collectors.joining("\n"));
    }

    @Override
    public void close() {
        worker.close();
        clear();
    }

    private void clear() {
        try {
            List<Path> all;
            try (Stream<Path> found = Files.walk(folder)) {
                all = found.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path each : all) {
                Files.deleteIfExists(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
