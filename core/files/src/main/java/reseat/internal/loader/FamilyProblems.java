package reseat.internal.loader;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import reseat.internal.loader.FamilyHead.Entry;
import reseat.internal.loader.FamilyHead.Section;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;

/** Collects what is wrong with {@code family.ini}, and stands in for what is missing. */
final class FamilyProblems {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /** Parts of a path that lead elsewhere: an empty one begins a path from the root. */
    private static final List<String> OUTSIDE = List.of("", ".", "..");

    private static final Pattern SEPARATORS = Pattern.compile("[/\\\\]");
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,6}");

    private final List<Problem> all = new ArrayList<>();

    void add(List<Problem> problems) {
        all.addAll(problems);
    }

    void error(Origin at, String message) {
        all.add(Problem.error(at, message));
    }

    int count() {
        return all.size();
    }

    /** Throws if there was anything. */
    void end() throws BadInputException {
        if (!all.isEmpty()) {
            throw new BadInputException(all);
        }
    }

    /** Returns the value of a key that must be there; empty if it is not. */
    Entry needed(Section section, String key) {
        Entry entry = section.entries().get(key);
        if (entry == null) {
            error(section.at(), key + " is missing" + in(section));
            return new Entry("", section.at());
        }
        return entry;
    }

    /** Returns an id, which is checked. */
    String id(Entry entry) {
        if (!ID.matcher(entry.value()).matches() || entry.value().length() > 64) {
            error(
                    entry.at(),
                    "found the id \""
                            + entry.value()
                            + "\", expected lower case letters, digits and hyphens, 64 at most");
        }
        return entry.value();
    }

    /** Returns a whole number; 0 if it is none. */
    int number(Entry entry) {
        if (NUMBER.matcher(entry.value()).matches()) {
            return Integer.parseInt(entry.value());
        }
        if (!entry.value().isEmpty()) {
            error(entry.at(), "found \"" + entry.value() + "\", expected a whole number");
        }
        return 0;
    }

    /** Whether the name of a file stays in the folder of the family; complains if not. */
    boolean inside(Origin at, String file) {
        boolean inside = OUTSIDE.stream().noneMatch(List.of(SEPARATORS.split(file, -1))::contains);
        if (!inside) {
            error(at, "\"" + file + "\" leaves the folder of the family; name a file in it");
        }
        return inside;
    }

    private static String in(Section section) {
        return section.kind().isEmpty()
                ? ""
                : " in [" + section.kind() + " " + section.name() + "]";
    }
}
