package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * Collects the problems of a file. Keeps the first {@value #KEPT} and counts the rest, so that
 * memory is bounded.
 */
final class Problems {

    static final int KEPT = 200;

    private final Origin file;
    private final Set<Problem> kept = new LinkedHashSet<>();
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
        return kept.isEmpty();
    }

    /** Returns the number of problems, including those only counted. */
    long count() {
        return kept.size() + more;
    }

    boolean hasErrors() {
        return errors;
    }

    /**
     * Returns the problems sorted by location; if some were only counted, the last one gives their
     * number.
     */
    List<Problem> sorted() {
        List<Problem> all = new ArrayList<>(kept.stream().sorted().toList());
        if (more > 0) {
            String message = "and " + more + " more";
            all.add(errors ? Problem.error(file, message) : Problem.warning(file, message));
        }
        return List.copyOf(all);
    }
}
