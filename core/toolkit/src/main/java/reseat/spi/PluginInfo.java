package reseat.spi;

import java.util.regex.Pattern;

/**
 * What a plugin says of itself.
 *
 * @param id id in lower case with hyphens, unlike that of any other plugin
 * @param version its own version
 * @param title what it is, in a few words
 */
public record PluginInfo(String id, String version, String title) {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public PluginInfo {
        if (!ID.matcher(id).matches() || id.length() > 64) {
            throw new IllegalArgumentException(
                    "an id of a plugin is in lower case with hyphens, 64 characters at most: "
                            + id);
        }
        if (version.isBlank() || title.isBlank()) {
            throw new IllegalArgumentException(id + ": a plugin has a version and a title");
        }
    }
}
