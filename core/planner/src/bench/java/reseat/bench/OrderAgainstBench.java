package reseat.bench;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import reseat.internal.order.Limits;
import reseat.internal.order.OrderProblem;
import reseat.internal.order.OrderResult;
import reseat.internal.order.OrderSolver;
import reseat.internal.order.SopFiles;
import reseat.plan.Effort;
import reseat.plan.Watch;

/**
 * Orders all instances of a folder and has another program order them too, in turn and several times, so that both
 * meet the same machine. Prints one CSV row for each instance: the medians, and ours as a ratio to theirs.
 *
 * <p>The other program is a command that is given a file as its last word and prints, as its last line, CSV whose
 * seventh and eighth cells are cost and lower bound, as {@code ../shared/bench/cpsat/run.sh} does.
 */
public final class OrderAgainstBench {

    private static final int COST = 6;
    private static final int BOUND = 7;

    private OrderAgainstBench() {}

    private record Run(long cost, long bound, double seconds) {

        boolean proved() {
            return bound >= cost;
        }
    }

    /**
     * Runs the bench.
     *
     * @param args a folder of .sop files, seconds for each of ours, number of runs, and the other's command
     * @throws Exception when the folder cannot be read or the other program fails
     */
    public static void main(String[] args) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Path folder = Path.of(args[0]);
        long ms = Math.round(1000 * Double.parseDouble(args[1]));
        int runs = Integer.parseInt(args[2]);
        List<String> command = List.of(args).subList(3, args.length);
        if (!Files.isDirectory(folder) || !new File(command.get(1)).isFile()) {
            out.println("left out: there is no " + folder + " or no " + command.get(1));
            return;
        }
        out.println("instance,nodes,density,cost,lower_bound,proved,seconds,"
                + "other_cost,other_lower_bound,other_proved,other_seconds,cost_ratio");
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".sop")).sorted().toList()) {
                out.println(row(file, ms, runs, command));
            }
        }
    }

    private static String row(Path file, long ms, int runs, List<String> command) throws Exception {
        OrderProblem problem = SopFiles.read(file);
        List<Run> ours = new ArrayList<>();
        List<Run> theirs = new ArrayList<>();
        for (int i = 0; i < runs; i++) {
            ours.add(ours(problem, ms));
            theirs.add(theirs(file, command));
        }
        Run our = median(ours);
        Run their = median(theirs);
        return String.format(
                Locale.ROOT,
                "%s,%d,%.2f,%d,%d,%b,%.2f,%d,%d,%b,%.2f,%.4f",
                file.getFileName().toString().replaceAll("\\.sop$", ""),
                problem.size(),
                problem.density(),
                our.cost(),
                our.bound(),
                our.proved(),
                our.seconds(),
                their.cost(),
                their.bound(),
                their.proved(),
                their.seconds(),
                (double) our.cost() / their.cost());
    }

    private static Run median(List<Run> runs) {
        return runs.stream()
                .sorted(Comparator.comparingLong(Run::cost).thenComparing(Run::seconds))
                .toList()
                .get(runs.size() / 2);
    }

    private static Run ours(OrderProblem problem, long ms) {
        long begun = System.nanoTime();
        OrderResult result = OrderSolver.solve(problem, new Limits(Effort.ofTime(Duration.ofMillis(ms)), Watch.NONE));
        double seconds = (System.nanoTime() - begun) / 1e9;
        if (problem.costOf(result.order()) != result.cost()) {
            throw new IllegalStateException("the order does not cost what was said");
        }
        return new Run(result.cost(), result.lowerBound(), seconds);
    }

    private static Run theirs(Path file, List<String> command) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(command);
        words.add(file.toString());
        long begun = System.nanoTime();
        Process process = new ProcessBuilder(words)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        double seconds = (System.nanoTime() - begun) / 1e9;
        String[] lines = said.strip().split("\n");
        String[] cells = lines[lines.length - 1].split(",");
        if (cells.length <= BOUND) {
            throw new IOException(String.join(" ", words) + " said: " + said);
        }
        return new Run(Long.parseLong(cells[COST]), Long.parseLong(cells[BOUND]), seconds);
    }
}
