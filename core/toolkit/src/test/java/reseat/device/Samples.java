package reseat.device;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The device files under samples. */
final class Samples {

    private Samples() {}

    static Path folder() {
        return Path.of("..", "..", "samples");
    }

    static List<Path> devices() {
        try (Stream<Path> files = Files.walk(folder())) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(Samples::isDevice)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
