package reseat.stock.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import reseat.stock.Reservation;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.testkit.StockContract;
import reseat.testkit.StockLoad;

/** The spreadsheet and its journal, with others at both. */
class CsvStockTest {

    @TempDir private Path folder;
    private CsvShop shop;

    @BeforeEach
    void opens() {
        shop = new CsvShop(folder);
    }

    @TestFactory
    Stream<DynamicTest> keepsTheContract() {
        return StockContract.cases(shop).stream()
                .map(each -> DynamicTest.dynamicTest(each.name(), each.body()::run));
    }

    @Test
    void readsWhatTheShopSavedJustNow() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 5));
        shop.save(with(StockContract.lines(), "A1", 7));

        assertEquals(BigDecimal.valueOf(2), item(stock, "A1").available());
        stock.reserve(request("R2", "A1", 2));
        assertEquals(List.of(), stock.notices());
    }

    @Test
    void tellsWhenTheSheetHasLessThanIsReserved() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 4));
        stock.reserve(request("R2", "A1", 1));
        shop.save(with(StockContract.lines(), "A1", 3));

        assertEquals(BigDecimal.ZERO, item(stock, "A1").available());
        assertEquals(
                List.of(
                        "of A1 (Cell) 5 piece are reserved (R1, R2), but only 3 are left. The"
                                + " reservations remain valid; count again or release one."),
                stock.notices());
        assertEquals(2, stock.open().size());
    }

    @Test
    void tellsWhenALineIsGoneAndKeepsItsReservation() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 4));
        shop.save(StockContract.lines().subList(1, 5));

        assertEquals(
                List.of(
                        "line A1 is missing from the spreadsheet, but 4 of it are reserved (R1)."
                                + " The"
                                + " reservation remains valid."),
                stock.notices());
        shop.save(StockContract.lines());
        assertEquals(BigDecimal.ONE, item(stock, "A1").available());
        assertEquals(List.of(), stock.notices());
    }

    @Test
    void whatWasUsedIsTakenOffUntilTheSheetKnows() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 2));
        stock.use("R1");
        assertEquals(BigDecimal.valueOf(3), item(stock, "A1").onHand());
        assertTrue(stock.notices().get(0).endsWith("Subtract it there too, then settle A1."));

        shop.save(with(StockContract.lines(), "A1", 3));
        assertEquals(BigDecimal.ONE, item(stock, "A1").onHand(), "the safe side");
        assertTrue(stock.notices().get(0).contains("it was 5 then and is now 3. "));

        stock.settle("A1");
        stock.settle("A1");
        assertEquals(BigDecimal.valueOf(3), item(shop.again(), "A1").onHand());
        assertEquals(List.of(), stock.notices());
        StockException e = assertThrows(StockException.class, () -> stock.settle("none"));
        assertEquals(StockException.Kind.UNKNOWN, e.kind());
    }

    @Test
    void theSheetIsNeverWritten() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        byte[] before = Files.readAllBytes(shop.sheet());
        stock.reserve(request("R1", "A1", 2));
        stock.use("R1");
        stock.settle("A1");

        assertEquals(-1, java.util.Arrays.mismatch(before, Files.readAllBytes(shop.sheet())));
    }

    @Test
    void aHalfWrittenLineDoesNotCountAndIsCutOff() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 2));
        byte[] whole = Files.readAllBytes(shop.journal());
        for (int cut = 1; cut < whole.length; cut += 7) {
            Files.write(shop.journal(), whole);
            Files.write(
                    shop.journal(), java.util.Arrays.copyOf(whole, cut), StandardOpenOption.APPEND);
            SettlingStock next = shop.again();
            assertEquals(1, next.open().size());
            next.reserve(request("R2", "A1", 3));
            assertEquals(2, shop.again().open().size());
            assertEquals(2, Files.readAllLines(shop.journal()).size());
        }
    }

    @Test
    void aChangedLineIsRefusedWithItsNumber() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 2));
        stock.reserve(request("R2", "A1", 2));
        Files.writeString(
                shop.journal(), Files.readString(shop.journal()).replaceFirst("\"2\"", "\"1\""));

        StockException e = assertThrows(StockException.class, () -> shop.again());
        assertEquals(StockException.Kind.BAD_INPUT, e.kind());
        assertTrue(e.getMessage().contains("line 1 was changed"), e.getMessage());
    }

    @Test
    void isReadWhileItIsBeingSaved() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        AtomicBoolean stop = new AtomicBoolean();
        List<Exception> failed = new ArrayList<>();
        Thread editor =
                new Thread(
                        () -> {
                            try {
                                for (int n = 0; !stop.get() && n < 5000; n++) {
                                    shop.save(with(StockContract.lines(), "A1", 40 + n % 2));
                                }
                            } catch (IOException e) {
                                failed.add(e);
                            }
                        });
        editor.start();
        try {
            for (int n = 0; n < 40; n++) {
                stock.reserve(request("R" + n, "A1", 1));
            }
        } finally {
            stop.set(true);
            editor.join();
        }
        assertEquals(List.of(), failed);
        assertEquals(40, stock.open().size());
    }

    @Test
    void manyClientsNeverOversell() throws Exception {
        try (Stock keeper = shop.fresh(StockLoad.lines(12))) {
            StockLoad.Report report = StockLoad.run(shop::again, 16, 20, 7, n -> {});

            assertEquals(320, report.wishes());
            assertTrue(report.refused() > 0, "nobody was refused");
            List<String> wrong = StockLoad.wrong(keeper, 12, report);
            assertEquals(List.of(), wrong);
        }
    }

    @Test
    void aJournalThatIsReplacedIsReadAnew() throws Exception {
        SettlingStock stock = shop.fresh(StockContract.lines());
        stock.reserve(request("R1", "A1", 2));
        Path copy = Files.copy(shop.journal(), shop.folder().resolve("copy"));
        stock.reserve(request("R2", "A1", 2));
        Files.move(copy, shop.journal(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);

        assertEquals(List.of("R1"), stock.open().stream().map(Reservation::id).toList());
        assertFalse(stock.reservation("R2").isPresent());
    }

    static StockItem item(Stock stock, String id) throws StockException {
        return stock.items().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    }

    static Request request(String id, String item, int quantity) {
        return new Request(id, "job", List.of(new Pick(item, BigDecimal.valueOf(quantity))));
    }

    static List<StockItem> with(List<StockItem> lines, String id, int onHand) {
        return lines.stream()
                .map(
                        line ->
                                !line.id().equals(id)
                                        ? line
                                        : new StockItem(
                                                id,
                                                line.kind(),
                                                line.name(),
                                                line.serves(),
                                                BigDecimal.valueOf(onHand),
                                                BigDecimal.ZERO,
                                                line.unit(),
                                                line.lot(),
                                                line.expires(),
                                                line.place()))
                .toList();
    }
}
