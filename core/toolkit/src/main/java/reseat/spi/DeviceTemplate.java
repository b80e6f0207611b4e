package reseat.spi;

import java.util.List;
import java.util.Map;

/** Makes the first device file of a new device. */
public interface DeviceTemplate {

    /** Returns its id; unlike that of any other template of the family. */
    String id();

    /** Returns what comes out of it, in a few words. */
    String title();

    /** Returns what it must be told besides id, name and maker, in the order to ask. */
    List<Question> questions();

    /**
     * Writes a device file with comments, in YAML, that reads without errors.
     *
     * @param answers an answer to each question by its id, and {@code id}, {@code name} and {@code
     *     maker} of the device, ready to stand in YAML
     */
    String write(Map<String, String> answers);
}
