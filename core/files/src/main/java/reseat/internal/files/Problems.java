package reseat.internal.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.text.ListText;

/**
 * Collects the problems of a file. Keeps the first {@value #KEPT} and counts the rest, so that
 * memory is bounded.
 */
final class Problems {

    static final int KEPT = 200;

    /** How many lines are named where an error is reported once for several places. */
    private static final int LISTED = 6;

    private final Origin file;
    private final Set<Problem> kept = new LinkedHashSet<>();

    /** Errors with one cause in common, by cause. */
    private final Map<String, List<Problem>> shared = new LinkedHashMap<>();

    private int held;
    private long more;
    private boolean errors;

    /**
     * Creates an empty collection.
     *
     * @param file name of the file, as the user named it
     */
    Problems(String file) {
        this.file = new Origin(file, 0, 0);
    }

    void error(Origin at, String message) {
        errors = true;
        add(Problem.error(at, message));
    }

    /**
     * Adds an error that is reported once for all with the same cause, with their locations.
     *
     * @param cause what they have in common, such as the unknown id
     */
    void shared(String cause, Origin at, String message) {
        errors = true;
        Problem problem = Problem.error(at, message);
        List<Problem> same = shared.computeIfAbsent(cause, key -> new ArrayList<>());
        if (same.contains(problem)) {
            return;
        }
        if (held < KEPT) {
            same.add(problem);
            held++;
        } else {
            more++;
        }
    }

    void warning(Origin at, String message) {
        add(Problem.warning(at, message));
    }

    private void add(Problem problem) {
        if (kept.contains(problem)) {
            return;
        }
        if (kept.size() < KEPT) {
            kept.add(problem);
        } else {
            more++;
        }
    }

    boolean isEmpty() {
        return kept.isEmpty() && shared.isEmpty();
    }

    /** Returns the number of problems, including those only counted. */
    long count() {
        return kept.size() + held + more;
    }

    boolean hasErrors() {
        return errors;
    }

    /**
     * Returns the problems sorted by location; if some were only counted, the last one gives their
     * number.
     */
    List<Problem> sorted() {
        List<Problem> all = new ArrayList<>(kept);
        shared.values().stream()
                .filter(same -> !same.isEmpty())
                .map(Problems::one)
                .forEach(all::add);
        Collections.sort(all);
        if (more > 0) {
            String message = "and " + more + " more";
            all.add(errors ? Problem.error(file, message) : Problem.warning(file, message));
        }
        return List.copyOf(all);
    }

    /** Makes one problem of those with a common cause: the first, and where the others are. */
    private static Problem one(List<Problem> same) {
        List<Problem> sorted = same.stream().sorted().toList();
        Problem first = sorted.get(0);
        if (sorted.size() == 1) {
            return first;
        }
        Set<String> lines = new LinkedHashSet<>();
        Set<String> elsewhere = new LinkedHashSet<>();
        for (Problem each : sorted.subList(1, sorted.size())) {
            if (each.at().file().equals(first.at().file())) {
                lines.add(String.valueOf(each.at().line()));
            } else {
                elsewhere.add(each.at().toString());
            }
        }
        String where = lines.isEmpty() ? "" : lines.size() == 1 ? "line " : "lines ";
        lines.addAll(elsewhere);
        int others = sorted.size() - 1;
        return Problem.error(
                first.at(),
                first.message().replaceFirst("[.]$", "")
                        + (first.message().endsWith("?") ? " " : ". ")
                        + "The same at "
                        + others
                        + (others == 1 ? " other place: " : " other places: ")
                        + where
                        + ListText.first(lines, LISTED));
    }
}
