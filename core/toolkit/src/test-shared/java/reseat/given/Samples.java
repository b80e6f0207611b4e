package reseat.given;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import reseat.spi.DeviceFamily;

/** The device files under samples. */
public final class Samples {

    private static final List<DeviceFamily> FAMILIES = inSources();

    private Samples() {}

    public static Path folder() {
        return Path.of("..", "..", "samples");
    }

    public static List<Path> devices() {
        try (Stream<Path> files = Files.walk(folder(), 2)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(Samples::isDevice)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the families that the samples name, out of the sources of the plugins. */
    public static List<DeviceFamily> families() {
        return FAMILIES;
    }

    private static List<DeviceFamily> inSources() {
        Path plugins = Path.of("..", "..", "plugins");
        try (Stream<Path> files = Files.list(plugins)) {
            return files.map(plugin -> plugin.getFileName().toString())
                    .sorted()
                    .<DeviceFamily>map(
                            id ->
                                    new Sourced(
                                            id,
                                            plugins.resolve(id)
                                                    .resolve(
                                                            "src/main/resources/META-INF/reseat-family")
                                                    .resolve("defaults.yaml")))
                    .filter(family -> Files.exists(((Sourced) family).data()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private record Sourced(String id, Path data) implements DeviceFamily {

        @Override
        public String title() {
            return id;
        }

        @Override
        public InputStream openDefaults() throws IOException {
            return Files.newInputStream(data);
        }
    }

    private static boolean isDevice(Path file) {
        try {
            return Files.readString(file).contains("format: reseat-device/1");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
