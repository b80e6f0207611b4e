package reseat.stock.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.testkit.StockContract;

/** Several programs at one spreadsheet, some of them killed in the middle. */
class ProcessesTest {

    @TempDir private Path folder;

    @Test
    void programsAtOnceNeverGetMoreThanThereIs() throws Exception {
        CsvShop shop = new CsvShop(folder);
        try (Stock stock = shop.fresh(StockContract.lines())) {
            List<Process> benches =
                    List.of(start(shop, "p", 20), start(shop, "q", 20), start(shop, "r", 20));
            Set<String> promised = new TreeSet<>();
            for (Process bench : benches) {
                List<String> lines = lines(bench);
                assertEquals(0, bench.waitFor());
                assertEquals(20, lines.size());
                lines.stream().filter(line -> !line.equals("short")).forEach(promised::add);
            }

            assertEquals(40, promised.size());
            assertEquals(promised, open(stock));
            assertEquals(
                    BigDecimal.ZERO,
                    CsvStockTest.item(stock, "B1").available().stripTrailingZeros());
        }
    }

    @Test
    void whatWasPromisedOutlivesAKill() throws Exception {
        CsvShop shop = new CsvShop(folder);
        try (Stock stock = shop.fresh(CsvStockTest.with(StockContract.lines(), "B1", 100_000))) {
            Set<String> promised = new TreeSet<>();
            for (int round = 0; round < 3; round++) {
                Process bench = start(shop, "k" + round, 100_000);
                try (BufferedReader out = bench.inputReader()) {
                    for (int n = 0; n < 30 + 11 * round; n++) {
                        promised.add(String.valueOf(out.readLine()));
                    }
                    bench.destroyForcibly().waitFor();
                    // what it had said before it died counts as well
                    out.lines().filter(line -> line.matches("k.-[0-9]+")).forEach(promised::add);
                } catch (IOException | java.io.UncheckedIOException e) {
                    bench.destroyForcibly();
                }
            }

            Set<String> open = open(stock);
            assertTrue(open.containsAll(promised), "a promise was lost");
            assertTrue(open.size() <= promised.size() + 3, "one wish each may not have been told");
            assertEquals(
                    BigDecimal.valueOf(open.size()), CsvStockTest.item(stock, "B1").reserved());
            for (Reservation each : List.copyOf(stock.open())) {
                assertEquals(each, stock.reserve(each.request()));
            }
        }
    }

    private static Set<String> open(Stock stock) throws Exception {
        return stock.open().stream()
                .map(Reservation::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> lines(Process bench) throws IOException {
        try (BufferedReader out = bench.inputReader()) {
            return out.lines().toList();
        }
    }

    private static Process start(CsvShop shop, String name, int count) throws IOException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                classPath(),
                                ReservingProgram.class.getName(),
                                shop.folder().toString(),
                                name,
                                String.valueOf(count)));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    /** Everything that these tests run with, modules or not. */
    private static String classPath() {
        return Stream.of("java.class.path", "jdk.module.path")
                        .map(name -> System.getProperty(name, ""))
                        .flatMap(path -> Stream.of(path.split(File.pathSeparator)))
                        .filter(path -> !path.isEmpty())
                        .collect(Collectors.joining(File.pathSeparator))
                + File.pathSeparator
                + Path.of("target/classes").toAbsolutePath()
                + File.pathSeparator
                + Path.of("target/test-classes").toAbsolutePath();
    }
}
