package reseat.internal.loader;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** Builds the jar of a plugin out of sources in a test. */
final class PluginJars {

    private final Path work;
    private final Map<String, String> files = new LinkedHashMap<>();
    private String path = System.getProperty("jdk.module.path", "");

    /** Begins a jar in a folder of its own below {@code work}. */
    PluginJars(Path work) {
        this.work = work;
    }

    /** Begins the jar of a plugin {@code id} whose class has this body. */
    static PluginJars plugin(Path work, String id, String body) {
        String name = id.replace('-', '_');
        return new PluginJars(work)
                .with(
                        "META-INF/reseat-plugin.properties",
                        "id=" + id + "\nversion=1.0\ntitle=Plugin " + id + "\napi=[2,3)\n")
                .with(
                        "module-info.java",
                        "module "
                                + name
                                + " { requires reseat.toolkit; provides reseat.spi.Plugin with "
                                + name
                                + ".It; }")
                .with(
                        name + "/It.java",
                        "package "
                                + name
                                + "; import java.util.*; import reseat.spi.*; import reseat.check.*;"
                                + " public class It implements Plugin { "
                                + body
                                + " }");
    }

    static final String INFO = "public PluginInfo info() { return PluginInfo.of(It.class); } ";

    PluginJars with(String file, String text) {
        files.put(file, text);
        return this;
    }

    /** Lets the sources see the module in another jar. */
    PluginJars seeing(Path jar) {
        path = jar + java.io.File.pathSeparator + path;
        return this;
    }

    /** Builds. */
    Path to(Path jar) throws IOException {
        Path src = Files.createTempDirectory(work, "src");
        Path out = Files.createTempDirectory(work, "out");
        List<String> sources = new ArrayList<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            boolean source = file.getKey().endsWith(".java");
            Path at = (source ? src : out).resolve(file.getKey());
            Files.createDirectories(at.getParent());
            Files.writeString(at, file.getValue(), UTF_8);
            if (source) {
                sources.add(at.toString());
            }
        }
        if (!sources.isEmpty()) {
            run(
                    "javac",
                    Stream.concat(
                            Stream.of("-proc:none", "--module-path", path, "-d", out.toString()),
                            sources.stream()));
        }
        Files.createDirectories(jar.getParent());
        run("jar", Stream.of("--create", "--file", jar.toString(), "-C", out.toString(), "."));
        return jar;
    }

    private static void run(String tool, Stream<String> args) {
        StringWriter said = new StringWriter();
        int code =
                ToolProvider.findFirst(tool)
                        .orElseThrow()
                        .run(
                                new PrintWriter(said),
                                new PrintWriter(said),
                                args.toArray(String[]::new));
        if (code != 0) {
            throw new AssertionError(tool + ": " + said);
        }
    }
}
