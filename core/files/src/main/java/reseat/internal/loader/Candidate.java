package reseat.internal.loader;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import reseat.model.BadInputException;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/**
 * An entry of a plugin folder that may be a plugin.
 *
 * @param from the jar, the folder of jars, or the folder of data
 * @param jars its jars, in order of their names
 */
record Candidate(Path from, List<Path> jars) {

    /** The jar with the plugin's description, and that description. */
    record Described(Path jar, Properties said) {}

    /** Returns the entries of a plugin folder, sorted by name. */
    static List<Candidate> in(Path folder) throws IOException {
        List<Candidate> found = new ArrayList<>();
        for (Path each : children(folder)) {
            if (each.getFileName().toString().startsWith(".")) {
                continue;
            }
            if (Files.isDirectory(each)) {
                found.add(
                        new Candidate(
                                each, children(each).stream().filter(Candidate::isJar).toList()));
            } else if (isJar(each)) {
                found.add(new Candidate(each, List.of(each)));
            }
        }
        return found;
    }

    private static List<Path> children(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static boolean isJar(Path file) {
        return file.getFileName().toString().endsWith(".jar") && Files.isRegularFile(file);
    }

    /** Returns the name of the jar or folder. */
    String name() {
        return from.getFileName().toString();
    }

    /** Whether it is a folder with the data of a family. */
    boolean isData() {
        return Files.exists(from.resolve(FamilyReader.HEAD), LinkOption.NOFOLLOW_LINKS);
    }

    /** Reads the family in a folder of data, which is a plugin by itself. */
    Plugin family() throws Refusal {
        if (!jars.isEmpty()) {
            throw new Refusal(
                    "it holds "
                            + FamilyReader.HEAD
                            + " and "
                            + jars.get(0).getFileName()
                            + "; a folder is either the data of a family or a plugin with jars");
        }
        try {
            DataFamily family = FamilyReader.read(FamilyFiles.in(from));
            family.proofread();
            return new FamilyFolder(
                    new PluginInfo(family.id(), family.version(), family.title()), List.of(family));
        } catch (BadInputException e) {
            throw new Refusal(
                    e.problems().stream()
                            .map(problem -> problem.at() + ": " + problem.message())
                            .collect(Collectors.joining("; ")));
        }
    }

    /** The plugin that a folder of data is. */
    private record FamilyFolder(PluginInfo info, List<DeviceFamily> families) implements Plugin {}

    /** Finds the one jar that says what the plugin is; no class of it is loaded. */
    Described described() throws Refusal {
        if (jars.isEmpty()) {
            throw new Refusal("there is neither a jar nor a " + FamilyReader.HEAD + " in it");
        }
        List<Described> found = new ArrayList<>();
        for (Path jar : jars) {
            said(jar).ifPresent(said -> found.add(new Described(jar, said)));
        }
        if (found.size() != 1) {
            throw new Refusal(
                    found.isEmpty()
                            ? "none of its jars has a "
                                    + PluginInfo.FILE
                                    + " (a plugin with libraries needs a folder of its own)"
                            : "more than one of its jars has a "
                                    + PluginInfo.FILE
                                    + "; each plugin needs a folder of its own");
        }
        return found.get(0);
    }

    private static Optional<Properties> said(Path jar) throws Refusal {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry entry = zip.getEntry(PluginInfo.FILE);
            if (entry == null) {
                return Optional.empty();
            }
            Properties said = new Properties();
            try (InputStream in = zip.getInputStream(entry)) {
                said.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
            return Optional.of(said);
        } catch (IOException | IllegalArgumentException e) {
            throw new Refusal(jar.getFileName() + " cannot be read: " + e.getMessage());
        }
    }
}
