package reseat.spi;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import reseat.internal.spi.ApiRange;
import reseat.internal.spi.JarFiles;

/**
 * The description of a plugin.
 *
 * @param id id in lower case with hyphens, unique among all plugins
 * @param version its own version
 * @param title short description
 */
public record PluginInfo(String id, String version, String title) {

    /**
     * The version of the plugin interface, which comprises all exported packages of the toolkit. It
     * is incremented when a change can break an existing plugin.
     */
    public static final int API = 2;

    /**
     * The file in a plugin's jar that describes the plugin, in UTF-8: {@code id}, {@code version},
     * {@code title}, and {@code api}, the range of interface versions that it supports, such as
     * {@code [1,2)}.
     */
    public static final String FILE = "META-INF/reseat-plugin.properties";

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public PluginInfo {
        if (!ID.matcher(id).matches() || id.length() > 64) {
            throw new IllegalArgumentException(
                    "a plugin id must be lower case with hyphens, at most 64 characters: " + id);
        }
        if (version.isBlank() || title.isBlank()) {
            throw new IllegalArgumentException(id + ": a plugin must have a version and a title");
        }
    }

    /**
     * Returns the description in {@link #FILE} of a plugin's jar.
     *
     * @param plugin a class of the plugin
     * @throws IllegalArgumentException if the jar has no such file, it is incomplete, or its {@code
     *     api} does not include {@link #API}
     */
    public static PluginInfo of(Class<?> plugin) {
        try (InputStream in = JarFiles.open(plugin, FILE)) {
            if (in == null) {
                throw new IllegalArgumentException(
                        "there is no " + FILE + " beside " + plugin.getName());
            }
            Properties said = new Properties();
            said.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Optional<String> hindrance =
                    ApiRange.hindrance(said.getProperty("api", "").strip(), API);
            if (hindrance.isPresent()) {
                throw new IllegalArgumentException(FILE + ": " + hindrance.get());
            }
            return new PluginInfo(
                    said.getProperty("id", "").strip(),
                    said.getProperty("version", "").strip(),
                    said.getProperty("title", "").strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
