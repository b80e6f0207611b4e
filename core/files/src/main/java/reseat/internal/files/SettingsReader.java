package reseat.internal.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.files.SettingsFile;
import reseat.model.BadInputException;
import reseat.text.QuoteText;

/** Reads settings files; see {@code SettingsFile}. */
public final class SettingsReader {

    private SettingsReader() {}

    /** Reads a file. */
    public static SettingsFile read(Path path) throws BadInputException {
        String file = path.toString();
        Problems problems = new Problems(file);
        List<SettingsFile.Entry> entries = new ArrayList<>();
        Sources.load(path, file, problems)
                .flatMap(content -> Trees.parse(file, content, problems))
                .ifPresent(
                        root -> {
                            if (root instanceof Node.Fields) {
                                collect(root, List.of(), entries);
                            } else {
                                problems.error(
                                        root.at(),
                                        "found "
                                                + root.describe()
                                                + ", expected settings: a name, a colon and a value"
                                                + " on each line");
                            }
                        });
        if (problems.hasErrors()) {
            throw new BadInputException(problems.sorted());
        }
        return new SettingsFile(file, entries);
    }

    /** Returns a text in quotes, for messages. */
    public static String quoted(String text) {
        return QuoteText.of(text);
    }

    /** Returns a suggestion for a name, with a leading space. */
    public static String hint(String found, List<String> known) {
        return Words.hint(found, known, "settings");
    }

    private static void collect(Node node, List<String> path, List<SettingsFile.Entry> into) {
        if (node instanceof Node.Fields fields) {
            for (Map.Entry<String, Node.Entry> each : fields.entries().entrySet()) {
                List<String> below = new ArrayList<>(path);
                below.add(each.getKey());
                collect(each.getValue().value(), below, into);
            }
        } else if (node instanceof Node.Items items) {
            items.items().forEach(item -> collect(item, path, into));
        } else if (node instanceof Node.Scalar scalar && !scalar.isNull()) {
            into.add(new SettingsFile.Entry(path, scalar.text(), scalar.at()));
        }
    }
}
