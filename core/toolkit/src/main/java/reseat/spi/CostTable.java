package reseat.spi;

import java.io.IOException;
import java.io.InputStream;

/**
 * What acts and set-ups cost in one shop or by one method, as data. It ranks between the family and
 * the device file: what the device file states takes precedence.
 */
public interface CostTable {

    /** Returns the id by which users select it; lower case with hyphens. */
    String id();

    /** Returns a short description. */
    String title();

    /** Returns the source of its times. */
    String source();

    /**
     * Opens the data: YAML in UTF-8 with the keys {@code setup}, {@code tools} and {@code kinds} as
     * in a device file, all optional.
     *
     * @return a new stream at each call, which the caller closes; never null
     * @throws IOException if the data cannot be read
     */
    InputStream open() throws IOException;
}
