package reseat.internal.loader;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import reseat.fasten.FastenerTable;
import reseat.files.FamilyPlugin;
import reseat.internal.loader.FamilyHead.Entry;
import reseat.internal.loader.FamilyHead.Section;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.spi.DeviceFamily;
import reseat.text.Nearest;

/** Reads a family from its files; all errors of {@code family.ini} are reported together. */
public final class FamilyReader {

    /** The file that makes a folder a family. */
    static final String HEAD = "family.ini";

    private static final String FORMAT = "reseat-family/1";
    private static final Origin WHOLE = new Origin(HEAD, 0, 0);

    /** What may stand in a section, by its kind. */
    private static final Map<String, List<String>> KEYS =
            Map.of(
                    "", List.of("format", "id", "title", "version", "fasteners"),
                    "template", List.of("title", "text"),
                    "question", List.of("asks", "choices", "from", "to", "usual"));

    private final FamilyFiles files;
    private final FamilyProblems problems = new FamilyProblems();

    private FamilyReader(FamilyFiles files) {
        this.files = files;
    }

    /**
     * Reads the family in the jar of a plugin.
     *
     * @throws IllegalArgumentException if its head has errors; the message has a line for each
     */
    public static DeviceFamily inJarOf(Class<?> plugin) {
        try {
            return read(FamilyFiles.in(plugin, FamilyPlugin.FOLDER));
        } catch (BadInputException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** Reads a family; its defaults and templates are read only when somebody needs them. */
    static DataFamily read(FamilyFiles files) throws BadInputException {
        try {
            return new FamilyReader(files).family(FamilyHead.of(HEAD, files.text(HEAD)));
        } catch (IOException e) {
            throw new BadInputException(Problem.error(WHOLE, FamilyFiles.why(e)));
        }
    }

    private DataFamily family(FamilyHead head) throws BadInputException {
        problems.add(head.problems());
        head.sections().forEach(this::known);
        Section top = head.sections().get(0);
        Entry format = problems.needed(top, "format");
        if (!format.value().isEmpty() && !format.value().equals(FORMAT)) {
            problems.error(
                    format.at(), "found format \"" + format.value() + "\", expected " + FORMAT);
        }
        Entry id = problems.needed(top, "id");
        DataFamily family =
                new DataFamily(
                        id.value().isEmpty() ? "" : problems.id(id),
                        problems.needed(top, "title").value(),
                        top.entries().getOrDefault("version", new Entry("1", WHOLE)).value(),
                        rows(top.entries().getOrDefault("fasteners", new Entry("", WHOLE))),
                        new TemplateReader(files, problems).read(head.sections()),
                        files);
        problems.end();
        return family;
    }

    private void known(Section section) {
        List<String> keys = KEYS.get(section.kind());
        if (keys == null || (section.kind().isEmpty() && section.at().line() > 0)) {
            problems.error(
                    section.at(),
                    "unknown section ["
                            + section.kind()
                            + "], expected [template ID] or [question ID]");
            return;
        }
        section.entries()
                .forEach(
                        (key, entry) -> {
                            if (!keys.contains(key)) {
                                problems.error(
                                        entry.at(),
                                        "unknown key \""
                                                + key
                                                + "\", expected one of "
                                                + String.join(", ", keys)
                                                + "."
                                                + Nearest.question(key, keys));
                            } else if (entry.value().isEmpty()) {
                                problems.error(entry.at(), key + " has no value");
                            }
                        });
    }

    /** Reads the rows for the fastener tables; whoever takes them checks them cell by cell. */
    private Map<String, String> rows(Entry named) {
        Map<String, String> rows = new TreeMap<>();
        for (String file : FamilyHead.items(named.value())) {
            String table = file.substring(file.lastIndexOf('/') + 1);
            if (FastenerTable.named(table).isEmpty()) {
                List<String> known =
                        Arrays.stream(FastenerTable.values())
                                .map(each -> each.title() + ".csv")
                                .toList();
                problems.error(
                        named.at(),
                        "found \""
                                + file
                                + "\", expected a file named as a fastener table: "
                                + String.join(", ", known)
                                + "."
                                + Nearest.question(table, known));
            } else if (problems.inside(named.at(), file)) {
                try {
                    rows.put(file, files.text(file));
                } catch (IOException e) {
                    problems.error(named.at(), file + ": " + FamilyFiles.why(e));
                }
            }
        }
        return rows;
    }
}
