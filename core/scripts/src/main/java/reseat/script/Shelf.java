package reseat.script;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Problem;
import reseat.spi.DeviceFamily;

/** The devices that were read, and their files. Safe for use by several threads. */
final class Shelf {

    private static final int DEPTH = 6;
    private static final int HEAD_LINES = 200;

    private record Seen(Device device, Path file) {}

    private final Path folder;
    private final List<DeviceFamily> families;
    private final Screen screen;
    private final List<Seen> seen = new ArrayList<>();

    Shelf(Path folder, List<DeviceFamily> families, Screen screen) {
        this.folder = folder;
        this.families = families;
        this.screen = screen;
    }

    Path folder() {
        return folder;
    }

    Device read(String file, Optional<String> variant) {
        Path path = folder.resolve(file);
        if (!Files.exists(path)) {
            throw new BenchException("There is no file \"" + file + "\".");
        }
        return remember(orTold(DeviceFiles.read(path, variant, families)), path);
    }

    List<Device> readAll(String name) {
        Path start = folder.resolve(name);
        if (!Files.isDirectory(start)) {
            throw new BenchException("There is no folder \"" + name + "\".");
        }
        List<Device> devices = new ArrayList<>();
        for (Path file : deviceFiles(start)) {
            if (Thread.currentThread().isInterrupted()) {
                throw new BenchException("Stopped before all device files were read.");
            }
            Reading base = DeviceFiles.read(file, Optional.empty(), families);
            devices.add(remember(orTold(base), file));
            for (String variant : base.variants()) {
                Reading other = DeviceFiles.read(file, Optional.of(variant), families);
                devices.add(remember(orTold(other), file));
            }
        }
        return List.copyOf(devices);
    }

    synchronized List<Device> seen() {
        return seen.stream().map(Seen::device).toList();
    }

    /** Keeps the latest version of each device. */
    private synchronized Device remember(Device device, Path file) {
        seen.removeIf(
                each ->
                        each.file().equals(file)
                                && each.device().toString().equals(device.toString()));
        seen.add(new Seen(device, file));
        return device;
    }

    private Device orTold(Reading reading) {
        if (reading.device().isPresent()) {
            reading.problems().forEach(problem -> screen.note(problem.toString()));
        }
        return reading.device()
                .orElseThrow(
                        () ->
                                new BenchException(
                                        reading.problems().stream()
                                                .map(Problem::toString)
                                                .collect(Collectors.joining("\n"))));
    }

    private static List<Path> deviceFiles(Path start) {
        try (Stream<Path> files = Files.walk(start, DEPTH)) {
            return files.filter(Shelf::isDeviceFile).sorted().toList();
        } catch (IOException e) {
            throw new BenchException("Cannot read the folder " + start + ": " + e.getMessage(), e);
        }
    }

    /** Device files are told from others by the format near their top. */
    private static boolean isDeviceFile(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".yaml") && !name.endsWith(".yml") && !name.endsWith(".json")) {
            return false;
        }
        try (BufferedReader reader = Files.newBufferedReader(file, UTF_8)) {
            return reader.lines().limit(HEAD_LINES).anyMatch(l -> l.contains("reseat-device/"));
        } catch (IOException | java.io.UncheckedIOException e) {
            return false;
        }
    }
}
