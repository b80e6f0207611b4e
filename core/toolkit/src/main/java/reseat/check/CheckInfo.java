package reseat.check;

import java.util.List;

/**
 * What a check says of itself.
 *
 * @param id id in lower case with hyphens
 * @param title what it looks for, in a few words
 * @param finds what it finds, as a sentence
 * @param matters why that matters, as a sentence
 * @param severity how much its findings matter unless one says otherwise
 * @param tags words to choose checks by
 * @param parameters what can be set
 */
public record CheckInfo(
        String id,
        String title,
        String finds,
        String matters,
        Severity severity,
        List<String> tags,
        List<Parameter> parameters) {

    public CheckInfo {
        tags = List.copyOf(tags);
        parameters = List.copyOf(parameters);
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException(
                    "an id of a check is in lower case with hyphens: " + id);
        }
    }

    /**
     * Something that can be set.
     *
     * @param name its name
     * @param says what it does, with its unit
     * @param usual value where nobody sets it
     */
    public record Parameter(String name, String says, String usual) {}
}
