package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.stock.FillableStock;
import reseat.stock.Reservation;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.testkit.StockContract;
import reseat.testkit.StockLoad;

/** The database in one file. */
class SqliteStockTest {

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
                    List.of("shop.sqlite"), files.map(f -> f.getFileName().toString()).toList());
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
        execute(
                "own",
                SqlCases.SHOP_TABLES.stream()
                        .map(each -> each.replace("date '", "'"))
                        .toArray(String[]::new));
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
                        "\"lock\" must contain :item",
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
        execute("shop", "insert into reseat_step values ('items-9')");
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
                                Map.of("url", "jdbc:h2:tcp://HOST/shop"),
                                "a database in a file is named by \"file\"",
                                Map.of("file", "what?"),
                                "a name without a question mark",
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
    void isPatientWithOthersThatWrite() throws Exception {
        fill("busy", StockLoad.lines(10)).close();
        try (Connection other = connect("busy");
                Statement statement = other.createStatement();
                Stock hasty = SOURCE.open(Map.of("file", "busy", "wait", "0"), folder);
                Stock patient = SOURCE.open(Map.of("file", "busy", "wait", "60"), folder)) {
            statement.execute("begin immediate");
            StockException e =
                    assertThrows(
                            StockException.class,
                            () -> hasty.reserve(SqlCases.request("R1", "line-a", 1)));
            assertEquals(StockException.Kind.UNREACHABLE, e.kind());
            assertTrue(e.getMessage().contains("nothing was done, try again"), e.getMessage());
            assertEquals(BigDecimal.TEN, SqlCases.item(hasty, "line-a").onHand());

            CompletableFuture<Reservation> waits =
                    CompletableFuture.supplyAsync(
                            () -> {
                                try {
                                    return patient.reserve(SqlCases.request("R1", "line-a", 1));
                                } catch (StockException failed) {
                                    throw new CompletionException(failed);
                                }
                            });
            statement.execute("rollback");
            assertEquals(Reservation.State.RESERVED, waits.get().state());
        }
    }

    @Test
    void countsExactly() throws Exception {
        try (FillableStock stock = fill("exact", StockLoad.lines(1))) {
            for (int n = 0; n < 3; n++) {
                stock.reserve(
                        new Reservation.Request(
                                "R" + n,
                                "job",
                                List.of(new Reservation.Pick("line-a", new BigDecimal("0.1")))));
                stock.use("R" + n);
            }
            assertEquals(new BigDecimal("0.7"), SqlCases.item(stock, "line-a").onHand());
            assertEquals(BigDecimal.ZERO, SqlCases.item(stock, "line-a").reserved());
        }
    }

    @Test
    void doesNotUseMoreThanSomebodyHasLeft() throws Exception {
        try (FillableStock stock = fill("less", StockLoad.lines(5))) {
            stock.reserve(SqlCases.request("R1", "line-a", 4));
            execute("less", "update reseat_item set on_hand = on_hand - 3 where id = 'line-a'");
            assertTrue(stock.notices().get(0).contains("only 2 are left"));
            StockException e = assertThrows(StockException.class, () -> stock.use("R1"));
            assertEquals(StockException.Kind.CONFLICT, e.kind());
            assertTrue(e.getMessage().contains("only 2 are on hand"), e.getMessage());
            assertEquals(BigDecimal.valueOf(2), SqlCases.item(stock, "line-a").onHand());
            stock.release("R1");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "text.sqlite, is not a SQLite database",
        "cut.sqlite, is damaged",
        "scratched.sqlite, is damaged",
        "theirs.sqlite, a database of another program (tables song)",
    })
    void leavesAFileAloneThatIsNotItsOwn(String name, String answer) throws Exception {
        Path file = folder.resolve(name);
        if (name.equals("text.sqlite")) {
            Files.writeString(file, "Regel;Soort;Aantal\n".repeat(200));
        } else if (name.equals("theirs.sqlite")) {
            execute("theirs", "create table song (title text)");
        } else {
            fill(name, StockLoad.lines(5)).close();
            byte[] bytes = Files.readAllBytes(file);
            if (name.equals("scratched.sqlite")) {
                Arrays.fill(bytes, 4096, 8192, (byte) 7);
            } else {
                bytes = Arrays.copyOf(bytes, bytes.length / 2);
            }
            Files.write(file, bytes);
        }
        byte[] before = Files.readAllBytes(file);

        StockException e =
                assertThrows(StockException.class, () -> SOURCE.open(Map.of("file", name), folder));

        assertEquals(StockException.Kind.BAD_INPUT, e.kind());
        assertTrue(e.getMessage().contains(answer), e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    private FillableStock fill(String name, List<StockItem> lines) throws StockException {
        FillableStock stock = (FillableStock) SOURCE.open(Map.of("file", name), folder);
        stock.put(lines);
        return stock;
    }

    private Connection connect(String name) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(name + ".sqlite"));
    }

    private void execute(String name, String... statements) throws SQLException {
        try (Connection connection = connect(name);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        }
    }
}
