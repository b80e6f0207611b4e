package reseat.internal.loader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.internal.loader.PluginJars.INFO;
import static reseat.internal.loader.PluginJars.plugin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.PluginFiles;
import reseat.spi.Command;
import reseat.spi.PluginInfo;
import reseat.spi.Plugins;

/** Plugins in folders: good ones work, and no bad one is in anybody's way. */
class PluginLoaderTest {

    private static final Duration LONG = Duration.ofMinutes(5);

    private static final String FAMILY =
            "record F(String id, String title) implements DeviceFamily {"
                    + " public java.io.InputStream openDefaults() {"
                    + " return new java.io.ByteArrayInputStream(new byte[0]); } } ";

    private static final String CHECK =
            "public List<Check> checks() { return List.of(new Check() {"
                    + " public CheckInfo info() { return new CheckInfo(\"too-long\", \"Too long\","
                    + " \"It finds.\", \"It matters.\", reseat.model.Severity.NOTE, List.of(),"
                    + " List.of()); }"
                    + " public List<Finding> run(CheckInput input) { return List.of(); } }); } ";

    @TempDir Path work;
    private Path folder;

    @BeforeEach
    void folder() throws IOException {
        folder = Files.createDirectory(work.resolve("plugins"));
    }

    private Plugins load() {
        return PluginFiles.load(List.of(folder), LONG, Set.of());
    }

    private static List<String> ids(Plugins plugins) {
        return plugins.loaded().stream()
                .filter(each -> each.from().isPresent())
                .map(each -> each.plugin().info().id())
                .toList();
    }

    /** Loads a jar beside a good one, which must not suffer, and returns why it was refused. */
    private String refusal(PluginJars bad) throws IOException {
        bad.to(folder.resolve("bad.jar"));
        return refusal();
    }

    private String refusal() throws IOException {
        plugin(work, "good", INFO).to(folder.resolve("zz-good.jar"));

        Plugins plugins = load();

        assertEquals(List.of("good"), ids(plugins));
        assertEquals(1, plugins.refused().size(), plugins.refused().toString());
        return plugins.refused().get(0).why();
    }

    @Test
    void aGoodOneContributes() throws IOException {
        Path jar =
                plugin(
                                work,
                                "rugged",
                                INFO
                                        + FAMILY
                                        + "public List<DeviceFamily> families() {"
                                        + " return List.of(new F(\"rugged\", \"rugged thing\")); }")
                        .to(folder.resolve("rugged.jar"));

        Plugins plugins = load();

        assertEquals(List.of(), plugins.refused());
        Plugins.Loaded loaded = plugins.loaded().get(plugins.loaded().size() - 1);
        assertEquals(Optional.of(jar), loaded.from());
        assertEquals(new PluginInfo("rugged", "1.0", "Plugin rugged"), loaded.plugin().info());
        assertTrue(plugins.family("rugged").isPresent());
    }

    @Test
    void twoUseDifferentVersionsOfOneLibrary() throws IOException {
        for (String version : List.of("1", "2")) {
            String id = "user-" + version;
            Path library =
                    new PluginJars(work)
                            .with("module-info.java", "module words { exports words; }")
                            .with(
                                    "words/Words.java",
                                    "package words; public class Words {"
                                            + " public static String word() { return \"v"
                                            + version
                                            + "\"; } }")
                            .to(folder.resolve(id).resolve("words.jar"));
            plugin(
                            work,
                            id,
                            "public PluginInfo info() { return new PluginInfo(\""
                                    + id
                                    + "\", \"1.0\", words.Words.word()); }")
                    .with(
                            "module-info.java",
                            "module user_"
                                    + version
                                    + " { requires reseat.toolkit; requires words;"
                                    + " provides reseat.spi.Plugin with user_"
                                    + version
                                    + ".It; }")
                    .with(
                            "META-INF/reseat-plugin.properties",
                            "id=" + id + "\nversion=1.0\ntitle=v" + version + "\napi=2\n")
                    .seeing(library)
                    .to(folder.resolve(id).resolve("plugin.jar"));
        }

        Plugins plugins = load();

        assertEquals(List.of(), plugins.refused());
        assertEquals(
                List.of("v1", "v2"),
                plugins.loaded().stream()
                        .filter(each -> each.from().isPresent())
                        .map(each -> each.plugin().info().title())
                        .toList());
    }

    @Test
    void aPlainJarIsALibrary() throws IOException {
        Path library =
                new PluginJars(work)
                        .with("words/Words.java", "package words; public class Words {}")
                        .to(folder.resolve("own/plain-words.jar"));
        plugin(work, "own", INFO + "Object o = new words.Words();")
                .with(
                        "module-info.java",
                        "module own { requires reseat.toolkit; requires plain.words;"
                                + " provides reseat.spi.Plugin with own.It; }")
                .seeing(library)
                .to(folder.resolve("own/plugin.jar"));

        Plugins plugins = load();

        assertEquals(List.of(), plugins.refused());
        assertEquals(List.of("own"), ids(plugins));
    }

    @Test
    void anInsideStaysClosed() throws IOException {
        String why =
                refusal(
                        plugin(
                                work,
                                "curious",
                                INFO
                                        + "public List<Check> checks() { try {"
                                        + " Class<?> c ="
                                        + " Class.forName(\"reseat.internal.loader.Refusal\","
                                        + " true, Plugin.class.getClassLoader());"
                                        + " c.getDeclaredConstructors()[0].setAccessible(true);"
                                        + " return List.of();"
                                        + " } catch (Exception e) {"
                                        + " throw new IllegalStateException(e.getMessage(), e); } }"));

        assertTrue(why.contains("does not \"opens reseat.internal.spi\""), why);
    }

    @Test
    void ourLibrariesAreNotTheirs() throws IOException {
        String why =
                refusal(
                        plugin(work, "lazy", INFO)
                                .with(
                                        "module-info.java",
                                        "module lazy { requires reseat.toolkit;"
                                                + " requires org.locationtech.jts;"
                                                + " provides reseat.spi.Plugin with lazy.It; }"));

        assertEquals(
                "lazy requires org.locationtech.jts, which is Reseat's own; put a copy"
                        + " beside the plugin's jar",
                why);
    }

    @Test
    void oneThatThrowsIsLeftOut() throws IOException {
        assertEquals(
                "it failed: IllegalStateException: no luck",
                refusal(
                        plugin(
                                work,
                                "thrower",
                                INFO
                                        + "public It() { throw new"
                                        + " IllegalStateException(\"no luck\"); }")));
    }

    @Test
    void oneThatOverflowsIsLeftOut() throws IOException {
        assertEquals(
                "it failed: StackOverflowError",
                refusal(plugin(work, "deep", "public PluginInfo info() { return info(); }")));
    }

    @Test
    void oneThatReturnsNothingIsLeftOut() throws IOException {
        assertEquals(
                "info() returned null",
                refusal(plugin(work, "silent", "public PluginInfo info() { return null; }")));
    }

    @Test
    void nullListsAreNonsense() throws IOException {
        assertEquals(
                "checks() returned null",
                refusal(
                        plugin(
                                work,
                                "empty",
                                INFO + "public List<Check> checks() { return null; }")));
    }

    @Test
    void twoOfOneIdAreNonsense() throws IOException {
        assertEquals(
                "it has two entries with the same id: family twice",
                refusal(
                        plugin(
                                work,
                                "twins",
                                INFO
                                        + FAMILY
                                        + "public List<DeviceFamily> families() { F f = new"
                                        + " F(\"twice\", \"t\"); return List.of(f, f); }")));
    }

    @Test
    void whatItSaysAndWhatItIsAgree() throws IOException {
        String why =
                refusal(
                        plugin(
                                work,
                                "actor",
                                "public PluginInfo info() {"
                                        + " return new PluginInfo(\"other\", \"1.0\", \"t\"); }"));

        assertTrue(why.startsWith("info() returned PluginInfo[id=other,"), why);
    }

    @Test
    void anotherVersionOfTheInterfaceIsRefusedBeforeItRuns() throws IOException {
        assertEquals(
                "it is written for version [3,4) of Reseat's interface; this is version 2",
                refusal(
                        plugin(work, "later", "{ System.exit(9); }" + INFO)
                                .with(
                                        "META-INF/reseat-plugin.properties",
                                        "id=later\nversion=1\ntitle=t\napi=[3,4)\n")));
    }

    @Test
    void aMissingModuleIsNamed() throws IOException {
        Path library =
                new PluginJars(work)
                        .with("module-info.java", "module gone.words { }")
                        .to(work.resolve("words.jar"));

        String why =
                refusal(
                        plugin(work, "lonely", INFO)
                                .with(
                                        "module-info.java",
                                        "module lonely { requires reseat.toolkit;"
                                                + " requires gone.words;"
                                                + " provides reseat.spi.Plugin with lonely.It; }")
                                .seeing(library));

        assertEquals(
                "its modules do not fit together: Module gone.words not found, required by lonely",
                why);
    }

    @Test
    void anIdThatIsTakenIsRefused() throws IOException {
        plugin(work, "good", INFO).to(folder.resolve("zz-second.jar"));
        plugin(work, "good", INFO).to(folder.resolve("first.jar"));

        Plugins plugins = load();

        assertEquals(List.of("good"), ids(plugins));
        assertEquals(
                "its id is already used by plugin good (" + folder.resolve("first.jar") + ")",
                plugins.refused().get(0).why());
    }

    @Test
    void anIdOfAnothersCheckIsRefused() throws IOException {
        plugin(work, "first", INFO + CHECK).to(folder.resolve("first.jar"));
        plugin(work, "rival", INFO + CHECK).to(folder.resolve("second.jar"));

        Plugins plugins = load();

        assertEquals(List.of("first"), ids(plugins));
        assertEquals(
                "the id of its check too-long is already used by plugin first ("
                        + folder.resolve("first.jar")
                        + ")",
                plugins.refused().get(0).why());
    }

    @Test
    void aSlowOneIsNotWaitedFor() throws IOException {
        plugin(
                        work,
                        "slow",
                        INFO
                                + "public It() throws Exception {"
                                + " new java.util.concurrent.CountDownLatch(1).await(); }")
                .to(folder.resolve("slow.jar"));

        Plugins plugins = PluginFiles.load(List.of(folder), Duration.ofMillis(300), Set.of());

        assertEquals(
                List.of("it is slow to start: it was not ready after 0.3 s"),
                plugins.refused().stream().map(Plugins.Refused::why).toList());
    }

    @Test
    void aBrokenJarIsNamed() throws IOException {
        Files.writeString(folder.resolve("bad.jar"), "no jar at all");

        assertTrue(refusal().startsWith("bad.jar cannot be read: "));
    }

    @Test
    void anEmptyFolderIsNamed() throws IOException {
        Files.createDirectory(folder.resolve("bad"));

        assertEquals("there is neither a jar nor a family.ini in it", refusal());
    }

    @Test
    void aJarWithoutModuleIsRefused() throws IOException {
        assertTrue(
                refusal(
                                new PluginJars(work)
                                        .with(
                                                "META-INF/reseat-plugin.properties",
                                                "id=plain\nversion=1\ntitle=t\napi=2\n"))
                        .startsWith("bad.jar has no module-info; "));
    }

    @Test
    void aJarThatSaysNothingIsRefused() throws IOException {
        assertTrue(
                refusal(new PluginJars(work).with("some.txt", "text"))
                        .startsWith("none of its jars has a META-INF/reseat-plugin.properties"));
    }

    @Test
    void aModuleWithoutPluginIsRefused() throws IOException {
        assertTrue(
                refusal(
                                plugin(work, "shy", INFO)
                                        .with(
                                                "module-info.java",
                                                "module shy { requires reseat.toolkit; }"))
                        .startsWith("its module shy provides no reseat.spi.Plugin"));
    }

    @Test
    void aMissingFolderIsTold() {
        assertEquals(
                "plugin folder (nowhere): there is no such folder",
                PluginFiles.load(List.of(Path.of("nowhere"))).refused().get(0).toString());
    }

    private static String commands(String... names) {
        StringBuilder body = new StringBuilder(INFO);
        body.append("record C(String name) implements Command {")
                .append(
                        " public CommandInfo info() { throw new"
                                + " IllegalStateException(\"asked\"); }")
                .append(" public int run(CommandCall call) { return FINE; } }")
                .append(" public List<Command> commands() { return List.of(");
        for (int i = 0; i < names.length; i++) {
            body.append(i == 0 ? "" : ", ").append("new C(\"").append(names[i]).append("\")");
        }
        return body.append("); }").toString();
    }

    @Test
    void aCommandIsAskedForNothingButItsName() throws IOException {
        plugin(work, "rugged", commands("drop-test")).to(folder.resolve("rugged.jar"));

        Plugins plugins = load();

        assertEquals(List.of(), plugins.refused());
        assertEquals(List.of("drop-test"), plugins.commands().stream().map(Command::name).toList());
    }

    @Test
    void aCommandOfTheProgramKeepsItsName() throws IOException {
        plugin(work, "rugged", commands("plan")).to(folder.resolve("rugged.jar"));

        Plugins plugins = PluginFiles.load(List.of(folder), LONG, Set.of("plan", "check"));

        assertEquals(
                "the id of its command plan is already used by Reseat itself",
                plugins.refused().get(0).why());
        assertEquals(List.of(), load().refused(), "a program without it takes it");
    }

    @Test
    void aCommandOfAnotherPluginKeepsItsName() throws IOException {
        plugin(work, "aa", commands("drop-test")).to(folder.resolve("aa.jar"));

        plugin(work, "bb", commands("drop-test")).to(folder.resolve("bb.jar"));

        String why = load().refused().get(0).why();

        assertTrue(
                why.startsWith("the id of its command drop-test is already used by plugin aa"),
                why);
    }

    @Test
    void aNameThatNobodyCanTypeIsNone() throws IOException {
        assertEquals(
                "the name \"Drop\" of a command is not valid",
                refusal(plugin(work, "rugged", commands("Drop"))));
        assertEquals(
                "it has two entries with the same id: command twice",
                refusal(plugin(work, "rugged", commands("twice", "twice"))));
    }
}
