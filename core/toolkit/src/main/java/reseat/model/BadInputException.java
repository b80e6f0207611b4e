package reseat.model;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when what a user gave cannot be worked with; carries every problem found, sorted by place.
 */
public final class BadInputException extends Exception {

    @Serial private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Makes the exception from its problems.
     *
     * @param problems at least one
     */
    public BadInputException(List<Problem> problems) {
        super(problems.stream().sorted().map(Problem::toString).collect(Collectors.joining("\n")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("no problem to report");
        }
        this.problems = problems.stream().sorted().toList();
    }

    /** Makes the exception from one problem. */
    public BadInputException(Problem problem) {
        this(List.of(problem));
    }

    /** Returns the problems, sorted by place; never empty. */
    public List<Problem> problems() {
        return problems;
    }
}
