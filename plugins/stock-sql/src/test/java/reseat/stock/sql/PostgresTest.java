package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.stock.FillableStock;
import reseat.stock.Reservation;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.testkit.StockContract;
import reseat.testkit.StockLoad;

/** A real PostgreSQL server, which is stopped, killed and cut off at bad moments. */
class PostgresTest {

    private static final SqlStockSource SOURCE = new SqlStockSource();
    private static final int CLIENTS = 32;

    private static PostgresServer server;

    @TempDir private Path folder;

    @BeforeAll
    static void starts() throws Exception {
        Optional<Path> programs = PostgresServer.programs();
        Assumptions.assumeTrue(
                programs.isPresent(),
                "PostgreSQL is not installed: its tests are left out (Debian: apt-get install"
                        + " postgresql)");
        server = PostgresServer.start(programs.get());
    }

    @AfterAll
    static void stops() throws Exception {
        if (server != null) {
            server.end();
        }
    }

    @TestFactory
    Stream<DynamicTest> keepsTheContract() throws Exception {
        String url = server.database("contract");
        return StockContract.cases(new ServerShop(url)).stream()
                .map(each -> DynamicTest.dynamicTest(each.name(), each.body()::run));
    }

    /** Each stock in a schema of its own. */
    private static final class ServerShop implements StockContract.Shop {
        private final String url;
        private int number;

        ServerShop(String url) {
            this.url = url;
        }

        @Override
        public Stock fresh(List<StockItem> lines) throws StockException {
            number++;
            FillableStock stock = (FillableStock) again();
            stock.put(lines);
            return stock;
        }

        @Override
        public Stock again() throws StockException {
            return SOURCE.open(
                    Map.of("url", url, "user", "reseat", "schema", "shop" + number), Path.of(""));
        }
    }

    @Test
    void aShopWithItsOwnTablesMapsThem() throws Exception {
        String url = server.database("own");
        server.execute(url, SqlCases.SHOP_TABLES.toArray(String[]::new));
        SqlCases.ownTables(
                mapping -> {
                    Files.writeString(folder.resolve("mapping.yaml"), mapping);
                    return (SettlingStock) open(url, Map.of("mapping", "mapping.yaml"));
                });
    }

    @Test
    void aClerkWithoutTheRightToMakeTablesIsToldSo() throws Exception {
        String url = server.database("rights");
        server.execute(url, "drop role if exists clerk", "create role clerk login");
        StockException e =
                assertThrows(
                        StockException.class,
                        () -> SOURCE.open(Map.of("url", url, "user", "clerk"), folder));
        assertEquals(StockException.Kind.BAD_INPUT, e.kind());
        assertTrue(e.getMessage().contains("permission denied"), e.getMessage());

        open(url, Map.of()).close();
        server.execute(
                url,
                "grant usage on schema reseat to clerk",
                "grant select, insert, update on all tables in schema reseat to clerk");
        try (Stock stock = SOURCE.open(Map.of("url", url, "user", "clerk"), folder)) {
            assertEquals(List.of(), stock.items());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = CutProxy.Cut.class,
            names = {"BEFORE_COMMIT", "AFTER_COMMIT"})
    void aLineCutDuringCommitBooksOnce(CutProxy.Cut cut) throws Exception {
        filled("cut", 10).close();
        try (CutProxy proxy = new CutProxy(server.port());
                Stock stock = through(proxy, "10")) {
            proxy.cutNext(cut);
            Reservation made = stock.reserve(SqlCases.request("R1", "line-a", 3));
            assertEquals(Reservation.State.RESERVED, made.state());
            assertEquals(BigDecimal.valueOf(3), SqlCases.item(stock, "line-a").reserved());

            proxy.cutNext(cut);
            assertEquals(Reservation.State.USED, stock.use("R1").state());
            assertEquals(BigDecimal.valueOf(7), SqlCases.item(stock, "line-a").onHand());
            assertEquals(2, proxy.cuts());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = CutProxy.Cut.class,
            names = {"BEFORE_COMMIT", "AFTER_COMMIT"})
    void whoHasNoPatienceIsToldToRepeatWithTheSameId(CutProxy.Cut cut) throws Exception {
        filled("cut", 10).close();
        try (CutProxy proxy = new CutProxy(server.port());
                Stock stock = through(proxy, "0")) {
            proxy.cutNext(cut);
            StockException e =
                    assertThrows(
                            StockException.class,
                            () -> stock.reserve(SqlCases.request("R1", "line-a", 3)));
            assertEquals(StockException.Kind.UNREACHABLE, e.kind());
            assertTrue(
                    e.getMessage().endsWith("reserve it again with the same id \"R1\""),
                    e.getMessage());
            assertEquals(1, proxy.cuts());

            stock.reserve(SqlCases.request("R1", "line-a", 3));
            stock.reserve(SqlCases.request("R1", "line-a", 3));
            assertEquals(BigDecimal.valueOf(3), SqlCases.item(stock, "line-a").reserved());
            assertEquals(1, stock.open().size());
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void booksBalanceWhenTheServerDiesInMidRun(boolean kill) throws Exception {
        int onHand = 40;
        int each = 30;
        filled("load", onHand).close();
        String url = server.url("load");
        CountDownLatch middle = new CountDownLatch(1);
        Exception[] failed = {null};
        Thread power =
                new Thread(
                        () -> {
                            try {
                                middle.await();
                                if (kill) {
                                    server.kill();
                                } else {
                                    server.stopAtOnce();
                                }
                                server.restart();
                            } catch (Exception e) {
                                failed[0] = e;
                            }
                        });
        power.start();

        StockLoad.Report report =
                StockLoad.run(
                        () -> open(url, Map.of("connections", "1", "wait", "2")),
                        CLIENTS,
                        each,
                        kill ? 11 : 12,
                        done -> {
                            if (done == CLIENTS * each / 3) {
                                middle.countDown();
                            }
                        });

        power.join(TimeUnit.MINUTES.toMillis(2));
        assertEquals(null, failed[0]);
        assertEquals(CLIENTS * each, report.wishes());
        assertTrue(report.refused() > 0, "nobody was refused");
        try (Stock stock = open(url, Map.of("wait", "60"))) {
            assertEquals(List.of(), StockLoad.wrong(stock, onHand, report));
        }
    }

    @Test
    void aServerThatIsNotThereIsToldAsSuch() {
        StockException e =
                assertThrows(
                        StockException.class,
                        () ->
                                SOURCE.open(
                                        Map.of(
                                                "url",
                                                "jdbc:postgresql://127.0.0.1:1/shop?password=x",
                                                "user",
                                                "reseat",
                                                "wait",
                                                "0"),
                                        folder));
        assertEquals(StockException.Kind.UNREACHABLE, e.kind());
        assertTrue(e.getMessage().contains("jdbc:postgresql://127.0.0.1:1/shop could not"));
        assertTrue(!e.getMessage().contains("password"), e.getMessage());
    }

    private FillableStock filled(String database, int onHand) throws Exception {
        FillableStock stock = (FillableStock) open(server.database(database), Map.of());
        stock.put(StockLoad.lines(onHand));
        return stock;
    }

    /** prepareThreshold=0: each COMMIT is sent as that word, for the proxy to find. */
    private Stock through(CutProxy proxy, String wait) throws StockException {
        return open(
                "jdbc:postgresql://127.0.0.1:"
                        + proxy.port()
                        + "/cut?sslmode=disable&prepareThreshold=0",
                Map.of("wait", wait, "connections", "1"));
    }

    private Stock open(String url, Map<String, String> more) throws StockException {
        Map<String, String> settings = new HashMap<>(more);
        settings.put("url", url);
        settings.put("user", "reseat");
        return SOURCE.open(settings, folder);
    }
}
