package reseat.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.internal.files.SettingsReader;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * A small file of settings, YAML or JSON: names, texts, maps and lists of them, each with its
 * location. Which settings are allowed is up to the caller.
 *
 * @param file the file as the user named it
 * @param entries every text of the file, in order
 */
public record SettingsFile(String file, List<Entry> entries) {

    public SettingsFile {
        entries = List.copyOf(entries);
    }

    /**
     * One text of a settings file.
     *
     * @param path the keys that lead to it; texts of one list have the same path
     * @param text the text as written, without quotes; never empty
     * @param at its location
     */
    public record Entry(List<String> path, String text, Origin at) {
        public Entry {
            path = List.copyOf(path);
        }
    }

    /**
     * Reads a file of at most 16 MiB.
     *
     * @throws BadInputException with all problems if it is not a map of names and texts
     */
    public static SettingsFile read(Path file) throws BadInputException {
        return SettingsReader.read(Objects.requireNonNull(file, "file"));
    }

    /** Returns the texts at a path, in order; empty if there are none. */
    public List<Entry> all(String... path) {
        List<String> wanted = List.of(path);
        return entries.stream().filter(entry -> entry.path().equals(wanted)).toList();
    }

    /** Returns the first text at a path. */
    public Optional<Entry> first(String... path) {
        return all(path).stream().findFirst();
    }

    /** Returns the text at a path. */
    public Optional<String> text(String... path) {
        return first(path).map(Entry::text);
    }

    /** Returns the texts right below a path by their last key, in order. */
    public Map<String, Entry> below(String... path) {
        List<String> parent = List.of(path);
        Map<String, Entry> found = new LinkedHashMap<>();
        for (Entry entry : entries) {
            List<String> keys = entry.path();
            if (keys.size() == parent.size() + 1 && keys.subList(0, parent.size()).equals(parent)) {
                found.putIfAbsent(keys.get(keys.size() - 1), entry);
            }
        }
        return found;
    }

    /**
     * Returns a problem for each text at an unknown path.
     *
     * @param known paths with keys joined by slashes; {@code *} as a last key stands for any
     */
    public List<Problem> unknown(List<String> known) {
        List<Problem> problems = new ArrayList<>();
        for (Entry entry : entries) {
            String path = String.join("/", entry.path());
            String parent =
                    String.join("/", entry.path().subList(0, entry.path().size() - 1)) + "/*";
            if (!known.contains(path) && !known.contains(parent)) {
                problems.add(
                        Problem.error(
                                entry.at(),
                                "there is no setting "
                                        + SettingsReader.quoted(path)
                                        + "."
                                        + SettingsReader.hint(path, known)));
            }
        }
        return problems;
    }
}
