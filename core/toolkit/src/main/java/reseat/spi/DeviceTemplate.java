package reseat.spi;

import java.util.List;
import java.util.Map;

/** Creates the first device file of a new device. */
public interface DeviceTemplate {

    /** Returns its id, unique among the templates of the family. */
    String id();

    /** Returns a short description of the file it creates. */
    String title();

    /** Returns its questions besides id, name and maker, in the order in which to ask them. */
    List<Question> questions();

    /**
     * Writes a commented device file, in YAML, that reads without errors.
     *
     * @param answers an answer to each question by its id, and {@code id}, {@code name} and {@code
     *     maker} of the device, quoted for YAML where necessary
     */
    String write(Map<String, String> answers);
}
