package reseat.console.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import reseat.console.load.OurPlugins;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFiles;
import reseat.files.JobFiles;
import reseat.files.KnownFiles;
import reseat.files.PlanFiles;
import reseat.files.Reading;
import reseat.files.ResolvedJson;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Problem;
import reseat.model.Units;
import reseat.spi.DeviceFamily;

/**
 * Feeds every reader, and the command that takes the same file, with sound texts that were changed
 * at random. Whatever comes in, a reader ends with what it read or with sentences about the place
 * where it is wrong. An input is known by its number alone, so that any one can be made again.
 */
final class Fuzz {

    /** An input that a reader does not stand. */
    static final class Crash extends Exception {
        private static final long serialVersionUID = 1L;

        Crash(String message, Throwable cause) {
            super(message, cause);
        }
    }

    private static final List<DeviceFamily> FAMILIES = OurPlugins.quietly().families();

    private final Path folder;
    private final SoundTexts sound;
    private final Commands commands;

    /** How many inputs of a format were read as something, and how many were refused. */
    final Map<Format, int[]> told = new EnumMap<>(Format.class);

    /**
     * Makes sound texts to begin with.
     *
     * @param folder where to put the files
     * @param samples folder of the samples
     */
    Fuzz(Path folder, Path samples) throws IOException {
        this.folder = folder;
        for (Format format : Format.values()) {
            told.put(format, new int[2]);
        }
        this.sound = new SoundTexts(folder, samples);
        Path stock = Files.createDirectories(folder.resolve("stock"));
        try (Stream<Path> files = Files.list(samples.resolve("stock"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, stock.resolve(file.getFileName()));
            }
        }
        this.commands = new Commands(folder, sound);
    }

    /** Reads one input, or runs one command line; the same number always means the same. */
    void input(long number) throws Crash, IOException {
        Random random = new Random(number * 0x9E3779B97F4A7C15L ^ 0x5DEECE66DL);
        Format format = Format.values()[random.nextInt(Format.values().length)];
        byte[] bytes = {};
        try {
            boolean refused;
            if (format == Format.COMMAND) {
                refused = commands.line(random);
            } else {
                List<String> texts = sound.of(format);
                String start = texts.get(random.nextInt(texts.size()));
                String text = new Mutator(random).mutate(start, texts);
                bytes = text.getBytes(StandardCharsets.UTF_8);
                if (random.nextInt(20) == 0 && bytes.length > 0) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                }
                refused = refused(format, bytes, text);
            }
            told.get(format)[refused ? 1 : 0]++;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError | AssertionError e) {
            throw new Crash(
                    "input "
                            + number
                            + kept(number, format, bytes)
                            + "; again with: mvn -o test -pl core/console -am -Dtest=FuzzTest"
                            + " -Dsurefire.failIfNoSpecifiedTests=false -Dreseat.fuzz.inputs=1 -Dreseat.fuzz.seed="
                            + number,
                    e);
        }
    }

    /** Returns what changes begin with and is refused all the same. */
    List<String> refusedAtFirst() throws IOException {
        List<String> refused = new ArrayList<>();
        for (Format format : Format.values()) {
            for (String text : sound.of(format)) {
                if (refused(format, text.getBytes(StandardCharsets.UTF_8), text)) {
                    refused.add(format + ": " + text);
                }
            }
        }
        return refused;
    }

    private static String kept(long number, Format format, byte[] bytes) throws IOException {
        if (format == Format.COMMAND) {
            return "";
        }
        Path kept =
                Path.of(
                        "target",
                        "fuzz",
                        number + "-" + format.name().toLowerCase(Locale.ROOT) + format.ending);
        Files.createDirectories(kept.getParent());
        Files.write(kept, bytes);
        return ", kept as core/console/" + kept;
    }

    private boolean refused(Format format, byte[] bytes, String text) throws IOException {
        Path file = Files.write(folder.resolve("input" + format.ending), bytes);
        if (format == Format.CSV) {
            Files.write(folder.resolve("seats.csv"), bytes);
            file = Files.writeString(folder.resolve("seated.yaml"), SoundTexts.SEATED);
        }
        boolean refused = read(format, file, text);
        // a command may have more to refuse, such as ids that its device does not have
        if (!commands.refuses(format, file, text) && refused) {
            throw new AssertionError("the command took what its reader refuses");
        }
        return refused;
    }

    private boolean read(Format format, Path file, String text) throws IOException {
        return switch (format) {
            case YAML, JSON, RESOLVED, CSV -> device(file);
            case PLAN -> bad(() -> PlanFiles.readPlan(file));
            case STATE -> bad(() -> PlanFiles.readState(file));
            case JOB -> bad(() -> JobFiles.read(file));
            case KNOWN -> bad(() -> KnownFiles.read(file));
            case UNITS -> units(text);
            case COMMAND -> throw new IllegalArgumentException("a command is no file");
        };
    }

    private static boolean device(Path file) throws IOException {
        Reading reading = DeviceFiles.read(file, Optional.empty(), FAMILIES);
        boolean failed = located(reading.problems());
        if (failed == reading.device().isPresent()) {
            throw new AssertionError("a device and errors, or neither");
        }
        if (reading.variants().size() == 1) {
            located(
                    DeviceFiles.read(file, Optional.of(reading.variants().get(0)), FAMILIES)
                            .problems());
        }
        if (reading.device().isPresent()) {
            // what is a device is one for all who use it
            Device device = reading.device().get();
            device.origins();
            Path again = file.resolveSibling("again.json");
            Files.writeString(again, ResolvedJson.write(device));
            Reading second = DeviceFiles.read(again, Optional.empty(), FAMILIES);
            if (second.device().isEmpty()) {
                throw new AssertionError("written and not read again: " + second.problems());
            }
            if (!ResolvedJson.write(second.device().get()).equals(Files.readString(again))) {
                throw new AssertionError("written anew, it is another device");
            }
        }
        return failed;
    }

    private static boolean located(List<Problem> problems) {
        boolean failed = false;
        if (problems.size() > 201) {
            throw new AssertionError(problems.size() + " problems: no bound on them");
        }
        for (Problem problem : problems) {
            sentence(problem.message());
            failed |= problem.isError();
        }
        return failed;
    }

    private static void sentence(String message) {
        if (message == null
                || message.isBlank()
                || message.length() > 20_000
                || message.contains("Exception")
                || message.contains("\tat ")
                || message.contains("java.")) {
            throw new AssertionError("no sentence for a user: " + message);
        }
    }

    /** Reads something. */
    private interface Reader {
        void read() throws BadInputException;
    }

    private static boolean bad(Reader reader) {
        try {
            reader.read();
            return false;
        } catch (BadInputException e) {
            if (!located(e.problems())) {
                throw new AssertionError("refused without an error", e);
            }
            return true;
        }
    }

    private static boolean units(String text) {
        boolean refused = true;
        for (int which = 0; which < 4; which++) {
            try {
                switch (which) {
                    case 0 -> Units.lengthMm(text);
                    case 1 -> Units.torqueNm(text);
                    case 2 -> Units.timeMs(text);
                    // shops spell torques in more ways than a device file may
                    default -> FastenerTables.standard().torqueUnits().parse(text);
                }
                refused = false;
            } catch (NumberFormatException e) {
                throw new AssertionError("a number that is none went through", e);
            } catch (IllegalArgumentException e) {
                sentence(e.getMessage());
            }
        }
        return refused;
    }

    /** Tells how many inputs of each format were read and refused. */
    String summary() {
        StringBuilder out = new StringBuilder();
        told.forEach(
                (format, counts) ->
                        out.append(format)
                                .append(": read ")
                                .append(counts[0])
                                .append(", refused ")
                                .append(counts[1])
                                .append('\n'));
        return out.toString();
    }
}
