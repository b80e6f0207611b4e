package reseat.console.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import reseat.console.Ran;

/**
 * Runs the command that takes a file, or a command line that was mistyped. Whatever comes in, it
 * ends with 0, 1 or 2; with 2 it says why, and nobody meets the words of a programmer.
 */
final class Commands {

    private static final String DEVICE = "src/test/resources/reseat/console/bonded.yaml";

    /**
     * Which files a command line may name; the stock among them is a copy, so that it may be
     * written to.
     */
    private static final Map<String, Format> FILES =
            Map.of(
                    "STATE",
                    Format.STATE,
                    "PLAN",
                    Format.PLAN,
                    "KNOWN",
                    Format.KNOWN,
                    "JOB",
                    Format.JOB,
                    "ROWS",
                    Format.CSV);

    private final Path folder;
    private final SoundTexts sound;
    private final List<Path> stocks;

    /**
     * Begins.
     *
     * @param folder where to put files; a copy of the sample stock lies in its folder {@code stock}
     * @param sound what files begin with
     */
    Commands(Path folder, SoundTexts sound) {
        this.folder = folder;
        this.sound = sound;
        this.stocks =
                List.of(
                        folder.resolve("stock/shop.yaml"),
                        folder.resolve("stock/several-benches.yaml"),
                        folder.resolve("no"));
    }

    /** Gives a file to the command that takes it, and tells whether the command refused it. */
    boolean refuses(Format format, Path file, String text) {
        String path = file.toString();
        return switch (format) {
            case YAML, JSON, RESOLVED, CSV -> run("proofread", path) == 2;
            case PLAN -> run("judge", DEVICE, path) == 2;
            case STATE ->
                    run("plan", DEVICE, "--free", "cell", "--effort", "20", "--start", path) == 2;
            case JOB -> run("check", DEVICE, "--only", "no-safe-cut-depth", "--job", path) == 2;
            case KNOWN -> run("check", DEVICE, "--only", "no-safe-cut-depth", "--known", path) == 2;
            case UNITS -> run("torque", "--convert", text) == 2;
            default -> throw new IllegalArgumentException("no command takes " + format);
        };
    }

    /** Runs a command line; tells whether it was refused. */
    boolean line(Random random) throws IOException {
        return run(words(random).toArray(String[]::new)) == 2;
    }

    /** Returns a command line; its files are made. */
    List<String> words(Random random) throws IOException {
        Mutator mutator = new Mutator(random);
        Map<String, Supplier<Path>> files = new HashMap<>();
        files.put("DEVICE", () -> device(random, mutator));
        files.put("STOCK", () -> stocks.get(random.nextInt(stocks.size())));
        FILES.forEach((word, format) -> files.put(word, () -> file(format, random, mutator)));
        return new CommandLines(random, mutator, files).next();
    }

    private Path device(Random random, Mutator mutator) {
        if (random.nextInt(2) == 0) {
            return Path.of(DEVICE);
        }
        return file(random.nextBoolean() ? Format.JSON : Format.RESOLVED, random, mutator);
    }

    /** Two times in three the file is as it should be. */
    private Path file(Format format, Random random, Mutator mutator) {
        List<String> texts = sound.of(format);
        String text = texts.get(random.nextInt(texts.size()));
        Path path =
                folder.resolve(
                        format.name().toLowerCase(Locale.ROOT) + random.nextInt(2) + format.ending);
        try {
            String changed = random.nextInt(3) > 0 ? text : mutator.mutate(text, texts);
            return Files.write(path, changed.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int run(String... words) {
        Ran ran = Ran.reseat(words);
        String said = ran.out() + ran.err();
        boolean trace =
                said.contains("\tat ")
                        || ran.err().contains("Exception")
                        || ran.err().contains("java.");
        if (ran.code() < 0 || ran.code() > 2 || trace || (ran.code() == 2 && said.isBlank())) {
            throw new AssertionError(
                    "reseat "
                            + String.join(" ", words)
                            + " ended with "
                            + ran.code()
                            + ": "
                            + ran.err());
        }
        return ran.code();
    }
}
