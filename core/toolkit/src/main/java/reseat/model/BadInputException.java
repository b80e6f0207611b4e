package reseat.model;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/** Thrown when user input cannot be used; carries all problems found, sorted by location. */
public final class BadInputException extends Exception {

    @Serial private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Creates the exception from its problems.
     *
     * @param problems at least one
     */
    public BadInputException(List<Problem> problems) {
        super(problems.stream().sorted().map(Problem::toString).collect(Collectors.joining("\n")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("at least one problem is required");
        }
        this.problems = problems.stream().sorted().toList();
    }

    /** Creates the exception from one problem. */
    public BadInputException(Problem problem) {
        this(List.of(problem));
    }

    /** Returns the problems, sorted by location; never empty. */
    public List<Problem> problems() {
        return problems;
    }
}
