package reseat.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.internal.order.Limits;
import reseat.internal.order.OrderProblem;
import reseat.internal.order.OrderResult;
import reseat.internal.order.OrderSolver;
import reseat.internal.order.SopFiles;
import reseat.plan.Effort;
import reseat.plan.Watch;

/** Orders all published instances in a folder and prints one CSV row for each. */
public final class OrderBench {

    private OrderBench() {}

    /**
     * Runs the bench.
     *
     * @param args a folder of .sop files (or one such file), and seconds for each; then, if wanted, an effort limit in
     *     expansions that takes the place of the clock
     * @throws IOException when the folder cannot be read
     */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length < 2) {
            out.println("usage: OrderBench FOLDER SECONDS [EXPANSIONS]");
            return;
        }
        Effort limit = args.length > 2
                ? Effort.ofExpansions(Long.parseLong(args[2]))
                : Effort.ofTime(Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[1]))));
        out.println("instance,nodes,cost,lower_bound,proved,seconds,order");
        for (Path file : instances(Path.of(args[0]))) {
            try {
                out.println(row(file, limit));
            } catch (IOException e) {
                System.err.println(e.getMessage());
            }
        }
    }

    private static List<Path> instances(Path folder) throws IOException {
        if (Files.isRegularFile(folder)) {
            return List.of(folder);
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".sop")).sorted().toList();
        }
    }

    private static String row(Path file, Effort limit) throws IOException {
        OrderProblem problem = SopFiles.read(file);
        long begun = System.nanoTime();
        OrderResult result = OrderSolver.solve(problem, new Limits(limit, Watch.NONE));
        double seconds = (System.nanoTime() - begun) / 1e9;
        if (problem.costOf(result.order()) != result.cost()) {
            throw new IllegalStateException(file + ": the order does not cost what was said");
        }
        String name = file.getFileName().toString().replaceAll("\\.sop$", "");
        String order = result.order().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return String.format(
                Locale.ROOT,
                "%s,%d,%d,%d,%b,%.2f,%s",
                name,
                problem.size(),
                result.cost(),
                result.lowerBound(),
                result.proved(),
                seconds,
                order);
    }
}
