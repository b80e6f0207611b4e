package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.ScriptFile;
import reseat.spi.ToolkitVersion;

/** Runs the distribution that was built, in a copy elsewhere, as a user would. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "runs the launcher for POSIX shells")
class LauncherIT {

    private static final Path BUILT = Path.of("target/reseat");
    private static final Map<String, String> OUR_JAVA =
            Map.of("JAVA_HOME", System.getProperty("java.home"));

    @TempDir Path folder;
    private Path copy;

    @BeforeEach
    void copyTheDistribution() throws IOException {
        copy = copy("with a space/and a dot.d/reseat");
    }

    private Path copy(String place) throws IOException {
        Path whole = folder.resolve(place);
        try (Stream<Path> files = Files.walk(BUILT)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Path to = whole.resolve(BUILT.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
        return whole;
    }

    @Test
    void runsFromAFolderWithASpaceAndPrintsNoWarning() throws IOException {
        Ran ran = run(copy.resolve("bin/reseat"), OUR_JAVA, "--version");

        assertEquals("", ran.err());
        assertTrue(ran.out().startsWith("reseat " + ToolkitVersion.current() + "\nJava "));
        assertEquals(0, ran.code());
    }

    @Test
    void plansARepairFromAFolderWithASpace() throws IOException {
        Path samples = Files.createDirectories(folder.resolve("our devices/quill"));
        for (String name : List.of("quill.yaml", "quill-seats.csv")) {
            Files.copy(Path.of("../../samples/quill").resolve(name), samples.resolve(name));
        }

        Ran ran =
                run(
                        copy.resolve("bin/reseat"),
                        OUR_JAVA,
                        "plan",
                        samples.resolve("quill.yaml").toString(),
                        "--free",
                        "fan");

        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        assertTrue(ran.out().contains("Proved: no valid way costs less"), ran.out());
    }

    @Test
    void aFamilyIsDroppedInAsABareFolder() throws IOException {
        Path data =
                Path.of("../../samples/depth-sounders/src/main/resources/META-INF/reseat-family");
        Path sounder = Files.createDirectories(folder.resolve("our plugins/sounder"));
        for (String name : List.of("family.ini", "defaults.yaml", "new-sounder.yaml")) {
            Files.copy(data.resolve(name), sounder.resolve(name));
        }
        Map<String, String> env = new HashMap<>(OUR_JAVA);
        env.put("RESEAT_PLUGINS", sounder.getParent().toString());
        Path reseat = copy.resolve("bin/reseat");
        String wren = folder.resolve("wren.yaml").toString();

        Ran listed = run(reseat, env, "plugins", "sounder");
        Ran made = run(reseat, env, "new", wren, "--family", "sounder", "--answers", "lanyard=yes");
        Ran plan = run(reseat, env, "plan", wren, "--free", "cell");
        Files.writeString(
                sounder.resolve("family.ini"), "format = reseat-family/1\nid : sounder\n");
        Ran refused = run(reseat, env, "plugins");

        assertTrue(
                listed.out()
                        .startsWith(
                                "sounder 1  depth sounder (folder of data: "
                                        + sounder
                                        + ")\n    device families: sounder\n"
                                        + "    templates for new devices: sounder (sounder)\n"),
                listed.out());
        assertEquals(0, made.code(), made.out() + made.err());
        assertTrue(Files.readString(Path.of(wren)).contains("lanyard: {name: Lanyard"));
        assertEquals(0, plan.code(), plan.err());
        assertEquals(1, refused.code());
        assertTrue(
                refused.out()
                        .contains(
                                "left out: plugin sounder ("
                                        + sounder
                                        + "): family.ini: id is missing; family.ini: title is missing;"
                                        + " family.ini:2: found \"id : sounder\", expected key = value"
                                        + " or [section]\n"),
                refused.out());
    }

    @Test
    void runsThroughLinks() throws IOException {
        Path first = Files.createSymbolicLink(folder.resolve("first"), copy.resolve("bin/reseat"));
        Path bin = Files.createDirectory(folder.resolve("bin"));
        Path second = Files.createSymbolicLink(bin.resolve("reseat"), Path.of("../first"));

        assertEquals(0, run(first, OUR_JAVA, "--version").code());
        assertEquals(0, run(second, OUR_JAVA, "--version").code());
    }

    @Test
    void handsOnTheExitCode() throws IOException {
        Ran ran = run(copy.resolve("bin/reseat"), OUR_JAVA, "no such", "command");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("'no such'"), ran.err());
    }

    @Test
    void runsOnTheModulePathWithTheModulesPromisedToPlugins() throws IOException {
        Map<String, String> env =
                Map.of(
                        "JAVA_HOME",
                        OUR_JAVA.get("JAVA_HOME"),
                        "RESEAT_JAVA_OPTS",
                        "-Xmx64m --show-module-resolution");

        Ran ran = run(copy.resolve("bin/reseat"), env, "--version");

        for (String module : List.of("reseat.console", "reseat.toolkit", "java.se", "jdk.jshell")) {
            assertTrue(ran.out().contains("root " + module + " "), module + " not in " + ran.out());
        }
        // JTS, which knows distances of polygons, and the driver of PostgreSQL have a fixed module
        // name and no descriptor; nothing else may lack one
        List<String> automatic =
                ran.out()
                        .lines()
                        .filter(line -> line.endsWith(" automatic"))
                        .filter(
                                line ->
                                        !line.matches(
                                                ".*/(jts-core|postgresql)-[0-9.]+\\.jar automatic"))
                        .toList();
        assertEquals(List.of(), automatic);
    }

    @Test
    void copiesADatabaseOfAnEarlierReseatAndPrintsNoWarning() throws IOException {
        Files.copy(
                Path.of("../../plugins/stock-sql/src/test/resources/reseat/stock/sql/former.mv.db"),
                folder.resolve("shop.mv.db"));
        Path stock =
                Files.writeString(
                        folder.resolve("shop.yaml"),
                        "format: reseat-stock/1\nsource: sql\nsettings:\n  file: shop\n");

        Ran first = run(copy.resolve("bin/reseat"), OUR_JAVA, "stock", "open", stock.toString());
        Ran again = run(copy.resolve("bin/reseat"), OUR_JAVA, "stock", "open", stock.toString());

        assertEquals(1, first.err().lines().count(), first.err());
        assertTrue(first.err().contains("(36 lines, 4 reservations)"), first.err());
        assertTrue(first.out().contains("J4-open  reserved"), first.out());
        assertEquals("", again.err());
        assertEquals(first.out(), again.out());
    }

    @Test
    void theScriptEngineIsThereForTheConsoleAlone() throws IOException {
        Map<String, String> env =
                Map.of(
                        "JAVA_HOME",
                        OUR_JAVA.get("JAVA_HOME"),
                        "RESEAT_JAVA_OPTS",
                        "--show-module-resolution");

        Ran other = run(copy.resolve("bin/reseat"), env, "--version");
        Ran console = run(copy.resolve("bin/reseat"), env, "console", "-e", "6 * 7");

        assertEquals(List.of(), engine(other).toList());
        assertTrue(console.out().contains("root org.graalvm.js "), console.out());
        assertTrue(console.out().contains("42"), console.out());
        assertEquals("", console.err());
        assertEquals(
                List.of(), engine(console).filter(line -> line.endsWith(" automatic")).toList());
        try (Stream<Path> files = Files.list(copy.resolve("lib"))) {
            assertEquals(
                    List.of(),
                    files.filter(file -> file.toString().matches(".*(js-lang|truffle|polyglot).*"))
                            .toList());
        }
    }

    private static Stream<String> engine(Ran ran) {
        return ran.out().lines().filter(line -> line.matches(".*(graalvm|truffle).*"));
    }

    @Test
    void scriptsFindTheEngineInAProcessOfTheirOwn() throws IOException {
        String script = Path.of("../../scripts/torque-table").toAbsolutePath().toString();
        String device = Path.of("../../samples/quill/quill.yaml").toAbsolutePath().toString();

        Ran checked =
                run(copy.resolve("bin/reseat"), OUR_JAVA, "check", device, "--scripts", script);
        Ran ran = run(copy.resolve("bin/reseat"), OUR_JAVA, "script", "run", script, device);

        assertEquals("", checked.err());
        assertTrue(checked.code() <= 1, checked.out());
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("1 of 1 scripts ran"), ran.out());
    }

    @Test
    void saysOnceThatTheScriptEngineIsMissing() throws IOException {
        Path apart = copy.resolve("lib/js");
        try (Stream<Path> files = Files.list(apart)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.delete(file);
            }
        }
        Files.delete(apart);
        String told =
                "JavaScript cannot run: the engine is missing from "
                        + copy.toRealPath().resolve("lib/js")
                        + "; reinstall Reseat\n";
        String scripts = Path.of("../../scripts").toAbsolutePath().toString();
        String device = Path.of("../../samples/quill/quill.yaml").toAbsolutePath().toString();

        Ran checked =
                run(copy.resolve("bin/reseat"), OUR_JAVA, "check", device, "--scripts", scripts);
        Ran ran = run(copy.resolve("bin/reseat"), OUR_JAVA, "script", "run", scripts, device);
        Ran typed = run(copy.resolve("bin/reseat"), OUR_JAVA, "console", "-e", "1");
        Ran java =
                run(
                        copy.resolve("bin/reseat"),
                        OUR_JAVA,
                        "console",
                        "--lang",
                        "java",
                        "-e",
                        "6 * 7");

        assertEquals(new Ran(3, "", "reseat: " + told), checked);
        assertEquals(new Ran(3, "", "reseat: " + told), ran);
        assertEquals(2, typed.code());
        assertTrue(typed.err().contains(told), typed.err());
        assertTrue(java.out().contains("42"), java.out() + java.err());
    }

    @Test
    void bundlesEveryPlugin() throws IOException {
        Set<String> lib;
        try (Stream<Path> files = Files.list(copy.resolve("lib"))) {
            lib = files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        }
        try (Stream<Path> poms =
                Files.find(Path.of("../../plugins"), 2, (p, a) -> p.endsWith("pom.xml"))) {
            for (Path pom : (Iterable<Path>) poms.sorted()::iterator) {
                Path target = pom.resolveSibling("target");
                for (String jar : jarsIn(target)) {
                    assertTrue(
                            lib.contains(jar),
                            jar
                                    + " does not ship; name it in core/console/pom.xml with scope runtime");
                }
            }
        }
    }

    @Test
    void keepsAnArchiveOfClassesAndStartsFromIt() throws IOException {
        // Java 17 makes no archive of jars in a folder with a blank
        Path plain = copy("plain/reseat");
        Path cache = folder.resolve("our cache");
        Map<String, String> env = with("RESEAT_CACHE", cache);

        Ran first = run(plain.resolve("bin/reseat"), env, "--version");
        Path archive = archive(cache);
        Ran second =
                run(
                        plain.resolve("bin/reseat"),
                        Map.of(
                                "JAVA_HOME",
                                OUR_JAVA.get("JAVA_HOME"),
                                "RESEAT_CACHE",
                                cache.toString(),
                                "RESEAT_JAVA_OPTS",
                                "-Xlog:class+load:file=" + folder.resolve("loaded.txt")),
                        "--version");

        assertEquals(first, second);
        assertEquals("", second.err());
        String loaded = Files.readString(folder.resolve("loaded.txt"));
        assertTrue(
                loaded.lines()
                        .anyMatch(
                                line ->
                                        line.contains(" reseat.console.Main ")
                                                && line.contains("shared objects file")),
                "not from " + archive);
    }

    @Test
    void theConsoleHasAnArchiveOfItsOwnModulePath() throws IOException {
        Path cache = folder.resolve("cache");
        Map<String, String> env = with("RESEAT_CACHE", cache);

        Ran first = run(copy.resolve("bin/reseat"), env, "console", "-e", "6 * 7");
        Ran second = run(copy.resolve("bin/reseat"), env, "console", "-e", "6 * 7");

        assertEquals(first, second);
        assertEquals("", second.err());
        assertTrue(archive(cache).endsWith("console-js.jsa"));
    }

    @Test
    void aWrongArchiveBreaksNothing() throws IOException {
        // Java 17 makes no archive of jars in a folder with a blank
        Path plain = copy("plain/reseat");
        Path cache = folder.resolve("cache");
        Map<String, String> env = with("RESEAT_CACHE", cache);
        Ran first = run(plain.resolve("bin/reseat"), env, "--version");
        Path archive = archive(cache);
        byte[] whole = Files.readAllBytes(archive);
        byte[] damaged = whole.clone();
        for (int i = damaged.length / 3; i < damaged.length; i += 97) {
            damaged[i] ^= 0x55;
        }
        for (byte[] wrong :
                List.of(
                        new byte[0],
                        "no archive".getBytes(UTF_8),
                        Arrays.copyOf(whole, whole.length / 2),
                        damaged)) {
            Files.delete(archive);
            Files.write(archive, wrong);
            assertEquals(first, run(plain.resolve("bin/reseat"), env, "--version"));
        }
    }

    @Test
    void sumsUpAnArchiveOnlyWhenItWasWrittenToSinceItWasMade() throws IOException {
        // Java 17 makes no archive of jars in a folder with a blank
        Path plain = copy("plain/reseat");
        Path cache = folder.resolve("cache");
        run(plain.resolve("bin/reseat"), with("RESEAT_CACHE", cache), "--version");
        Path archive = archive(cache);
        Map<String, String> env =
                Map.of(
                        "JAVA_HOME",
                        OUR_JAVA.get("JAVA_HOME"),
                        "RESEAT_CACHE",
                        cache.toString(),
                        "RESEAT_JAVA_OPTS",
                        "-XX:+PrintFlagsFinal");

        Ran sealed = run(plain.resolve("bin/reseat"), env, "--version");
        Files.write(archive, Files.readAllBytes(archive));
        Ran touched = run(plain.resolve("bin/reseat"), env, "--version");

        assertFalse(isSummedUp(sealed), sealed.out());
        assertTrue(isSummedUp(touched), touched.out());
    }

    private static boolean isSummedUp(Ran ran) {
        return ran.out()
                .lines()
                .anyMatch(line -> line.matches(" *bool VerifySharedSpaces +=\\s+true .*"));
    }

    @Test
    void javasSecondCompilerIsOffForCommandsThatEndSoon() throws IOException {
        String off = "-XX:TieredStopAtLevel=1";
        String late = "-XX:Tier4InvocationThreshold=25000";

        String plan = wordsForJava("plan", "a.yaml", "--free", "fan");
        assertTrue(plan.contains(off) && !plan.contains(late), plan);
        for (String asked : List.of("--all", "--time=9s", "--effort", "--other=2")) {
            String given = wordsForJava("plan", "a.yaml", "--free", "fan", asked, "20");
            assertTrue(given.contains(late) && !given.contains(off), given);
        }
        assertTrue(wordsForJava("console").contains(late));
        String check = wordsForJava("check", "a.yaml");
        assertFalse(check.contains(off) || check.contains(late), check);
        // of two settings Java takes the last, so whoever sets one has his way
        String version = wordsForJava("--version");
        assertTrue(version.indexOf(off) < version.indexOf("-Dof=theirs"), version);
        assertTrue(version.contains(off), version);
    }

    /** Returns what the launcher says to Java, which here does nothing but repeat it. */
    private String wordsForJava(String... args) throws IOException {
        Path parrot = Files.createTempDirectory(folder, "parrot");
        Files.createDirectories(parrot.resolve("bin"));
        script(parrot.resolve("bin/java"), "echo \"$@\"");
        Files.writeString(parrot.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n", UTF_8);
        Map<String, String> env =
                Map.of("JAVA_HOME", parrot.toString(), "RESEAT_JAVA_OPTS", "-Dof=theirs");
        return run(copy.resolve("bin/reseat"), env, args).out();
    }

    @Test
    void anArchiveOlderThanTheProgramIsMadeAnew() throws IOException {
        Path cache = folder.resolve("cache");
        Map<String, String> env = with("RESEAT_CACHE", cache);
        Ran first = run(copy.resolve("bin/reseat"), env, "--version");
        Path archive = archive(cache);
        FileTime old = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(archive, old);

        assertEquals(first, run(copy.resolve("bin/reseat"), env, "--version"));
        assertTrue(Files.getLastModifiedTime(archive).compareTo(old) > 0);
    }

    @Test
    void doesWithoutAnArchiveWhereThereIsNoPlaceForIt() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");

        for (String place : List.of(file + "/below", file.toString(), "", "no/root", "/proc/no")) {
            Map<String, String> env =
                    Map.of("JAVA_HOME", OUR_JAVA.get("JAVA_HOME"), "RESEAT_CACHE", place);
            Ran ran = run(copy.resolve("bin/reseat"), env, "--version");
            assertEquals("", ran.err());
            assertEquals(0, ran.code());
        }
        assertEquals("in the way", Files.readString(file));
    }

    @Test
    void severalStartsAtOnceShareACache() throws Exception {
        Path cache = folder.resolve("cache");
        Map<String, String> env = with("XDG_CACHE_HOME", cache);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            Callable<Ran> start = () -> run(copy.resolve("bin/reseat"), env, "--version");
            for (Future<Ran> ran : threads.invokeAll(Collections.nCopies(3, start))) {
                assertEquals("", ran.get().err());
                assertEquals(0, ran.get().code());
            }
        } finally {
            threads.shutdownNow();
        }
        assertTrue(archive(cache.resolve("reseat")).toString().endsWith("version.jsa"));
    }

    @Test
    void keepsNoArchiveOfACommandThatFailed() throws IOException {
        Path cache = folder.resolve("cache");

        Ran ran = run(copy.resolve("bin/reseat"), with("RESEAT_CACHE", cache), "plan", "/no/file");

        assertEquals(2, ran.code());
        try (Stream<Path> files = Files.walk(cache)) {
            assertEquals(List.of(), files.filter(Files::isRegularFile).toList());
        }
    }

    @Test
    void keepsWhatAPersonApprovesInTheHomeThatTheEnvironmentNames() throws Exception {
        Path home = folder.resolve("home");
        Path plugins = Files.createDirectories(home.resolve(".local/share/reseat/plugins"));
        Path script = folder.resolve("mine.java");
        Files.writeString(
                script,
                """
                /* reseat-script
                id: mine
                title: T
                finds: F.
                matters: M.
                from: a test
                */
                List<Finding> run(CheckInput input) { return List.of(); }
                """);
        Path reseat = copy.resolve("bin/reseat");

        String hash = ScriptFile.read(script).sha256();
        Ran approved =
                run(
                        reseat,
                        with("HOME", home),
                        "script",
                        "approve",
                        script.toString(),
                        "--hash",
                        hash);
        Ran looked = run(reseat, with("HOME", home), "plugins");

        assertEquals(0, approved.code(), approved.err());
        assertTrue(Files.exists(home.resolve(".config/reseat/approved-scripts.tsv")));
        assertTrue(looked.out().contains("Searched " + plugins + "\n"), looked.out());
    }

    private static Map<String, String> with(String name, Path value) {
        return Map.of("JAVA_HOME", OUR_JAVA.get("JAVA_HOME"), name, value.toString());
    }

    /** Returns the only file in a cache besides its seal. */
    private static Path archive(Path cache) throws IOException {
        try (Stream<Path> files = Files.walk(cache)) {
            List<Path> all =
                    files.filter(Files::isRegularFile)
                            .filter(file -> !file.toString().endsWith(".seal"))
                            .toList();
            assertEquals(1, all.size(), all.toString());
            return all.get(0);
        }
    }

    @Test
    void saysSoWhenJavaHomeIsWrong() throws IOException {
        Ran ran = run(copy.resolve("bin/reseat"), Map.of("JAVA_HOME", "/no/java"), "--version");

        assertEquals(3, ran.code());
        assertTrue(ran.err().startsWith("reseat: JAVA_HOME is /no/java, but there is no bin/java"));
    }

    @Test
    void saysSoWhenThereIsNoJava() throws IOException {
        Path tools = toolsWithoutJava();

        Ran ran = run(copy.resolve("bin/reseat"), Map.of("PATH", tools.toString()), "--version");

        assertEquals(3, ran.code());
        assertTrue(
                ran.err().startsWith("reseat: no Java found; put a Java of 17 or newer"),
                ran.err());
    }

    @Test
    void saysSoWhenJavaIsTooOld() throws IOException {
        Path old = folder.resolve("old");
        Files.createDirectories(old.resolve("bin"));
        script(old.resolve("bin/java"), "echo 'this must not run'; exit 9");
        Files.writeString(old.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n", UTF_8);

        Ran ran = run(copy.resolve("bin/reseat"), Map.of("JAVA_HOME", old.toString()), "--version");

        assertEquals(3, ran.code());
        assertEquals(
                "reseat: needs Java 17 or newer, but " + old + "/bin/java is 11.0.2\n", ran.err());
    }

    @Test
    void asksAJavaThatHasNoReleaseFile() throws IOException {
        Path old = folder.resolve("old");
        Files.createDirectories(old.resolve("bin"));
        script(old.resolve("bin/java"), "echo 'openjdk version \"1.8.0_292\"' >&2");

        Ran ran = run(copy.resolve("bin/reseat"), Map.of("JAVA_HOME", old.toString()), "--version");

        assertEquals(3, ran.code());
        assertTrue(ran.err().contains("is 1.8.0_292"), ran.err());
    }

    private static List<String> jarsIn(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(target)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar"))
                    .sorted()
                    .toList();
        }
    }

    private Path toolsWithoutJava() throws IOException {
        Path tools = Files.createDirectory(folder.resolve("tools"));
        for (String name : List.of("sh", "dirname", "readlink", "sed", "head")) {
            for (String place : List.of("/bin", "/usr/bin")) {
                Path tool = Path.of(place, name);
                if (Files.exists(tool) && !Files.exists(tools.resolve(name))) {
                    script(tools.resolve(name), "exec " + tool + " \"$@\"");
                }
            }
        }
        return tools;
    }

    private static void script(Path file, String body) throws IOException {
        Files.writeString(file, "#!/bin/sh\n" + body + "\n", UTF_8);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** Runs with this environment alone, and a PATH. */
    private Ran run(Path launcher, Map<String, String> env, String... args) throws IOException {
        List<String> words = new ArrayList<>(List.of(launcher.toString()));
        words.addAll(List.of(args));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        ProcessBuilder builder =
                new ProcessBuilder(words)
                        .directory(folder.toFile())
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().putAll(env);
        Process process = builder.start();
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("did not end within a minute: " + words);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new UncheckedIOException(new IOException(e));
        }
        return new Ran(
                process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }
}
