package reseat.stock.sql;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import reseat.stock.FillableStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.testkit.StockLoad;

/**
 * 32 clients that make 10,000 reservations and more, on each of the two databases, and on
 * PostgreSQL with a server that is killed in mid-run. core/docs/measurements.md has the command.
 */
final class LoadBench {

    private static final int CLIENTS = 32;
    private static final int EACH = 375;
    private static final int ON_HAND = 1460;

    private LoadBench() {}

    public static void main(String[] args) throws Exception {
        System.out.printf(
                Locale.ROOT,
                "Java %s, %d processors%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors());
        Path folder = Files.createTempDirectory("reseat-load");
        Map<String, String> file = Map.of("file", "load", "wait", "60");
        fill(file, folder);
        try (Stock shared = new SqlStockSource().open(file, folder)) {
            run("SQLite, 32 threads of one program", () -> unclosed(shared), n -> {}, shared);
        }
        Map<String, String> each = Map.of("file", "each", "wait", "60", "connections", "1");
        fill(each, folder);
        try (Stock keeper = new SqlStockSource().open(each, folder)) {
            StockLoad.Opener opener = () -> new SqlStockSource().open(each, folder);
            run("SQLite, 32 clients with a connection each", opener, n -> {}, keeper);
        }
        PostgresServer server = PostgresServer.start(PostgresServer.programs().orElseThrow());
        try {
            onServer(server, folder, false);
            onServer(server, folder, true);
        } finally {
            server.end();
        }
    }

    private static void onServer(PostgresServer server, Path folder, boolean kill)
            throws Exception {
        Map<String, String> settings = new HashMap<>();
        settings.put("url", server.database("load"));
        settings.put("user", "reseat");
        settings.put("connections", "1");
        fill(settings, folder);
        CountDownLatch middle = new CountDownLatch(1);
        AtomicLong away = new AtomicLong();
        Thread power =
                new Thread(
                        () -> {
                            try {
                                middle.await();
                                long start = System.nanoTime();
                                server.kill();
                                server.restart();
                                away.set(System.nanoTime() - start);
                            } catch (Exception e) {
                                throw new IllegalStateException(e);
                            }
                        });
        power.setDaemon(true);
        if (kill) {
            power.start();
        }
        try (Stock keeper = new SqlStockSource().open(settings, folder)) {
            run(
                    "PostgreSQL, 32 clients" + (kill ? ", server killed in mid-run" : ""),
                    () -> new SqlStockSource().open(settings, folder),
                    n -> {
                        if (n == CLIENTS * EACH / 2) {
                            middle.countDown();
                        }
                    },
                    keeper);
        }
        if (kill) {
            System.out.printf(Locale.ROOT, "  server away for %.1f s%n", away.get() / 1e9);
        }
    }

    private static void run(
            String name,
            StockLoad.Opener opener,
            java.util.function.IntConsumer progress,
            Stock keeper)
            throws InterruptedException, StockException {
        StockLoad.Report report = StockLoad.run(opener, CLIENTS, EACH, 42, progress);
        List<String> wrong = StockLoad.wrong(keeper, ON_HAND, report);
        System.out.printf(
                Locale.ROOT,
                "%s: %d wishes in %.1f s (%.0f a second), %d reserved, %d refused, %d calls"
                        + " repeated by clients; books: %s%n",
                name,
                report.wishes(),
                report.nanos() / 1e9,
                report.wishes() * 1e9 / report.nanos(),
                report.told().size(),
                report.refused(),
                report.repeated(),
                wrong.isEmpty() ? "balance" : "WRONG " + wrong);
    }

    private static void fill(Map<String, String> settings, Path folder) throws StockException {
        try (Stock stock = new SqlStockSource().open(settings, folder)) {
            ((FillableStock) stock).put(StockLoad.lines(ON_HAND));
        }
    }

    /** The same stock for everybody; a client that closes it does not close it for the others. */
    private static Stock unclosed(Stock stock) {
        return (Stock)
                java.lang.reflect.Proxy.newProxyInstance(
                        Stock.class.getClassLoader(),
                        new Class<?>[] {Stock.class},
                        (proxy, method, words) -> {
                            if (method.getName().equals("close")) {
                                return null;
                            }
                            try {
                                return method.invoke(stock, words);
                            } catch (java.lang.reflect.InvocationTargetException e) {
                                throw e.getCause();
                            }
                        });
    }
}
