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
 * What a plugin says of itself.
 *
 * @param id id in lower case with hyphens, unlike that of any other plugin
 * @param version its own version
 * @param title what it is, in a few words
 */
public record PluginInfo(String id, String version, String title) {

    /**
     * The version of the interface that plugins are written for: of all exported packages of the
     * toolkit. It grows when a plugin that ran before could run no more.
     */
    public static final int API = 1;

    /**
     * Where a plugin's jar says what it is, in UTF-8: {@code id}, {@code version}, {@code title},
     * and {@code api}, the versions of the interface that it runs with, such as {@code [1,2)}.
     */
    public static final String FILE = "META-INF/reseat-plugin.properties";

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

    /**
     * Returns what the jar of a plugin says in {@link #FILE}.
     *
     * @param plugin a class of the plugin
     * @throws IllegalArgumentException if the jar has no such file, it is incomplete, or its {@code
     *     api} does not hold {@link #API}
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
