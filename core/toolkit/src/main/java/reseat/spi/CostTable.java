package reseat.spi;

import java.io.IOException;
import java.io.InputStream;

/**
 * What acts and set-ups cost in one shop or by one method, as data. It lies between the family and
 * the device file: what the file states itself stays as it is.
 */
public interface CostTable {

    /** Returns the id that people choose it by; lower case with hyphens. */
    String id();

    /** Returns what it is, in a few words. */
    String title();

    /** Returns where its times come from. */
    String source();

    /**
     * Opens the data: YAML in UTF-8 with the keys {@code setup}, {@code tools} and {@code kinds} as
     * in a device file, each of which may be left out.
     *
     * @return a new stream at each call, which the caller closes; never null
     * @throws IOException if the data cannot be read
     */
    InputStream open() throws IOException;
}
