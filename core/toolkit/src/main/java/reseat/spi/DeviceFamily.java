package reseat.spi;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import reseat.check.Check;

/**
 * A family of devices: what its devices have in common, as data. A device file names it under
 * {@code family}. Most families are files alone: see {@code FamilyPlugin} in reseat.files.
 *
 * <p>One class cannot be both a plugin and a family: both have checks.
 *
 * <p>The data ranks between the built-in data and the device file: it overrides and extends the
 * former, and the latter overrides and extends it.
 */
public interface DeviceFamily {

    /**
     * Returns the id that device files name; 1 to 64 letters, digits, dots, underscores and
     * hyphens. Never empty.
     */
    String id();

    /** Returns the usual noun for it ("rugged handheld"). Never empty. */
    String title();

    /**
     * Opens the data: YAML in UTF-8 with the keys {@code supplies}, {@code prepare}, {@code tools},
     * {@code setup}, {@code kinds}, {@code hazards} and {@code consumables} as in a device file,
     * all optional. Errors in it are reported to the user with the id of the family as their
     * location.
     *
     * @return a new stream at each call, which the caller closes; never null
     * @throws IOException if the data cannot be read
     */
    InputStream openDefaults() throws IOException;

    /**
     * Returns rows to add to the fastener tables, such as torques of its screws in {@code
     * family-torques.csv}: text of a CSV file with a header row, by the name of its table. A row
     * whose key exists already replaces that row.
     */
    default Map<String, String> fastenerRows() {
        return Map.of();
    }

    /** Returns checks that are run only on its devices. */
    default List<Check> checks() {
        return List.of();
    }

    /** Returns templates for new devices; the first is the default. */
    default List<DeviceTemplate> templates() {
        return List.of();
    }
}
