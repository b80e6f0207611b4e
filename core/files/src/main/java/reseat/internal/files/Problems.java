package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * Collects what is wrong with a file. Keeps the first {@value #KEPT} and counts the rest, so that
 * memory is bounded.
 */
final class Problems {

    static final int KEPT = 200;

    private final Origin file;
    private final Set<Problem> kept = new LinkedHashSet<>();
    private long more;
    private boolean errors;

    /**
     * Makes an empty collection.
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

    /** Returns how many there were, those included that were only counted. */
    long count() {
        return kept.size() + more;
    }

    boolean hasErrors() {
        return errors;
    }

    /**
     * Returns the problems sorted by place; where some were only counted, a last one says how many.
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
