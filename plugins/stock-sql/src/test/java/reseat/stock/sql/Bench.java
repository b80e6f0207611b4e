package reseat.stock.sql;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** A program of its own that reserves from a database in a file until somebody kills it. */
final class Bench implements AutoCloseable {

    private final Process process;
    private final BufferedReader out;

    private Bench(Process process) {
        this.process = process;
        this.out = process.inputReader();
    }

    public static void main(String[] args) throws StockException {
        try (Stock stock = new SqlStockSource().open(Map.of("file", args[1]), Path.of(args[0]))) {
            for (int n = 0; n < 100_000; n++) {
                stock.reserve(SqlCases.request("R" + n, "line-a", 1));
                System.out.println("R" + n);
                System.out.flush();
            }
        }
    }

    static Bench start(Path folder, String name) throws IOException {
        return new Bench(
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                classPath(),
                                Bench.class.getName(),
                                folder.toString(),
                                name)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start());
    }

    /** Returns the next promise it made. */
    String next() throws IOException {
        return String.valueOf(out.readLine());
    }

    /** Lets it make so many promises, kills it in the middle of the next, returns all it made. */
    static List<String> killed(Path folder, String name, int count) throws Exception {
        List<String> promised = new ArrayList<>();
        try (Bench bench = start(folder, name)) {
            for (int n = 0; n < count; n++) {
                promised.add(bench.next());
            }
            bench.process.destroyForcibly().waitFor();
            // what it had said before it died counts as well
            bench.out.lines().filter(line -> line.matches("R[0-9]+")).forEach(promised::add);
        } catch (java.io.UncheckedIOException e) {
            return promised;
        }
        return promised;
    }

    private static String classPath() {
        return Stream.concat(
                        Stream.of("target/classes", "target/test-classes")
                                .map(each -> Path.of(each).toAbsolutePath().toString()),
                        Stream.of("java.class.path", "jdk.module.path")
                                .map(name -> System.getProperty(name, ""))
                                .flatMap(path -> Stream.of(path.split(File.pathSeparator)))
                                .filter(path -> !path.isEmpty()))
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Override
    public void close() {
        process.destroyForcibly().onExit().join();
    }
}
