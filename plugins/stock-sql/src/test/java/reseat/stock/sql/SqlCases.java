package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import reseat.stock.FillableStock;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** What both databases are tested with. */
final class SqlCases {

    /** Tables as a shop may have had them before it heard of us. */
    static final List<String> SHOP_TABLES =
            List.of(
                    "create table artikel (nr integer primary key, bezeichnung varchar(80),"
                            + " gruppe char(1), bestell_nr varchar(40), einheit varchar(10))",
                    "create table lager (artikel integer references artikel (nr),"
                            + " bestand numeric(10, 2), fach varchar(10), charge varchar(20),"
                            + " mhd date)",
                    "insert into artikel values (10, 'Zelle', 'E', 'X-02', 'Stk'),"
                            + " (20, 'Band', 'V', 'tape-10', 'm')",
                    "insert into lager values (10, 5, 'A3', null, null),"
                            + " (20, 2.5, 'B1', 'L-17', date '2026-06-30')");

    private static final String MAPPING =
            """
            items: |
              select a.nr as id, a.gruppe as kind, a.bezeichnung as name, a.bestell_nr as serves,
                     l.bestand as on_hand, a.einheit as unit, l.charge as lot, l.mhd as expires,
                     l.fach as place
              from artikel a join lager l on l.artikel = a.nr;
            lock: select bestand from lager where artikel = cast(:item as integer) for update
            kinds: {E: part, V: consumable}
            units: {Stk: piece}
            """;

    private static final String TAKE =
            """
            take: >
              update lager set bestand = bestand - :quantity
              where artikel = cast(:item as integer) and bestand >= :quantity
            """;

    private SqlCases() {}

    interface Opener {
        SettlingStock open(String mapping) throws Exception;
    }

    static void ownTables(Opener opener) throws Exception {
        try (SettlingStock stock = opener.open(MAPPING)) {
            assertTrue(!(stock instanceof FillableStock));
            StockItem tape = item(stock, "20");
            assertEquals(StockItem.Kind.CONSUMABLE, tape.kind());
            assertEquals("piece", item(stock, "10").unit());
            assertEquals(List.of("tape-10"), tape.serves());
            assertEquals("2026-06-30", tape.expires().orElseThrow().toString());
            stock.reserve(request("R1", "10", 4));
            StockException e =
                    assertThrows(StockException.class, () -> stock.reserve(request("R2", "10", 2)));
            assertEquals(StockException.Kind.SHORT, e.kind());
            stock.use("R1");
            assertEquals(BigDecimal.ONE, item(stock, "10").onHand());
            assertTrue(stock.notices().get(0).contains("settle 10"), stock.notices().toString());
            stock.settle("10");
            assertEquals(BigDecimal.valueOf(5), item(stock, "10").onHand());
            assertEquals(List.of(), stock.notices());
        }
        try (SettlingStock stock = opener.open(MAPPING + TAKE)) {
            stock.reserve(request("R3", "10", 2));
            stock.use("R3");
            assertEquals(BigDecimal.valueOf(3), item(stock, "10").onHand());
            assertEquals(List.of(), stock.notices());
        }
    }

    static StockItem item(Stock stock, String id) throws StockException {
        return stock.items().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    }

    static Request request(String id, String item, int quantity) {
        return new Request(id, "job", List.of(new Pick(item, BigDecimal.valueOf(quantity))));
    }
}
