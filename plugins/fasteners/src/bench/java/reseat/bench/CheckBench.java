package reseat.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import reseat.console.check.CheckReport;
import reseat.console.check.CheckRunner;
import reseat.console.check.CheckWatch;
import reseat.fasteners.FastenersPlugin;
import reseat.files.DeviceFiles;
import reseat.files.DeviceSource;
import reseat.files.ResolvedJson;
import reseat.model.Bond;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Point;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.testkit.DeviceShape;
import reseat.testkit.GeneratedDevice;

/**
 * Runs the checks of fasteners over generated devices in files, with one thread and with two, and sets that against merely
 * reading the files. Generated devices have bare joints; here 60 of 100 become screws in seats of five types, with the
 * facts a shop measures, and 4 become bonds with a shape, or the checks would have nothing to look at.
 */
public final class CheckBench {

    private static final int ROUNDS = 3;

    private final PrintStream out;
    private final List<Path> files;

    private CheckBench(PrintStream out, List<Path> files) {
        this.out = out;
        this.files = files;
    }

    /**
     * Runs the bench.
     *
     * @param args number of devices, and json or yaml; both if left out
     * @throws IOException when the devices cannot be written
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        int count = Integer.parseInt(args[0]);
        List<Device> devices = generated(count);
        if (args.length > 1 && args[1].startsWith("write=")) {
            Path folder = Files.createDirectories(Path.of(args[1].substring("write=".length())));
            for (int i = 0; i < count; i++) {
                Files.writeString(folder.resolve("d" + i + ".json"), ResolvedJson.write(devices.get(i)));
            }
            return;
        }
        for (String form : args.length > 1 ? List.of(args[1]) : List.of("json", "yaml")) {
            Path folder = Files.createTempDirectory("reseat-bench");
            try {
                List<Path> files = new ArrayList<>();
                long bytes = 0;
                for (int i = 0; i < count; i++) {
                    // JSON after a comment is YAML to the reader
                    String text = (form.equals("yaml") ? "# generated\n" : "") + ResolvedJson.write(devices.get(i));
                    bytes += text.length();
                    files.add(Files.writeString(folder.resolve("d" + i + "." + form), text));
                }
                out.printf(Locale.ROOT, "# %s: %d devices of 100 joints, %d KB each%n", form, count, bytes / count / 1024);
                new CheckBench(out, files).run();
            } finally {
                delete(folder);
            }
        }
    }

    private void run() {
        double[] read = new double[ROUNDS];
        double[] one = new double[ROUNDS];
        double[] two = new double[ROUNDS];
        double[] readTwo = new double[ROUNDS];
        double[] cpu = new double[ROUNDS];
        double heap = 0;
        long findings = 0;
        for (int round = -1; round < ROUNDS; round++) {
            double before = processor();
            double r = seconds(this::readAll);
            double between = processor();
            double a = seconds(() -> check(1, true));
            double after = processor();
            peaks(true);
            CheckReport[] report = new CheckReport[1];
            double b = seconds(() -> report[0] = check(2, true));
            double mb = peaks(false);
            double c = seconds(() -> check(2, false));
            findings = report[0].found().count();
            if (report[0].failures().findAny().isPresent() || !report[0].sound()) {
                throw new IllegalStateException("a check failed: " + report[0].failures().findFirst());
            }
            out.printf(
                    Locale.ROOT,
                    "%s,read %.2f s (processor %.2f),1 thread %.2f s (processor %.2f),2 threads %.2f s,read with 2 threads"
                            + " %.2f s,peak heap %.0f MB%n",
                    round < 0 ? "warm-up" : "round " + (round + 1),
                    r,
                    between - before,
                    a,
                    after - between,
                    b,
                    c,
                    mb);
            if (round >= 0) {
                read[round] = r;
                one[round] = a;
                cpu[round] = (after - between) / (between - before);
                two[round] = b;
                readTwo[round] = c;
                heap = Math.max(heap, mb);
            }
        }
        double r = median(read);
        double a = median(one);
        double b = median(two);
        out.printf(
                Locale.ROOT,
                "medians: read %.0f devices/s; checked %.0f devices/s with 1 thread, %.0f with 2; speed-up %.2f"
                        + " (merely reading %.2f); time to reading %.2f (processor time %.2f); peak heap %.0f MB, peak resident %.0f MB; findings %d%n",
                files.size() / r,
                files.size() / a,
                files.size() / b,
                a / b,
                r / median(readTwo),
                a / r,
                median(cpu),
                heap,
                resident(),
                findings);
    }

    private void readAll() {
        for (Path file : files) {
            if (DeviceFiles.read(file, Optional.empty(), List.of()).device().isEmpty()) {
                throw new IllegalStateException(file + " cannot be read");
            }
        }
    }

    private CheckReport check(int threads, boolean checks) {
        return new CheckRunner(checks ? new FastenersPlugin().checks() : List.of(), threads, CheckWatch.NONE)
                .run(files.stream().map(file -> DeviceSource.of(file, List.of())).toList());
    }

    private static double seconds(Runnable what) {
        long begun = System.nanoTime();
        what.run();
        return (System.nanoTime() - begun) / 1e9;
    }

    /** Processor time of all threads of this process; other loads do not count in it. */
    private static double processor() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / 1e9;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static double peaks(boolean reset) {
        double mb = 0;
        if (reset) {
            System.gc();
        }
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
            if (pool.getType() == MemoryType.HEAP) {
                mb += pool.getPeakUsage().getUsed() / 1048576.0;
                if (reset) {
                    pool.resetPeakUsage();
                }
            }
        }
        return mb;
    }

    /** Peak of the whole process as Linux counts it, with the Java machine itself; NaN elsewhere. */
    private static double resident() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/self/status"))) {
            return lines.filter(line -> line.startsWith("VmHWM"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
                    .findFirst()
                    .orElse(Double.NaN);
        } catch (IOException e) {
            return Double.NaN;
        }
    }

    private static List<Device> generated(int count) {
        DeviceShape hundred = DeviceShape.NOTEBOOK.sized(30, 100);
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            devices.add(dressed(GeneratedDevice.of(hundred, i), new Random(i)));
        }
        return devices;
    }

    private static Device dressed(Device bare, Random random) {
        return Device.build(
                bare.id(),
                facts -> {
                    facts.name(bare.name()).base(bare.base()).hand(bare.hand()).usualPosture(bare.usualPosture());
                    facts.setup(bare.setup());
                    for (Kind.Scope scope : Kind.Scope.values()) {
                        bare.kinds(scope).values().forEach(facts::add);
                    }
                    bare.supplies().values().forEach(facts::add);
                    bare.tools().values().forEach(facts::add);
                    bare.parts().values().forEach(facts::add);
                    for (int k = 0; k < 5; k++) {
                        facts.add(type(k));
                    }
                    int n = 0;
                    for (Joint joint : bare.joints().values()) {
                        facts.add(dressed(joint, n++, random));
                    }
                });
    }

    private static ScrewType type(int k) {
        return new ScrewType(
                "type-" + k,
                List.of("M2x0.4", "M1.6x0.35", "M2x0.4", "M1.4x0.3", "M2x0.4").get(k),
                List.of(4.0, 3.0, 6.0, 2.5, 8.0).get(k),
                OptionalDouble.empty(),
                "pan",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of("PH0", "PH00", "T5", "PH00", "PH0").get(k),
                Optional.of("8.8"),
                k % 2 == 0 ? "black" : "plain",
                false,
                Optional.empty());
    }

    private static Joint dressed(Joint bare, int n, Random random) {
        Optional<Seat> seat = n % 10 < 6 ? Optional.of(seat(bare, n % 5, random)) : Optional.empty();
        Optional<Bond> bond = n % 25 == 7 ? Optional.of(bond(random)) : Optional.empty();
        return new Joint(
                bare.id(),
                bare.name(),
                bare.kind(),
                bare.holds(),
                bare.under(),
                bare.slack(),
                bare.needs().orElse(List.of()),
                bare.cuts(),
                bare.ways(),
                seat,
                bond,
                bare.madeCycles());
    }

    private static Seat seat(Joint joint, int type, Random random) {
        double length = type(type).lengthMm();
        double clamped = Math.round(length * 3) / 10.0;
        // one in ten lacks a little depth
        double threaded = Math.round(10 * (length - clamped + (random.nextInt(10) == 0 ? -0.2 : 0.3))) / 10.0;
        boolean behind = random.nextInt(8) == 0;
        return new Seat(
                "type-" + type,
                Optional.of(new Point(random.nextInt(200), random.nextInt(140))),
                Seat.Form.TAPPED,
                Optional.empty(),
                Optional.of("magnesium"),
                OptionalDouble.of(clamped),
                OptionalDouble.of(threaded),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                behind ? List.of(new Seat.Behind(joint.holds().get(0), 0.5)) : List.of(),
                random.nextInt(5) == 0 ? OptionalDouble.empty() : OptionalDouble.of(0.1),
                "bench card 3: 0.1 N·m",
                OptionalInt.empty(),
                0);
    }

    private static Bond bond(Random random) {
        double at = 40 + random.nextInt(80);
        return new Bond(
                List.of(new Point(0, 0), new Point(200, 0), new Point(200, 140), new Point(0, 140)),
                List.of(
                        new Bond.Strip("low", List.of(new Point(5, 3), new Point(195, 3)), 4),
                        new Bond.Strip("high", List.of(new Point(5, 137), new Point(195, 137)), 4)),
                List.of(
                        new Bond.KeepOut(
                                "flex",
                                "base",
                                List.of(
                                        new Point(at, 7),
                                        new Point(at + 10, 7),
                                        new Point(at + 10, 20),
                                        new Point(at, 20)))),
                0.5,
                OptionalDouble.empty(),
                List.of(new Bond.GivenDepth(0, 6)));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
