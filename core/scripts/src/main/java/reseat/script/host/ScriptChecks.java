package reseat.script.host;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.script.host.WorkerProcess.Gone;

/**
 * Script files as checks among others. Workers are kept from one device to the next, as many as run
 * at the same time; a script that fails throws, which costs its worker and nobody's findings.
 */
public final class ScriptChecks implements AutoCloseable {

    private final ScriptLimits limits;
    private final List<Path> rows;
    private final Deque<Bench> free = new ArrayDeque<>();
    private final List<Bench> all = new ArrayList<>();

    /**
     * Makes a pool of workers that has none yet.
     *
     * @param limits what each script may use up
     * @param rows files with further rows of fastener tables
     */
    public ScriptChecks(ScriptLimits limits, List<Path> rows) {
        this.limits = limits;
        this.rows = List.copyOf(rows);
    }

    /**
     * Returns a script as a check; whether it may run is the caller's to know.
     *
     * @throws JsEngine.Missing if there is no engine for it: told once here, not by each script
     */
    public Check check(ScriptFile script) {
        if (script.language() == ScriptFile.Language.JAVASCRIPT) {
            JsEngine.pathWith();
        }
        return new OfScript(script);
    }

    /** A worker with what it holds. */
    private static final class Bench {
        private final ScriptFile.Language language;
        private final WorkerProcess worker;
        private final Path folder;
        private @Nullable CheckInput loaded;

        Bench(ScriptFile.Language language, ScriptLimits limits) throws IOException {
            this.language = language;
            this.folder = Files.createTempDirectory("reseat-scripts");
            this.worker = WorkerProcess.start(language, limits, folder);
        }

        void close() {
            worker.close();
            try {
                ScriptHost.delete(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private final class OfScript implements Check {
        private final ScriptFile script;

        OfScript(ScriptFile script) {
            this.script = script;
        }

        @Override
        public CheckInfo info() {
            return script.info();
        }

        @Override
        public List<Finding> run(CheckInput input) {
            try {
                Bench bench = take(script.language(), input);
                boolean whole = false;
                try {
                    CheckInput loaded = bench.loaded;
                    if (loaded == null || !loaded.isOfSameFacts(input)) {
                        bench.loaded = null;
                        bench.worker.load(input, rows);
                        bench.loaded = input;
                    }
                    Reply reply = bench.worker.run(script);
                    whole = true;
                    return sound(reply, input);
                } finally {
                    give(bench, whole);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (Gone e) {
                throw new IllegalStateException(script.file() + ": " + e.getMessage(), e);
            }
        }

        private List<Finding> sound(Reply reply, CheckInput input) {
            String problem = reply.problem();
            if (problem.isEmpty()) {
                try {
                    return new Validation(script, input.device(), limits.findings())
                            .findings(reply.found());
                } catch (Validation.Unsound e) {
                    problem = String.valueOf(e.getMessage());
                }
            }
            throw new IllegalStateException(script.file() + ": " + JsTrouble.shown(problem));
        }
    }

    /** Takes a worker that holds the input already, else any, else a new one. */
    private Bench take(ScriptFile.Language language, CheckInput input) throws IOException {
        synchronized (free) {
            Bench any = null;
            for (Bench bench : free) {
                if (bench.language == language) {
                    any = bench;
                    CheckInput loaded = bench.loaded;
                    if (loaded != null && loaded.isOfSameFacts(input)) {
                        break;
                    }
                }
            }
            if (any != null) {
                free.remove(any);
                return any;
            }
        }
        Bench made = new Bench(language, limits);
        synchronized (free) {
            all.add(made);
        }
        return made;
    }

    private void give(Bench bench, boolean whole) {
        synchronized (free) {
            if (whole) {
                free.addFirst(bench);
                return;
            }
            all.remove(bench);
        }
        bench.close();
    }

    /** Ends all workers. */
    @Override
    public void close() {
        synchronized (free) {
            free.clear();
            all.forEach(Bench::close);
            all.clear();
        }
    }
}
