package reseat.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.testkit.DeviceShape;
import reseat.testkit.GeneratedDevice;

/**
 * Plans generated devices of rising size and prints a CSV row for each plan; then draws how time, gap and memory grow.
 *
 * <p>The planner's limit is time on the clock. Where the machine is busy a limit is stretched by the share of a
 * processor that the run before got, so that the planner has the work of the limit and not only its time; the rows tell
 * both.
 */
public final class GrowthBench {

    private static final int[] SIZES = {20, 50, 100, 200, 400};
    private static final int JOINTS_PER_PART = 3;
    private static final int SEEDS = 1;

    /** Shares of the limit that each plan is given in turn, until it is proved. */
    private static final double[] SHARES = {0.125, 1};
    private static final int TARGETS = 3;
    private static final double SINGLE_SECONDS = 2;
    private static final double TEARDOWN_SECONDS = 10;
    private static final double WANTED_GAP = 0.02;

    private final PrintStream out;
    private double stretch = 1;

    private GrowthBench(PrintStream out) {
        this.out = out;
    }

    private record Row(int parts, boolean teardown, double gap, double wantedMs, double mb) {}

    private record Run(PlanResult result, double ms, double cpuMs, double mb) {
        double gap() {
            return result instanceof PlanResult.Found found ? found.plan().gap() : 1;
        }
    }

    /**
     * Runs the bench.
     *
     * @param args the picture to write; then, if wanted, the sizes
     * @throws IOException when the picture cannot be written
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length < 1) {
            out.println("usage: GrowthBench PICTURE [PARTS...]");
            return;
        }
        List<Integer> sizes = new ArrayList<>();
        for (int k = 1; k < args.length; k++) {
            sizes.add(Integer.parseInt(args[k]));
        }
        if (sizes.isEmpty()) {
            for (int size : SIZES) {
                sizes.add(size);
            }
        }
        new GrowthBench(out).run(sizes, Path.of(args[0]));
    }

    private void run(List<Integer> sizes, Path picture) throws IOException {
        Device warm = device(100, 99);
        plan(warm, new Goal.Free(List.of("p40")), SINGLE_SECONDS);
        plan(warm, new Goal.Teardown(), SINGLE_SECONDS);
        out.println("parts,joints,seed,goal,cost_ms,bound_ms,proved,gap_percent,ms,processor_ms,"
                + "processor_ms_to_2_percent,expansions,peak_mb");
        List<Row> rows = new ArrayList<>();
        for (int parts : sizes) {
            for (long seed = 1; seed <= SEEDS; seed++) {
                Device device = device(parts, seed);
                for (int k = 0; k < TARGETS; k++) {
                    // spread over the device: the first parts are the deepest
                    String target = "p" + (int) (1 + (k + 0.5) * (parts - 1) / TARGETS);
                    rows.add(row(parts, seed, device, new Goal.Free(List.of(target)), SINGLE_SECONDS));
                }
                rows.add(row(parts, seed, device, new Goal.Teardown(), TEARDOWN_SECONDS));
            }
        }
        Files.writeString(picture, new Picture(sizes, rows).svg());
    }

    private static Device device(int parts, long seed) {
        return GeneratedDevice.of(DeviceShape.NOTEBOOK.sized(parts, JOINTS_PER_PART * parts), seed);
    }

    private Row row(int parts, long seed, Device device, Goal goal, double seconds) {
        Run last = null;
        double wantedMs = Double.NaN;
        for (double share : SHARES) {
            last = plan(device, goal, share * seconds);
            if (Double.isNaN(wantedMs) && last.gap() <= WANTED_GAP) {
                wantedMs = last.cpuMs();
            }
            if (last.gap() == 0) {
                break;
            }
        }
        String name = goal instanceof Goal.Free free ? "free " + free.targets().get(0) : "teardown";
        String head = parts + "," + JOINTS_PER_PART * parts + "," + seed + "," + name + ",";
        if (last != null && last.result() instanceof PlanResult.Found found) {
            var plan = found.plan();
            out.println(head + String.format(
                    Locale.ROOT,
                    "%d,%d,%b,%.2f,%.0f,%.0f,%.0f,%d,%.0f",
                    plan.totalMs(),
                    plan.lowerBoundMs(),
                    plan.proved(),
                    100 * plan.gap(),
                    last.ms(),
                    last.cpuMs(),
                    wantedMs,
                    plan.expansions(),
                    last.mb()));
            return new Row(parts, goal instanceof Goal.Teardown, plan.gap(), wantedMs, last.mb());
        }
        out.println(head + "none");
        return new Row(parts, goal instanceof Goal.Teardown, 1, wantedMs, 0);
    }

    private Run plan(Device device, Goal goal, double seconds) {
        System.gc();
        pools().forEach(MemoryPoolMXBean::resetPeakUsage);
        Effort effort = Effort.ofTime(Duration.ofMillis(Math.round(1000 * seconds * stretch)));
        long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long begun = System.nanoTime();
        PlanResult result = new Planner().plan(PlanRequest.of(device, goal).with(effort));
        double ms = (System.nanoTime() - begun) / 1e6;
        double cpuMs = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6;
        if (ms > 50) {
            stretch = Math.max(1, ms / Math.max(1, cpuMs));
        }
        double mb = pools().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / 1e6;
        return new Run(result, ms, cpuMs, mb);
    }

    private static List<MemoryPoolMXBean> pools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }

    /** Three panels over the number of parts: time to the wanted gap, gap at the limit, memory. */
    private static final class Picture {
        private static final int WIDTH = 960;
        private static final int HEIGHT = 352;
        private static final int PANEL = 250;
        private static final int TOP = 92;
        private static final int PLOT = 220;
        private static final String INK = "#26323d";
        private static final String FAINT = "#dfe4e8";
        private static final String SINGLE = "#1f6f8b";
        private static final String FULL = "#b5541c";

        private final StringBuilder svg = new StringBuilder();
        private final List<Integer> sizes;
        private final List<Row> rows;

        Picture(List<Integer> sizes, List<Row> rows) {
            this.sizes = sizes;
            this.rows = rows;
        }

        String svg() {
            line("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\""
                    + " font-family=\"sans-serif\" font-size=\"12\" fill=\"%s\">", WIDTH, HEIGHT, WIDTH, HEIGHT, INK);
            line("<title>How planning grows with the device</title>");
            line("<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
            line("<text x=\"56\" y=\"28\" font-size=\"16\" font-weight=\"bold\">Planning generated devices, 3 joints for"
                    + " each part</text>");
            legend(56, SINGLE, "one target, 2 s");
            legend(206, FULL, "full teardown, 10 s");
            line("<text x=\"380\" y=\"52\">thick: middle of the runs, thin: worst of the runs</text>");
            panel(56, "s of processor to 2 % (top: not reached)", new double[] {0.01, 0.1, 1, 10}, true, Double.NaN,
                    row -> Double.isNaN(row.wantedMs()) ? 20 : Math.max(0.01, row.wantedMs() / 1000));
            panel(376, "gap when the time is up (%)", new double[] {0, 1, 2, 3, 4, 5}, false, 2,
                    row -> 100 * row.gap());
            panel(696, "peak of the heap (MB)", new double[] {0, 128, 256, 384, 512}, false, 512, Row::mb);
            line("</svg>");
            return svg.toString();
        }

        private void line(String format, Object... values) {
            svg.append(String.format(Locale.ROOT, format, values)).append('\n');
        }

        private void legend(int x, String colour, String text) {
            line("<line x1=\"%d\" y1=\"48\" x2=\"%d\" y2=\"48\" stroke=\"%s\" stroke-width=\"3\"/>", x, x + 24, colour);
            line("<text x=\"%d\" y=\"52\">%s</text>", x + 30, text);
        }

        private void panel(int left, String title, double[] marks, boolean log, double wanted,
                ToDoubleFunction<Row> value) {
            double low = marks[0];
            double high = marks[marks.length - 1] * (log ? 2.2 : 1);
            line("<text x=\"%d\" y=\"%d\" font-weight=\"bold\">%s</text>", left, TOP - 12, title);
            for (double mark : marks) {
                double y = y(mark, low, high, log);
                boolean is = mark == wanted;
                line("<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"%s\"%s/>", left, y, left + PANEL, y,
                        is ? INK : FAINT, is ? " stroke-dasharray=\"4 3\"" : "");
                line("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>", left - 6, y + 4, number(mark));
            }
            int last = sizes.get(sizes.size() - 1);
            for (int mark = 0; mark <= last; mark += 100) {
                double x = x(left, mark);
                line("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d</text>", x, TOP + PLOT + 18, mark);
            }
            line("<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">parts</text>", left + PANEL / 2, TOP + PLOT + 38);
            for (boolean teardown : new boolean[] {false, true}) {
                for (boolean worst : new boolean[] {true, false}) {
                    curve(left, teardown, worst, value, low, high, log);
                }
            }
        }

        private void curve(int left, boolean teardown, boolean worst, ToDoubleFunction<Row> value, double low,
                double high, boolean log) {
            StringBuilder points = new StringBuilder();
            String colour = teardown ? FULL : SINGLE;
            for (int size : sizes) {
                double[] of = rows.stream()
                        .filter(row -> row.parts() == size && row.teardown() == teardown)
                        .mapToDouble(value)
                        .sorted()
                        .toArray();
                double v = of[worst ? of.length - 1 : of.length / 2];
                double x = x(left, size);
                double y = y(Math.min(v, high), low, high, log);
                points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y));
                if (!worst) {
                    line("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\"/>", x, y, colour);
                }
            }
            line("<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"/>", points.toString().trim(),
                    colour, worst ? "0.8" : "2.4");
        }

        private double x(int left, int parts) {
            return left + PANEL * (double) parts / sizes.get(sizes.size() - 1);
        }

        private static double y(double v, double low, double high, boolean log) {
            double share = log ? Math.log(v / low) / Math.log(high / low) : (v - low) / (high - low);
            return TOP + PLOT * (1 - share);
        }

        private static String number(double v) {
            return v == Math.rint(v) ? Long.toString((long) v) : Double.toString(v);
        }
    }
}
