package reseat.spi;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of the running toolkit. */
public final class ToolkitVersion {

    private static final String CURRENT = read();

    private ToolkitVersion() {}

    /** Returns the version of the running toolkit, such as {@code 0.1.0}; never blank. */
    public static String current() {
        return CURRENT;
    }

    private static String read() {
        Properties properties = new Properties();
        try (InputStream in = ToolkitVersion.class.getResourceAsStream("toolkit.properties")) {
            if (in == null) {
                throw new IllegalStateException("toolkit.properties is missing from the build");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String version = properties.getProperty("version", "");
        if (version.isBlank() || version.contains("${")) {
            throw new IllegalStateException("the build did not fill in the version: " + version);
        }
        return version;
    }
}
