package reseat.internal.loader;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;

/**
 * A family that is data.
 *
 * @param version the version of the data, where it is a plugin by itself
 * @param texts its templates
 * @param files where the rest of it is
 */
record DataFamily(
        String id,
        String title,
        String version,
        Map<String, String> fastenerRows,
        List<TextTemplate> texts,
        FamilyFiles files)
        implements DeviceFamily {

    /** The file with what the devices have in common. */
    static final String DEFAULTS = "defaults.yaml";

    @Override
    public InputStream openDefaults() throws IOException {
        return files.open(DEFAULTS);
    }

    @Override
    public List<DeviceTemplate> templates() {
        return List.copyOf(texts);
    }

    /**
     * Looks through the files that are read only when somebody needs them.
     *
     * @throws BadInputException if one is missing, or a template cannot be filled in
     */
    void proofread() throws BadInputException {
        List<Problem> problems = new ArrayList<>();
        try {
            files.text(DEFAULTS);
        } catch (IOException e) {
            problems.add(Problem.error(new Origin(DEFAULTS, 0, 0), FamilyFiles.why(e)));
        }
        texts.forEach(template -> problems.addAll(template.problems()));
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
    }
}
