package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.stock.Reservation;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Files of an earlier Reseat are copied when they are opened, once and whole. */
class StepOverTest {

    private static final SqlStockSource SOURCE = new SqlStockSource();
    private static final int KILLS = Math.max(8, Integer.getInteger("reseat.kills", 25) / 5);

    @TempDir private Path folder;

    private Path old;
    private Path kept;

    @BeforeEach
    void names() {
        old = folder.resolve("shop.mv.db");
        kept = folder.resolve("shop.mv.db" + StepOver.KEPT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop", "shop.mv.db", "shop.sqlite"})
    void everythingIsThereAfterwards(String named) throws Exception {
        byte[] before = Files.readAllBytes(FormerShop.real(old));

        try (Stock stock = open(named)) {
            assertEquals(
                    List.of(
                            old
                                    + " was copied to "
                                    + folder.resolve("shop.sqlite")
                                    + " (36 lines, 4 reservations). The old file is kept as "
                                    + kept),
                    stock.openingNotes());
            isAllThere(stock);
        }
        assertArrayEquals(before, Files.readAllBytes(kept));
        assertEquals(List.of("shop.mv.db" + StepOver.KEPT, "shop.sqlite"), names(folder));

        try (Stock again = open(named)) {
            assertEquals(List.of(), again.openingNotes());
            isAllThere(again);
            again.use("J1-open");
            assertEquals(BigDecimal.ONE, SqlCases.item(again, "A-22").reserved());
            assertEquals(BigDecimal.ONE, SqlCases.item(again, "A-22").onHand());
        }
    }

    /** What {@code stock list} and {@code stock open} said before the step. */
    private static void isAllThere(Stock stock) throws StockException {
        assertEquals(36, stock.items().size());
        StockItem motor = SqlCases.item(stock, "A-22");
        assertEquals(StockItem.Kind.PART, motor.kind());
        assertEquals("Sorrel: trilmotor", motor.name());
        assertEquals(List.of("KD-2029"), motor.serves());
        assertEquals(BigDecimal.valueOf(3), motor.onHand());
        assertEquals(BigDecimal.valueOf(3), motor.reserved());
        assertEquals(new BigDecimal("0.25"), SqlCases.item(stock, "K-08").onHand());
        assertEquals("2026-01-31", SqlCases.item(stock, "K-01").expires().orElseThrow().toString());
        assertEquals(BigDecimal.ONE, SqlCases.item(stock, "A-31").onHand(), "one was used");
        assertEquals(BigDecimal.valueOf(4), SqlCases.item(stock, "G-07").onHand(), "came back");
        assertEquals(
                List.of("J1-open", "J4-open"), stock.open().stream().map(Reservation::id).toList());
        Reservation first = stock.reservation("J1-open").orElseThrow();
        assertEquals("J1", first.request().job());
        assertEquals(
                List.of(
                        new Reservation.Pick("A-22", BigDecimal.valueOf(2)),
                        new Reservation.Pick("G-06", BigDecimal.ONE)),
                first.request().picks());
        assertEquals(Reservation.State.USED, stock.reservation("J2-used").orElseThrow().state());
        assertEquals(
                Reservation.State.RELEASED, stock.reservation("J3-back").orElseThrow().state());
    }

    @Test
    void anAddressOfThenIsTakenToo() throws Exception {
        FormerShop.real(old);
        String url = "jdbc:h2:file:" + folder.resolve("shop") + ";WRITE_DELAY=0;AUTO_SERVER=TRUE";
        Map<String, String> settings = Map.of("url", url, "user", "reseat", "password", "");
        try (Stock stock = SOURCE.open(settings, folder)) {
            isAllThere(stock);
        }
        try (Stock stock = SOURCE.open(settings, folder)) {
            isAllThere(stock);
        }
    }

    /**
     * What is left by a program that was killed between the end of the copying and the renaming.
     */
    @Test
    void whoWasKilledBeforeTheRenamingCopiesNothingTwice() throws Exception {
        FormerShop.real(old);
        open("shop").close();
        Files.move(kept, old);

        try (Stock stock = open("shop")) {
            assertTrue(stock.openingNotes().get(0).contains("already"));
            isAllThere(stock);
        }
        assertTrue(Files.exists(kept) && !Files.exists(old));
    }

    @Test
    void aKillInTheMiddleLosesAndDoublesNothing() throws Exception {
        Random random = new Random(5);
        int unfinished = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Path place = Files.createDirectory(folder.resolve("kill" + kill));
            Path file = FormerShop.real(place.resolve("shop.mv.db"));
            byte[] before = Files.readAllBytes(file);
            for (int n = 0; n < 2; n++) {
                try (KilledProgram program = KilledProgram.start(place, "shop", "k" + n, 0, -1)) {
                    program.readUntil("started");
                    Thread.sleep(random.nextInt(900));
                    if (!program.kill().contains("opened")) {
                        unfinished++;
                    }
                }
                Path renamed = place.resolve("shop.mv.db" + StepOver.KEPT);
                assertTrue(Files.exists(file) != Files.exists(renamed), "one old file, not two");
                assertArrayEquals(before, Files.readAllBytes(Files.exists(file) ? file : renamed));
            }
            try (Stock stock = SOURCE.open(Map.of("file", "shop"), place)) {
                isAllThere(stock);
            }
            assertEquals(List.of("shop.mv.db" + StepOver.KEPT, "shop.sqlite"), names(place));
        }
        assertTrue(unfinished > 0, "none was killed in the middle");
    }

    @Test
    void severalProgramsAtOnceTakeTheStepOnce() throws Exception {
        FormerShop.real(old);
        List<KilledProgram> programs =
                List.of(
                        KilledProgram.start(folder, "shop", "a", 0, -1),
                        KilledProgram.start(folder, "shop", "b", 0, -1),
                        KilledProgram.start(folder, "shop", "c", 0, -1));
        for (KilledProgram program : programs) {
            assertEquals(List.of("started", "opened", "closing", "closed"), program.rest());
        }
        try (Stock stock = open("shop")) {
            isAllThere(stock);
        }
        assertEquals(List.of("shop.mv.db" + StepOver.KEPT, "shop.sqlite"), names(folder));
    }

    @Test
    void aFileThatCameBackIsNotMixedWithTheNewOne() throws Exception {
        FormerShop.real(old);
        open("shop").close();
        FormerShop.made(old, "tables");
        byte[] before = Files.readAllBytes(old);

        StockException e = assertThrows(StockException.class, () -> open("shop"));

        assertEquals(StockException.Kind.CONFLICT, e.kind());
        assertTrue(e.getMessage().contains("move the one that you do not need"), e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(old));
    }

    @Test
    void waitsForAnEarlierReseatThatHasItOpen() throws Exception {
        FormerShop.real(old);
        try (FileChannel other =
                FileChannel.open(old, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            other.lock();
            StockException e =
                    assertThrows(
                            StockException.class,
                            () -> SOURCE.open(Map.of("file", "shop", "wait", "0"), folder));
            assertEquals(StockException.Kind.UNREACHABLE, e.kind());
            assertTrue(e.getMessage().contains("another program has"), e.getMessage());
        }
        open("shop").close();
    }

    /** The losses of then: a half of a reservation, and sums that do not agree. */
    @Test
    void halvesOfTransactionsAreLeftOutAndSumsMended() throws Exception {
        FormerShop.made(
                old,
                "tables",
                "insert into reseat.item values ('A', 'part', 'Cell', 'X', 5, 'piece', null, null,"
                        + " null)",
                "insert into reseat.held values ('A', 4, 0)",
                "insert into reseat.reservation (id, job, state) values ('whole', 'J', 'reserved'),"
                        + " ('half', 'J', 'reserved')",
                "insert into reseat.pick values ('whole', 0, 'A', 1, false)");
        try (Stock stock = open("shop")) {
            assertTrue(
                    stock.openingNotes()
                            .get(0)
                            .contains(
                                    "(1 line, 1 reservation; half-written entries left out: 1; reserved"
                                            + " quantities corrected: 1)"),
                    stock.openingNotes().toString());
            assertEquals(BigDecimal.ONE, SqlCases.item(stock, "A").reserved());
            stock.reserve(SqlCases.request("half", "A", 2));
        }
    }

    @Test
    void theTablesOfAShopComeAlong() throws Exception {
        String[] statements =
                Stream.concat(
                                Stream.of("tables", "create view bare as select nr from artikel"),
                                SqlCases.SHOP_TABLES.stream())
                        .sorted((a, b) -> Boolean.compare(a.contains("view"), b.contains("view")))
                        .toArray(String[]::new);
        FormerShop.made(old, statements);
        SqlCases.ownTables(
                mapping -> {
                    Files.writeString(folder.resolve("mapping.yaml"), mapping);
                    SettlingStock stock =
                            (SettlingStock)
                                    SOURCE.open(
                                            Map.of("file", "shop", "mapping", "mapping.yaml"),
                                            folder);
                    for (String note : stock.openingNotes()) {
                        assertTrue(note.contains("the shop's tables artikel, lager"), note);
                        assertTrue(note.contains("but not the views bare"), note);
                    }
                    return stock;
                });
        assertTrue(Files.exists(kept));
    }

    @ParameterizedTest
    @ValueSource(strings = {"torn", "cut", "theirs", "newer"})
    void aFileThatCannotBeReadIsLeftAlone(String what) throws Exception {
        String answer =
                switch (what) {
                    case "theirs" -> "is a database of another program";
                    case "newer" -> "created by a newer Reseat (steps items-9)";
                    default -> "cannot be read";
                };
        if (what.equals("theirs")) {
            FormerShop.made(old, "create table song (title varchar(20))");
        } else if (what.equals("newer")) {
            FormerShop.made(old, "tables", "insert into reseat.step values ('items-9')");
        } else {
            FormerShop.real(old);
            byte[] bytes = Files.readAllBytes(old);
            if (what.equals("torn")) {
                new Random(1).nextBytes(bytes);
                Files.write(old, bytes);
            } else {
                Files.write(old, java.util.Arrays.copyOf(bytes, 5_000));
            }
        }
        byte[] before = Files.readAllBytes(old);

        StockException e = assertThrows(StockException.class, () -> open("shop"));

        assertEquals(StockException.Kind.BAD_INPUT, e.kind());
        assertTrue(e.getMessage().contains(answer), e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(old));
        assertEquals(List.of("shop.mv.db"), names(folder));
    }

    private Stock open(String named) throws StockException {
        return SOURCE.open(Map.of("file", named), folder);
    }

    private static List<String> names(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
