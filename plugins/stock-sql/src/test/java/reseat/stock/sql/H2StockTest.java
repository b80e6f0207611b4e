package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import reseat.stock.FillableStock;
import reseat.stock.Reservation;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.testkit.StockContract;
import reseat.testkit.StockLoad;

/** The database in one file. */
class H2StockTest {

    private static final SqlStockSource SOURCE = new SqlStockSource();

    @TempDir private Path folder;

    @TestFactory
    Stream<DynamicTest> keepsTheContract() {
        return StockContract.cases(new FileShop()).stream()
                .map(each -> DynamicTest.dynamicTest(each.name(), each.body()::run));
    }

    private final class FileShop implements StockContract.Shop {
        private int number;

        @Override
        public Stock fresh(List<StockItem> lines) throws StockException {
            number++;
            FillableStock stock = (FillableStock) again();
            stock.put(lines);
            return stock;
        }

        @Override
        public Stock again() throws StockException {
            return SOURCE.open(Map.of("file", "shop" + number), folder);
        }
    }

    @Test
    void isOneFile() throws Exception {
        try (Stock stock = SOURCE.open(Map.of("file", "new/shop"), folder)) {
            assertEquals(List.of(), stock.items());
        }
        try (Stream<Path> files = Files.list(folder.resolve("new"))) {
            assertEquals(
                    List.of("shop.mv.db"), files.map(f -> f.getFileName().toString()).toList());
        }
    }

    @Test
    void changesLinesButNeverBelowWhatIsReserved() throws Exception {
        try (FillableStock stock = fill("shop", StockLoad.lines(5))) {
            stock.reserve(SqlCases.request("R1", "line-a", 4));
            StockException e =
                    assertThrows(StockException.class, () -> stock.put(StockLoad.lines(3)));
            assertEquals(StockException.Kind.CONFLICT, e.kind());
            assertEquals(BigDecimal.valueOf(5), SqlCases.item(stock, "line-b").onHand());
            stock.put(StockLoad.lines(4));
            assertEquals(BigDecimal.ZERO, SqlCases.item(stock, "line-a").available());
        }
    }

    @Test
    void aShopWithItsOwnTablesMapsThem() throws Exception {
        try (Connection connection =
                        DriverManager.getConnection(
                                "jdbc:h2:file:" + folder.resolve("own"), "reseat", "");
                Statement statement = connection.createStatement()) {
            for (String each : SqlCases.SHOP_TABLES) {
                statement.execute(each);
            }
        }
        SqlCases.ownTables(
                wholeMapping -> {
                    Files.writeString(folder.resolve("mapping.yaml"), wholeMapping);
                    return (SettlingStock)
                            SOURCE.open(Map.of("file", "own", "mapping", "mapping.yaml"), folder);
                });
    }

    @Test
    void tellsWhatIsWrongWithAMapping() throws Exception {
        Files.writeString(
                folder.resolve("m.yaml"), "item: select 1\nlock: select 1\nkinds: {E: spare}\n");
        StockException e =
                assertThrows(
                        StockException.class,
                        () -> SOURCE.open(Map.of("file", "x", "mapping", "m.yaml"), folder));

        assertEquals(StockException.Kind.BAD_INPUT, e.kind());
        for (String part :
                List.of(
                        "Did you mean \"items\"?",
                        "\"items\" is missing",
                        "\"lock\" has to say :item",
                        "found \"spare\", expected part")) {
            assertTrue(e.getMessage().contains(part), part + " not in " + e.getMessage());
        }
        Files.writeString(folder.resolve("m.yaml"), "items: select nothing from nowhere\n");
        e =
                assertThrows(
                        StockException.class,
                        () -> SOURCE.open(Map.of("file", "x", "mapping", "m.yaml"), folder));
        assertTrue(e.getMessage().contains("refused"), e.getMessage());
    }

    @Test
    void refusesTablesOfANewerReseat() throws Exception {
        SOURCE.open(Map.of("file", "shop"), folder).close();
        try (Connection connection =
                        DriverManager.getConnection(
                                "jdbc:h2:file:" + folder.resolve("shop"), "reseat", "");
                Statement statement = connection.createStatement()) {
            statement.execute("insert into reseat.step values ('items-9')");
        }
        StockException e =
                assertThrows(
                        StockException.class, () -> SOURCE.open(Map.of("file", "shop"), folder));
        assertTrue(e.getMessage().contains("newer Reseat (steps items-9)"), e.getMessage());
    }

    @Test
    void saysWhatASettingShouldBe() {
        for (Map.Entry<Map<String, String>, String> each :
                Map.of(
                                Map.of("file", "x", "url", "y"),
                                "either \"file\" or \"url\"",
                                Map.of("url", "jdbc:foo:x"),
                                "jdbc:postgresql://HOST/DATABASE",
                                Map.of("file", "x", "schema", "a; drop"),
                                "lower case letters",
                                Map.of("file", "x", "connections", "0"),
                                "from 1 to 64")
                        .entrySet()) {
            StockException e =
                    assertThrows(StockException.class, () -> SOURCE.open(each.getKey(), folder));
            assertTrue(e.getMessage().contains(each.getValue()), e.getMessage());
        }
    }

    @Test
    void manyClientsNeverOversell() throws Exception {
        fill("load", StockLoad.lines(12)).close();
        try (Stock keeper = SOURCE.open(Map.of("file", "load"), folder)) {
            StockLoad.Report report =
                    StockLoad.run(
                            () -> SOURCE.open(Map.of("file", "load", "wait", "60"), folder),
                            16,
                            20,
                            7,
                            n -> {});

            assertEquals(320, report.wishes());
            assertTrue(report.refused() > 0, "nobody was refused");
            assertEquals(List.of(), StockLoad.wrong(keeper, 12, report));
        }
    }

    @Test
    void whatWasPromisedOutlivesAKill() throws Exception {
        fill("killed", StockLoad.lines(100_000)).close();
        List<String> promised = Bench.killed(folder, "killed", 40);
        try (Stock stock = SOURCE.open(Map.of("file", "killed"), folder)) {
            List<String> open = stock.open().stream().map(Reservation::id).toList();
            assertTrue(open.containsAll(promised), "a promise was lost");
            assertTrue(open.size() <= promised.size() + 1, "one may not have been told");
            assertEquals(
                    BigDecimal.valueOf(open.size()), SqlCases.item(stock, "line-a").reserved());
        }
    }

    @Test
    void saysSoWhenAnotherProgramHasTheFile() throws Exception {
        fill("busy", StockLoad.lines(100_000)).close();
        try (Bench bench = Bench.start(folder, "busy")) {
            bench.next();
            StockException e =
                    assertThrows(
                            StockException.class,
                            () -> SOURCE.open(Map.of("file", "busy", "wait", "0"), folder));
            assertEquals(StockException.Kind.UNREACHABLE, e.kind());
        }
    }

    private FillableStock fill(String name, List<StockItem> lines) throws StockException {
        FillableStock stock = (FillableStock) SOURCE.open(Map.of("file", name), folder);
        stock.put(lines);
        return stock;
    }
}
