package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A plugin that tries to end the program, dropped into a folder of the real one. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "runs the launcher for POSIX shells")
class GuardIT {

    private static final String QUILL =
            Path.of("../../samples/quill/quill.yaml").toAbsolutePath().normalize().toString();

    @TempDir Path folder;

    /** Builds a plugin of two checks, which do something and then find one thing. */
    private void plugin(String honest, String sly, String rest) throws IOException {
        String text =
                """
                package sly;
                import java.util.*;
                import java.io.*;
                import reseat.check.*;
                import reseat.model.*;
                import reseat.plan.*;
                import reseat.spi.*;
                public class It implements Plugin {
                    public PluginInfo info() { return PluginInfo.of(It.class); }
                    public List<Check> checks() { return List.of(of("honest"), of("sly")); }
                    static Check of(String id) {
                        return new Check() {
                            public CheckInfo info() {
                                return new CheckInfo(
                                        id, "It is " + id, "It finds.", "It matters.",
                                        Severity.NOTE, List.of(), List.of());
                            }
                            public List<Finding> run(CheckInput input) {
                                try {
                                    if (id.equals("sly")) { sly(); } else { honest(); }
                                } catch (Exception e) {
                                    throw new IllegalStateException(e);
                                }
                                return List.of(input.finding("").says("Found by " + id + ".", "Smile."));
                            }
                        };
                    }
                    static void honest() throws Exception { HONEST }
                    static void sly() throws Exception { SLY }
                    REST
                }
                """
                        .replace("HONEST", honest)
                        .replace("SLY", sly)
                        .replace("REST", rest);
        Path src = folder.resolve("src");
        Path classes = folder.resolve("classes");
        write(src.resolve("sly/It.java"), text);
        write(
                src.resolve("module-info.java"),
                "module sly { requires reseat.toolkit; provides reseat.spi.Plugin with sly.It; }");
        write(
                classes.resolve("META-INF/reseat-plugin.properties"),
                "id=sly\nversion=1.0\ntitle=Sly\napi=[2,3)\n");
        Files.createDirectories(folder.resolve("plugins"));
        run(
                "javac",
                "-proc:none",
                "--module-path",
                "target/reseat/lib",
                "-d",
                classes.toString(),
                src.resolve("module-info.java").toString(),
                src.resolve("sly/It.java").toString());
        run(
                "jar",
                "--create",
                "--file",
                folder.resolve("plugins/sly.jar").toString(),
                "-C",
                classes.toString(),
                ".");
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.resolve("..").normalize());
        Files.writeString(file, text, UTF_8);
    }

    private static void run(String tool, String... args) {
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said);
        assertEquals(
                0, ToolProvider.findFirst(tool).orElseThrow().run(to, to, args), said::toString);
    }

    private Process start(String... args) throws IOException {
        List<String> words = new ArrayList<>(List.of("target/reseat/bin/reseat"));
        words.addAll(List.of(args));
        ProcessBuilder builder =
                new ProcessBuilder(words)
                        .redirectOutput(folder.resolve("out").toFile())
                        .redirectError(folder.resolve("err").toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("RESEAT_PLUGINS", folder.resolve("plugins").toString());
        builder.environment().put("RESEAT_CACHE", "");
        return builder.start();
    }

    private Ran ended(Process process) throws IOException, InterruptedException {
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("it did not end: " + text("out") + text("err"));
        }
        return new Ran(process.exitValue(), text("out"), text("err"));
    }

    private Ran reseat(String... args) throws IOException, InterruptedException {
        return ended(start(args));
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name), UTF_8);
    }

    @Test
    void aCheckThatEndsTheProgramIsNamedAndTheOthersGoOn() throws Exception {
        plugin("", "System.exit(0);", "");

        Ran ran = reseat("check", QUILL, "--threads", "1");

        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                ran.out()
                        .contains(
                                "the check sly failed on quill: It threw ExitNotAllowed: the plugin"
                                        + " sly 1.0 ("
                                        + folder.resolve("plugins/sly.jar")
                                        + ") tried to end the program, at "),
                ran.out());
        assertTrue(ran.out().contains("sly.It.sly(It.java:"), ran.out());
        assertTrue(ran.out().contains("Found by honest."), ran.out());
        assertTrue(ran.out().contains("It is honest [honest]"), ran.out());
        assertTrue(ran.out().endsWith("1 check failed\n"), ran.out());
    }

    @Test
    void soIsOneThatLeavesItToAnotherThread() throws Exception {
        plugin("", "Thread t = new Thread(() -> System.exit(0)); t.start(); t.join();", "");

        Ran ran = reseat("check", QUILL);

        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().contains("the check sly failed on quill"), ran.out());
        assertTrue(ran.out().contains("Found by honest."), ran.out());
    }

    @Test
    void anOutputThatEndsTheProgramIsNamed() throws Exception {
        plugin(
                "",
                "",
                """
                public List<Output> outputs() {
                    return List.of(new Output() {
                        public String id() { return "gone"; }
                        public String title() { return "Gone"; }
                        public String mediaType() { return "text/plain"; }
                        public String fileName() { return "gone.txt"; }
                        public void write(Content content, Place place) { Runtime.getRuntime().exit(0); }
                    });
                }
                """);

        Ran ran = reseat("plan", QUILL, "--free", "fan", "--output", "gone");

        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                ran.err().startsWith("reseat: the output gone of the plugin sly 1.0 ("), ran.err());
        assertTrue(ran.err().contains(" tried to end the program, at "), ran.err());
    }

    @Test
    void aPluginThatEndsTheProgramWhileItIsLoadedIsNamed() throws Exception {
        plugin("", "", "public It() { System.exit(0); }");

        Ran ran = reseat("check", QUILL);

        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                ran.err().contains("code of a plugin tried to end the program, at sly"), ran.err());
        assertTrue(ran.err().contains("sly.It.<init>(It.java:"), ran.err());
    }

    @Test
    void aSignalEndsTheProgramAsItAlwaysDid() throws Exception {
        plugin(says("here") + "Thread.sleep(60_000);", "", "");
        Process process = start("check", QUILL);
        waitFor("here", process);

        process.destroy();

        assertEquals(143, ended(process).code());
    }

    @Test
    void aSignalEndsTheProgramAlsoWhereAnEndIsHeldUp() throws Exception {
        plugin(says("here") + "Thread.sleep(60_000);", says("going") + "System.exit(0);", "");
        Process process = start("check", QUILL, "--threads", "2");
        waitFor("here", process);
        waitFor("going", process);

        process.destroy();

        assertEquals(143, ended(process).code());
    }

    private String says(String name) {
        return "new File(\"" + folder.resolve(name) + "\").mkdir(); ";
    }

    private void waitFor(String name, Process process) throws InterruptedException {
        while (process.isAlive() && !Files.exists(folder.resolve(name))) {
            Thread.sleep(10);
        }
    }
}
