package reseat.files;

import java.util.List;
import reseat.check.CheckInput;
import reseat.model.Problem;

/**
 * Something to check: usually a device file, which yields one input for each of its variants. It is
 * read when its turn comes and released afterwards, so that a long run needs little memory.
 */
public interface CheckSource {

    /** Returns the display name, such as the file as the user named it. */
    String name();

    /**
     * Reads it; called once in a run, from any thread.
     *
     * @return the inputs to check, and the problems found while reading
     */
    Content read();

    /**
     * The result of reading.
     *
     * @param inputs one for each variant, the base device first; all of one device
     * @param problems the problems found; errors count as failures, but what could be read is
     *     checked
     */
    record Content(List<CheckInput> inputs, List<Problem> problems) {

        public Content {
            inputs = List.copyOf(inputs);
            problems = problems.stream().distinct().sorted().toList();
        }
    }
}
