package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands about the shop's stock, on a copy of the sample. */
class StockCommandsTest {

    private static final Path SAMPLES = Path.of("../../samples");
    private static final String DAY = "--today=2026-03-02";

    @TempDir private Path folder;
    private String shop = "";

    @BeforeEach
    void copyTheShop() throws IOException {
        for (String name : List.of("shop.yaml", "voorraad.csv", "voorraad-columns.yaml")) {
            Files.copy(SAMPLES.resolve("stock").resolve(name), folder.resolve(name));
        }
        shop = folder.resolve("shop.yaml").toString();
    }

    @Test
    void saysYesAndWhatToTake() {
        Ran ran = Ran.reseat("today", shop, device("tansy"), "--free", "cell", DAY);

        assertEquals(0, ran.code(), ran.err());
        assertEquals(
                """
                Tansy: Free Cell: yes, everything is in stock.
                  take  1 piece  A-01  Tansy: cel   A1
                  take  1 piece  K-03  Kleefpads    C1  expires soon: 2026-03-11
                  take  1 piece  G-01  Bit T6       D1
                  take  1 piece  G-07  Nylon hevel  D2
                  instead of K-03: K-04
                """,
                ran.out());
    }

    @Test
    void refusesAPartThatTheDeviceDoesNotHave() {
        Ran ran = today("tansy", "cel");

        assertEquals(2, ran.code());
        assertTrue(ran.err().startsWith("reseat: tansy has no part \"cel\""), ran.err());
    }

    @Test
    void saysWhatIsMissingAndWhy() {
        Ran expired = today("quill", "heat-spreader");
        assertEquals(1, expired.code());
        assertTrue(
                expired.out().contains("of Thermal paste (thermal-paste): K-07 expired on"),
                expired.out());

        Ran tool = today("sorrel", "cell");
        assertTrue(tool.out().contains("1 piece of T4 bit (t4): there is none"), tool.out());

        Ran tooShort = today("bramble", "dock-contacts");
        assertTrue(tooShort.out().contains("missing  180 mm of"), tooShort.out());
        assertTrue(
                tooShort.out().contains("(gasket-cord): 300 of 480 mm are in stock\n"),
                tooShort.out());
        assertEquals(0, today("bramble", "scan-engine").code());
        assertEquals(0, today("sorrel", "display").code());
    }

    @Test
    void reservesForAJobOnceHoweverOftenItIsSaid() {
        String[] words = {
            "today",
            shop,
            device("bramble"),
            "--free",
            "scan-engine",
            DAY,
            "--reserve",
            "J7-1",
            "--job",
            "J7"
        };
        Ran first = Ran.reseat(words);
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().endsWith("Reserved as J7-1.\n"), first.out());

        Ran again = Ran.reseat(words);
        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().startsWith("Already reserved:\nJ7-1  reserved  job J7\n"));

        words[7] = "J7-2";
        Ran more = Ran.reseat(words);
        assertEquals(1, more.code());
        assertTrue(more.out().contains("1 piece are reserved for other jobs"), more.out());

        assertTrue(Ran.reseat("stock", "open", shop).out().contains("150 of K-10"));
        assertEquals(0, Ran.reseat("stock", "use", shop, "J7-1").code());
        assertEquals("Nothing is reserved.\n", Ran.reseat("stock", "open", shop).out());
        Ran list = Ran.reseat("stock", "list", shop, DAY);
        assertTrue(list.out().contains("! 150 mm of K-10 (Pakkingkoord) were used"), list.out());
        assertEquals(1, Ran.reseat("stock", "release", shop, "J7-1").code());
        assertEquals(2, Ran.reseat("stock", "use", shop, "J9").code());
        assertEquals(0, Ran.reseat("stock", "settle", shop, "A-30", "K-10", "K-11").code());
        assertFalse(Ran.reseat("stock", "list", shop, DAY).out().contains("!"));
    }

    @Test
    void reservesLinesByHand() {
        Ran made =
                Ran.reseat(
                        "stock",
                        "reserve",
                        shop,
                        "R1",
                        "--job",
                        "J1",
                        "--pick",
                        "K-02=0.8",
                        "--pick",
                        "A-20=1");
        assertEquals("R1  reserved  job J1\n  0.8 of K-02\n  1 of A-20\n", made.out());
        Ran more = Ran.reseat("stock", "reserve", shop, "R2", "--job", "J1", "--pick", "K-02=0.2");
        assertEquals(1, more.code());
        assertTrue(more.err().contains("0.1 available (0.8 reserved)"), more.err());
        Ran wrong = Ran.reseat("stock", "reserve", shop, "R3", "--job", "J1", "--pick", "K-02");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("expected LINE=QUANTITY"), wrong.err());
    }

    @Test
    void tellsTheWholeCatalogue() {
        Ran ran =
                Ran.reseat("today", shop, device("tansy"), device("bramble"), DAY, "--effort=3000");

        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("Tansy    Cover "), ran.out());
        assertTrue(ran.out().endsWith(" repairs can be done.\n"), ran.out());
    }

    @Test
    void printsForPrograms() {
        Ran ran = Ran.reseat("today", shop, device("tansy"), "--free", "cell", DAY, "--json");
        Map<String, Object> all = PlainJson.object(ran.out());
        assertEquals("reseat-today/1", all.get("format"));
        Map<?, ?> repair = (Map<?, ?>) ((List<?>) all.get("repairs")).get(0);
        assertEquals(true, repair.get("possible"));
        assertEquals(4, ((List<?>) repair.get("needs")).size());

        Map<String, Object> list =
                PlainJson.object(Ran.reseat("stock", "list", shop, DAY, "--json").out());
        assertEquals("reseat-stock-list/1", list.get("format"));
        assertEquals(36, ((List<?>) list.get("items")).size());
        assertEquals(
                "reseat-reservations/1",
                PlainJson.object(Ran.reseat("stock", "open", shop, "--json").out()).get("format"));
    }

    @Test
    void fillsADatabaseFromTheSpreadsheet() throws IOException {
        Path base = folder.resolve("base.yaml");
        Files.writeString(base, "format: reseat-stock/1\nsource: sql\nsettings: {file: db/shop}\n");

        Ran filled = Ran.reseat("stock", "fill", base.toString(), shop);
        assertEquals("Set 36 lines.\n", filled.out(), filled.err());
        Ran ran = Ran.reseat("today", base.toString(), device("tansy"), "--free", "cell", DAY);
        assertEquals(0, ran.code(), ran.err() + ran.out());
        assertEquals(2, Ran.reseat("stock", "fill", shop, base.toString()).code());
    }

    @Test
    void lookingLeavesNoTrace() throws IOException {
        Ran.reseat("stock", "list", shop, DAY);
        today("tansy", "cell");
        try (java.util.stream.Stream<Path> files = Files.list(folder)) {
            assertEquals(3, files.count());
        }
    }

    @Test
    void tellsWhatIsWrongWithAFile() throws IOException {
        Files.writeString(
                folder.resolve("shop.yaml"),
                "format: reseat-stock/2\nsource: cvs\nsetting: {file: x}\n");
        Ran wrong = Ran.reseat("stock", "list", shop);
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("shop.yaml:1:9: error: expected"), wrong.err());
        assertTrue(
                wrong.err()
                        .contains(
                                "there is no kind of stock \"cvs\". Did you mean \"csv\"? Known: csv, sql."),
                wrong.err());

        Files.writeString(
                folder.resolve("shop.yaml"),
                "format: reseat-stock/1\nsource: csv\nsettings: {fil: x}\n");
        Ran settings = Ran.reseat("stock", "list", shop);
        assertTrue(settings.err().contains("Did you mean \"file\"?"), settings.err());
        assertTrue(settings.err().contains("csv needs \"file\""), settings.err());

        assertEquals(2, Ran.reseat("today", shop, device("tansy"), "--warn", "-1").code());
        assertEquals(2, Ran.reseat("today", shop, device("tansy"), "--reserve", "R").code());
        Ran unread = Ran.reseat("stock", "list", shop, "--today", "tomorrow");
        assertEquals(2, unread.code());
        assertEquals(
                "reseat: --today: found \"tomorrow\", expected a date such as 2026-03-02.\n",
                unread.err());
    }

    private Ran today(String name, String part) {
        return Ran.reseat("today", shop, device(name), "--free", part, DAY);
    }

    private static String device(String name) {
        return SAMPLES.resolve(name).resolve(name + ".yaml").toString();
    }
}
