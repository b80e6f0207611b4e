package reseat.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Starts a command as a whole process and an empty Java main, in turn, and compares the medians. Needs no build: {@code
 * java StartBench.java RUNS JAVA_HOME COMMAND...}. The command runs twice unmeasured, so that what it keeps for later
 * starts is there. A command that ends with findings needs {@code -Dbench.code=1} before the file.
 */
public final class StartBench {

    private StartBench() {}

    /**
     * Runs the bench.
     *
     * @param args number of runs, home of the Java to use, command line
     * @throws Exception when a process cannot be started or fails
     */
    public static void main(String[] args) throws Exception {
        int runs = Integer.parseInt(args[0]);
        Path java = Path.of(args[1], "bin", "java");
        List<String> command = List.of(args).subList(2, args.length);
        Path folder = Files.createTempDirectory("start-bench");
        Path source = folder.resolve("Empty.java");
        Files.writeString(source, "public class Empty { public static void main(String[] args) {} }");
        ms(args[1], List.of(Path.of(args[1], "bin", "javac").toString(), "-d", folder.toString(), source.toString()));
        List<String> empty = List.of(java.toString(), "-XX:+UseSerialGC", "-cp", folder.toString(), "Empty");
        for (int i = 0; i < 2; i++) {
            ms(args[1], empty);
            ms(args[1], command);
        }
        double[] bare = new double[runs];
        double[] ours = new double[runs];
        for (int i = 0; i < runs; i++) {
            bare[i] = ms(args[1], empty);
            ours[i] = ms(args[1], command);
        }
        System.out.printf(
                Locale.ROOT,
                "java %s: empty %.0f ms, command %.0f ms, ratio of medians %.2f, of the least %.2f: %s%n",
                args[1],
                median(bare),
                median(ours),
                median(ours) / median(bare),
                Arrays.stream(ours).min().orElseThrow() / Arrays.stream(bare).min().orElseThrow(),
                String.join(" ", command));
    }

    private static double ms(String home, List<String> words) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(words));
        builder.environment().put("JAVA_HOME", home);
        builder.redirectInput(Path.of("/dev/null").toFile());
        builder.redirectErrorStream(true);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        long from = System.nanoTime();
        int code = builder.start().waitFor();
        double ms = (System.nanoTime() - from) / 1e6;
        // Java itself ends with 1 when it cannot start, which is quick; findings have to be allowed by hand
        if (code > Integer.getInteger("bench.code", 0)) {
            throw new IOException(words + " ended with " + code);
        }
        return ms;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
