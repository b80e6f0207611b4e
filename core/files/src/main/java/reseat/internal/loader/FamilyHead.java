package reseat.internal.loader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * The lines of {@code family.ini}: {@code key = value}, sections such as {@code [template slate]},
 * comments after {@code #} on lines of their own.
 *
 * @param sections the sections in their order; the first has no kind: it is what stands before any
 * @param problems lines that are none of this
 */
record FamilyHead(List<Section> sections, List<Problem> problems) {

    private static final Pattern COMMA = Pattern.compile(",");

    /** A value and where it stands. */
    record Entry(String value, Origin at) {}

    /**
     * A section.
     *
     * @param kind the first word of its heading
     * @param name the second
     * @param at where its heading stands
     * @param entries what stands in it, by key
     */
    record Section(String kind, String name, Origin at, Map<String, Entry> entries) {}

    /** Returns the items of a value with commas between, trimmed; none for an empty value. */
    static List<String> items(String value) {
        return COMMA.splitAsStream(value)
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
    }

    static FamilyHead of(String file, String text) {
        List<Section> sections = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Section section = new Section("", "", new Origin(file, 0, 0), new LinkedHashMap<>());
        sections.add(section);
        int number = 0;
        for (String raw : text.lines().toList()) {
            number++;
            String line = raw.strip();
            Origin at = new Origin(file, number, 0);
            int equals = line.indexOf('=');
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            if (line.startsWith("[") && line.endsWith("]")) {
                String heading = line.substring(1, line.length() - 1).strip();
                int space = heading.indexOf(' ');
                section =
                        new Section(
                                space < 0 ? heading : heading.substring(0, space),
                                space < 0 ? "" : heading.substring(space).strip(),
                                at,
                                new LinkedHashMap<>());
                sections.add(section);
            } else if (equals < 1) {
                problems.add(
                        Problem.error(
                                at, "found \"" + line + "\", expected key = value or [section]"));
            } else {
                String key = line.substring(0, equals).strip();
                Entry entry = new Entry(line.substring(equals + 1).strip(), at);
                Entry before = section.entries().putIfAbsent(key, entry);
                if (before != null) {
                    problems.add(
                            Problem.error(
                                    at, key + " is already given in line " + before.at().line()));
                }
            }
        }
        return new FamilyHead(sections, problems);
    }
}
