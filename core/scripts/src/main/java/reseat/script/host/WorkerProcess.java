package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import reseat.check.CheckInput;
import reseat.files.ScriptFile;

/** The parent's view of a worker: a second JVM with a small heap and no environment. */
final class WorkerProcess implements AutoCloseable {

    /** How long a worker may take to start, on a busy machine. */
    private static final int START_SECONDS = 120;

    /** How long a worker may take to report a timeout, after its time limit. */
    private static final int GRACE_SECONDS = 3;

    /** How long a compiler may take on a busy machine. */
    private static final int COMPILE_SECONDS = 60;

    private final Process process;
    private final DataOutputStream out;
    private final DataInputStream in;
    private final ScriptLimits limits;
    private final ScriptFile.Language language;
    private final Path folder;
    private boolean greeted;
    private volatile boolean ready;
    private final ExecutorService reader =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "script worker");
                        thread.setDaemon(true);
                        return thread;
                    });

    /** Thrown when a worker has ended; the message says why. */
    static final class Gone extends Exception {
        private static final long serialVersionUID = 1L;

        Gone(String message) {
            super(message);
        }
    }

    private WorkerProcess(
            Process process, ScriptFile.Language language, ScriptLimits limits, Path folder) {
        this.process = process;
        this.language = language;
        this.limits = limits;
        this.folder = folder;
        this.out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
        this.in = new DataInputStream(new BufferedInputStream(process.getInputStream()));
    }

    /**
     * Starts a worker; {@link #load} waits for it.
     *
     * @param folder where devices and scripts are written for it
     * @throws JsEngine.Missing if it is for JavaScript and there is no engine
     */
    static WorkerProcess start(ScriptFile.Language language, ScriptLimits limits, Path folder)
            throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command(language, limits, folder));
        builder.environment().clear();
        builder.directory(folder.toFile());
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        return new WorkerProcess(builder.start(), language, limits, folder);
    }

    /** Makes the worker load an input for the scripts that follow. */
    void load(CheckInput input, List<Path> rows) throws Gone {
        String said =
                ask(
                        START_SECONDS,
                        () -> {
                            if (!greeted) {
                                hello();
                                greeted = true;
                            }
                            out.writeByte(Worker.INPUT);
                            InputWire.write(input, rows, folder, out);
                            out.flush();
                            return Wire.text(in, 64 * 1024);
                        });
        if (!said.equals(Worker.READY)) {
            throw new Gone(said);
        }
        ready = true;
    }

    private static List<String> command(
            ScriptFile.Language language, ScriptLimits limits, Path folder) {
        List<String> words = new ArrayList<>();
        words.add(
                System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
        words.add("-Xmx" + limits.heapMb() + "m");
        words.add("-Xms" + Math.min(64, limits.heapMb()) + "m");
        words.add("-XX:+UseSerialGC");
        // short-lived: the client compiler suffices for a few checks
        words.add("-XX:TieredStopAtLevel=1");
        // out of memory ends this process at once, and no other
        words.add("-XX:+ExitOnOutOfMemoryError");
        words.add("-XX:+DisplayVMOutputToStderr");
        words.add("-XX:-UsePerfData");
        words.add("-XX:+DisableAttachMechanism");
        words.add("-Dfile.encoding=UTF-8");
        // files that the engine unpacks are deleted with the folder
        words.add("-Dpolyglot.engine.userResourceCache=" + folder);
        boolean js = language == ScriptFile.Language.JAVASCRIPT;
        if (js && Runtime.version().feature() >= 24) {
            words.add("--enable-native-access=org.graalvm.truffle");
            words.add("--sun-misc-unsafe-memory-access=allow");
        }
        words.add("--module-path");
        words.add(js ? JsEngine.pathWith() : JsEngine.pathWithout());
        words.add("--add-modules");
        words.add(js ? JsEngine.MODULE : "java.se,jdk.jshell");
        words.add("--module");
        words.add(Worker.class.getModule().getName() + "/" + Worker.class.getName());
        return words;
    }

    private void hello() throws IOException {
        Wire.text(out, language.name());
        out.writeLong(limits.statements());
        out.writeInt(limits.seconds());
        out.writeInt(limits.heapMb());
        out.writeInt(limits.printed());
        out.writeInt(limits.findings());
    }

    /** Runs a script; a worker that is {@link Gone} afterwards is unusable. */
    Reply run(ScriptFile script) throws IOException, Gone {
        Path copy = folder.resolve("script" + script.language().ending());
        Files.writeString(copy, script.text(), UTF_8);
        int seconds =
                limits.seconds()
                        + GRACE_SECONDS
                        + (language == ScriptFile.Language.JAVA ? COMPILE_SECONDS : 0);
        return ask(
                seconds,
                () -> {
                    out.writeByte(Worker.SCRIPT);
                    Wire.text(out, script.file());
                    Wire.text(out, copy.toString());
                    out.flush();
                    return Reply.read(in);
                });
    }

    private <T> T ask(int seconds, Callable<T> question) throws Gone {
        Future<T> answer = reader.submit(question);
        try {
            return answer.get(seconds, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            kill();
            throw new Gone(
                    "it was stopped after "
                            + limits.seconds()
                            + " s: it does not terminate, and its process was killed");
        } catch (ExecutionException e) {
            if (!kill()) {
                throw new Gone("its reply was unreadable, and its process was killed");
            }
            throw new Gone(ready ? death() : "its process could not be started; " + death());
        } catch (InterruptedException e) {
            kill();
            Thread.currentThread().interrupt();
            throw new Gone("it was stopped");
        }
    }

    private String death() {
        int code = process.exitValue();
        return switch (code) {
            case 3 ->
                    "it used more than "
                            + limits.heapMb()
                            + " MiB of memory, and its process was killed";
            case JavaRunner.LATE ->
                    "it was stopped after " + limits.seconds() + " s: it does not terminate";
            case 0 -> "it ended its own process";
            default -> "it ended its own process (exit code " + code + ")";
        };
    }

    /** Waits briefly for the process to exit, else kills it; returns which. */
    private boolean kill() {
        boolean ended = false;
        try {
            ended = process.waitFor(500, TimeUnit.MILLISECONDS);
            if (!ended) {
                process.destroyForcibly();
            }
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
        return ended;
    }

    /** Ends the worker and waits for its exit, because its folder is deleted next. */
    @Override
    public void close() {
        process.destroyForcibly();
        reader.shutdownNow();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
