package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.spi.DeviceFamily;

/**
 * A small device with the findings expected of a script, written as comments in the device file:
 * {@code # FINDING: words} on the line of the fact or before it, {@code # NEAR MISS: why} where
 * nothing must be found, {@code # GIVEN plan: free fan} for further input. Anything not marked must
 * give no finding.
 */
public final class Fixture {

    private static final Pattern MARK =
            Pattern.compile("#\\s+(FINDING|NEAR MISS|GIVEN)\\b:?\\s*(.*?)\\s*$");

    private final Path file;
    private final CheckInput input;
    private final List<Expected> expected;
    private final boolean nearMiss;

    /** An expected finding: its line, and words in its message. */
    private record Expected(int line, String words) {}

    private Fixture(Path file, CheckInput input, List<Expected> expected, boolean nearMiss) {
        this.file = file;
        this.input = input;
        this.expected = List.copyOf(expected);
        this.nearMiss = nearMiss;
    }

    /**
     * Returns the fixtures next to a script, in the order of their names.
     *
     * @param families the families of devices that the fixtures may name
     */
    public static List<Fixture> of(ScriptFile script, List<DeviceFamily> families)
            throws IOException, BadInputException {
        Path folder = Path.of(script.file()).resolveSibling("fixtures");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
        List<Fixture> fixtures = new ArrayList<>();
        for (Path each : files) {
            fixtures.add(read(each, script, families));
        }
        return List.copyOf(fixtures);
    }

    /** Reads a fixture of a script. */
    static Fixture read(Path file, ScriptFile script, List<DeviceFamily> families)
            throws IOException, BadInputException {
        List<String> lines = Files.readAllLines(file, UTF_8);
        List<Expected> expected = new ArrayList<>();
        List<String> waiting = new ArrayList<>();
        FixtureGivens givens = new FixtureGivens(file, script.info().id(), families);
        boolean nearMiss = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            int number = i + 1;
            boolean code = !line.isBlank() && !line.strip().startsWith("#");
            if (code) {
                waiting.forEach(words -> expected.add(new Expected(number, words)));
                waiting.clear();
            }
            Matcher mark = MARK.matcher(line);
            if (mark.find()) {
                switch (mark.group(1)) {
                    case "FINDING" -> {
                        if (code) {
                            expected.add(new Expected(number, mark.group(2)));
                        } else {
                            waiting.add(mark.group(2));
                        }
                    }
                    case "GIVEN" -> givens.add(number, mark.group(2));
                    default -> nearMiss = true;
                }
            }
        }
        if (!waiting.isEmpty()) {
            throw new BadInputException(
                    Problem.error(
                            new Origin(file.toString(), lines.size(), 0),
                            "a finding is expected after the end of the file"));
        }
        return new Fixture(file, givens.input(), expected, nearMiss);
    }

    /** Returns the file. */
    public Path file() {
        return file;
    }

    /** Returns the input of the script. */
    public CheckInput input() {
        return input;
    }

    /** Returns whether a finding is expected. */
    public boolean hasFinding() {
        return !expected.isEmpty();
    }

    /** Returns whether a near miss is marked. */
    public boolean hasNearMiss() {
        return nearMiss;
    }

    /**
     * Compares the outcome of a script with what is expected; returns the differences, one per
     * line.
     */
    public List<String> complaints(ScriptOutcome outcome) {
        if (outcome.status() != ScriptOutcome.Status.RAN) {
            return List.of(file + ": " + outcome.problem());
        }
        List<String> complaints = new ArrayList<>();
        List<Finding> left = new ArrayList<>(outcome.findings());
        for (Expected each : expected) {
            boolean met = false;
            for (int i = 0; i < left.size() && !met; i++) {
                met =
                        left.get(i).at().line() == each.line
                                && left.get(i).message().contains(each.words);
                if (met) {
                    left.remove(i);
                }
            }
            if (!met) {
                complaints.add(file + ":" + each.line + ": not found: " + each.words);
            }
        }
        for (Finding each : left) {
            complaints.add(each.at() + ": found, but not marked: " + each.message());
        }
        return List.copyOf(complaints);
    }
}
