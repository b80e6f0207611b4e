package reseat.check;

import java.util.List;
import reseat.model.Problem;

/**
 * Something to check: mostly a device file, which gives one input for each of its variants. It is
 * read when its turn comes, and let go afterwards, so that a run over many needs the memory of few.
 */
public interface CheckSource {

    /** Returns the name that people know it by, such as the file as the user named it. */
    String name();

    /**
     * Reads it; called once in a run, from any thread.
     *
     * @return what there is to check, and what is wrong with it
     */
    Content read();

    /**
     * What came of reading.
     *
     * @param inputs one for each variant, the base device first; all of one device
     * @param problems what is wrong; errors count as failures, but what could be read is checked
     */
    record Content(List<CheckInput> inputs, List<Problem> problems) {

        public Content {
            inputs = List.copyOf(inputs);
            problems = problems.stream().distinct().sorted().toList();
        }
    }
}
