package reseat.script.host;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.script.host.ScriptOutcome.Status;
import reseat.script.host.WorkerProcess.Gone;

/**
 * Script files as checks. Workers are reused from one device to the next, as many as run at the
 * same time. A script that fails throws; this costs its worker, but no findings of others.
 */
public final class ScriptChecks implements AutoCloseable {

    private final ScriptLimits limits;
    private final List<Path> rows;
    private final Deque<HeldWorker> free = new ArrayDeque<>();
    private final List<HeldWorker> all = new ArrayList<>();

    /**
     * Creates an empty pool of workers.
     *
     * @param limits what each script may use up
     * @param rows files with further rows of fastener tables
     */
    public ScriptChecks(ScriptLimits limits, List<Path> rows) {
        this.limits = limits;
        this.rows = List.copyOf(rows);
    }

    /**
     * Returns a script as a check; the caller must have checked that it may run.
     *
     * @throws JsEngine.Missing if there is no engine for it: reported once here, not by each script
     */
    public Check check(ScriptFile script) {
        if (script.language() == ScriptFile.Language.JAVASCRIPT) {
            JsEngine.pathWith();
        }
        return new OfScript(script);
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
                HeldWorker worker = take(script.language(), input);
                boolean whole = false;
                try {
                    worker.load(input, rows);
                    ScriptOutcome outcome = worker.run(script, input);
                    whole = true;
                    if (outcome.status() == Status.FAILED) {
                        throw new IllegalStateException(outcome.told());
                    }
                    return outcome.findings();
                } finally {
                    give(worker, whole);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (Gone e) {
                throw new IllegalStateException(script.file() + ": " + e.getMessage(), e);
            }
        }
    }

    /** Takes a worker that has already loaded the input, else any, else a new one. */
    private HeldWorker take(ScriptFile.Language language, CheckInput input) throws IOException {
        synchronized (free) {
            HeldWorker any = null;
            for (HeldWorker worker : free) {
                if (worker.language() == language) {
                    any = worker;
                    if (worker.holds(input)) {
                        break;
                    }
                }
            }
            if (any != null) {
                free.remove(any);
                return any;
            }
        }
        HeldWorker made = new HeldWorker(language, limits);
        synchronized (free) {
            all.add(made);
        }
        return made;
    }

    private void give(HeldWorker worker, boolean whole) {
        synchronized (free) {
            if (whole) {
                free.addFirst(worker);
                return;
            }
            all.remove(worker);
        }
        worker.close();
    }

    /** Ends all workers. */
    @Override
    public void close() {
        synchronized (free) {
            free.clear();
            all.forEach(HeldWorker::close);
            all.clear();
        }
    }
}
