package reseat.spi;

import java.io.IOException;
import java.io.InputStream;

/**
 * A family of devices: what its devices have in common, as data. A plugin provides one as a
 * service; a device file names it under {@code family}.
 *
 * <p>The data lies between the built-in data and the device file: it changes and adds to the
 * former, and the latter changes and adds to it.
 */
public interface DeviceFamily {

    /**
     * Returns the id that device files name; 1 to 64 letters, digits, dots, underscores and
     * hyphens. Never empty.
     */
    String id();

    /** Returns the noun people use for it ("rugged handheld"). Never empty. */
    String title();

    /**
     * Opens the data: YAML in UTF-8 with the keys {@code tools}, {@code setup}, {@code kinds},
     * {@code hazards} and {@code consumables} as in a device file, each of which may be left out.
     * Errors in it are reported to the user with the id of the family as their place.
     *
     * @return a new stream at each call, which the caller closes; never null
     * @throws IOException if the data cannot be read
     */
    InputStream openDefaults() throws IOException;
}
