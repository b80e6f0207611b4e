package reseat.fuzz;

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
import reseat.device.DeviceFiles;
import reseat.device.JobFiles;
import reseat.device.KnownFiles;
import reseat.device.PlanFiles;
import reseat.device.PlanJson;
import reseat.device.Reading;
import reseat.device.ResolvedJson;
import reseat.device.Samples;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.model.Units;
import reseat.oracle.FuzzDevices;
import reseat.order.SopFiles;
import reseat.order.SopFormatException;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;
import reseat.spi.DeviceFamily;

/**
 * Feeds every reader with sound texts that were changed at random. Whatever comes in, a reader ends
 * with what it read or with sentences about the place where it is wrong. An input is known by its
 * number alone, so that any one can be made again.
 */
final class Fuzz {

    /** What is read. */
    enum Format {
        YAML(".yaml"),
        JSON(".json"),
        RESOLVED(".json"),
        CSV(".csv"),
        PLAN(".json"),
        STATE(".yaml"),
        JOB(".yaml"),
        KNOWN(".yaml"),
        SOP(".sop"),
        UNITS(".txt");

        final String ending;

        Format(String ending) {
            this.ending = ending;
        }
    }

    /** An input that a reader does not stand. */
    static final class Crash extends Exception {
        private static final long serialVersionUID = 1L;

        Crash(String message, Throwable cause) {
            super(message, cause);
        }
    }

    private static final String SEATED =
            "format: reseat-device/1\nid: s\nbase: b\nseatTable: seats.csv\nparts: {b: {}, lid: {}}\n"
                    + "screwTypes: {m2: {thread: M2x0.4, length: 4 mm, head: pan, drive: PH0}}\n"
                    + "joints: {lid-screw: {kind: screw, holds: [lid, b], screw: m2}}\n";

    private static final String SOP =
            "NAME: four.sop\nTYPE: SOP\nCOMMENT: made up\nDIMENSION: 4\nEDGE_WEIGHT_TYPE: EXPLICIT\n"
                    + "EDGE_WEIGHT_FORMAT: FULL_MATRIX\nEDGE_WEIGHT_SECTION\n4\n 0  3  4 1000000\n-1  0  5  6\n"
                    + "-1 -1  0  7\n-1 -1 -1  0\nEOF\n";

    private static final List<DeviceFamily> FAMILIES = Samples.families();

    private final Path folder;
    private final Map<Format, List<String>> sound = new EnumMap<>(Format.class);

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
            sound.put(format, new ArrayList<>());
            told.put(format, new int[2]);
        }
        try (Stream<Path> files = Files.walk(samples)) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                if (file.toString().endsWith(".yaml")) {
                    sample(file);
                } else if (file.toString().endsWith(".csv")) {
                    of(Format.CSV).add(Files.readString(file));
                }
            }
        }
        for (int seed = 1; seed <= 12; seed++) {
            // read back, it has its kinds registered
            String text = ResolvedJson.write(FuzzDevices.of(seed));
            Path file = Files.writeString(folder.resolve("start.json"), text);
            DeviceFiles.read(file, Optional.empty(), FAMILIES).device().ifPresent(this::resolved);
        }
        for (int often = 0; often < 6; often++) {
            of(Format.CSV)
                    .add(
                            "joint,seat,x,y,clamped,behind\nlid-screw,c,1,2,\"1,5\",cell 2; board 3\nlid-screw,d,3,4,,\n");
        }
        of(Format.YAML).add(SEATED.replace("seatTable: seats.csv\n", ""));
        of(Format.STATE).add("released: [lid-screw, a/b]\nplaces: [[lid], [b, c]]\n");
        of(Format.PLAN)
                .add("[\"prepare:shut-down\", \"release:fan-plug/pull\", \"move:lid+hinge\"]");
        of(Format.JOB)
                .add(
                        "format: reseat-job/1\nid: j-7\nunit: \"7\"\ndevice: quill\nvariant: touch\ncycles: {fan-plug: 3}\n");
        of(Format.KNOWN)
                .add(
                        "format: reseat-known/1\nknown:\n- check: live\n  device: quill\n  subject: fan-plug\n  reason: it is so\n  until: 2027-01-01\n");
        of(Format.SOP).add(SOP);
        of(Format.UNITS)
                .addAll(
                        List.of(
                                "0.06 N·m",
                                "6 N.cm",
                                "8 ozf in",
                                "1.6 mm",
                                "0.1in",
                                "4.2 s",
                                "1.5 min",
                                "-1e3 µm"));
    }

    private List<String> of(Format format) {
        return sound.get(format);
    }

    private void sample(Path file) throws IOException {
        of(Format.YAML).add(Files.readString(file));
        Optional<Device> device = DeviceFiles.read(file, Optional.empty(), FAMILIES).device();
        device.ifPresent(this::resolved);
    }

    private void resolved(Device device) {
        String text = ResolvedJson.write(device);
        of(Format.RESOLVED).add(text);
        of(Format.JSON).add(text.replace("\"resolved\": true,", ""));
        if (device.joints().size() < 12) {
            PlanResult result = new Planner().plan(PlanRequest.of(device, new Goal.Teardown()));
            if (result instanceof PlanResult.Found found) {
                of(Format.PLAN).add(PlanJson.write(found.plan()));
            }
        }
    }

    /** Reads one input; the same number always means the same input. */
    void input(long number) throws Crash, IOException {
        Random random = new Random(number * 0x9E3779B97F4A7C15L ^ 0x5DEECE66DL);
        Format format = Format.values()[random.nextInt(Format.values().length)];
        List<String> texts = of(format);
        String start = texts.get(random.nextInt(texts.size()));
        String text = new Mutator(random).mutate(start, texts);
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(20) == 0 && bytes.length > 0) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        try {
            boolean refused = refused(format, bytes, text);
            told.get(format)[refused ? 1 : 0]++;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError | AssertionError e) {
            Path kept =
                    Path.of(
                            "target",
                            "fuzz",
                            number + "-" + format.name().toLowerCase(Locale.ROOT) + format.ending);
            Files.createDirectories(kept.getParent());
            Files.write(kept, bytes);
            throw new Crash(
                    "input "
                            + number
                            + ", kept as core/toolkit/"
                            + kept
                            + "; again with: mvn -o test -pl core/toolkit -am -Dtest=FuzzTest"
                            + " -Dsurefire.failIfNoSpecifiedTests=false -Dreseat.fuzz.inputs=1 -Dreseat.fuzz.seed="
                            + number,
                    e);
        }
    }

    private boolean refused(Format format, byte[] bytes, String text) throws IOException {
        Path file = folder.resolve("input" + format.ending);
        Files.write(file, bytes);
        return switch (format) {
            case YAML, JSON, RESOLVED -> device(file);
            case CSV -> {
                Files.write(folder.resolve("seats.csv"), bytes);
                yield device(Files.writeString(folder.resolve("seated.yaml"), SEATED));
            }
            case PLAN -> bad(() -> PlanFiles.readPlan(file));
            case STATE -> bad(() -> PlanFiles.readState(file));
            case JOB -> bad(() -> JobFiles.read(file));
            case KNOWN -> bad(() -> KnownFiles.read(file));
            case SOP -> {
                try {
                    SopFiles.read(file);
                    yield false;
                } catch (SopFormatException e) {
                    sentence(e.getMessage());
                    yield true;
                }
            }
            case UNITS -> units(text);
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
        for (int which = 0; which < 3; which++) {
            try {
                switch (which) {
                    case 0 -> Units.lengthMm(text);
                    case 1 -> Units.torqueNm(text);
                    default -> Units.timeMs(text);
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
