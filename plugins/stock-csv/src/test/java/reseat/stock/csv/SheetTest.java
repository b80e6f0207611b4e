package reseat.stock.csv;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.model.BadInputException;
import reseat.stock.StockItem;

/** Spreadsheets as shops have them. */
class SheetTest {

    private static final String MAPPING =
            """
            columns: {id: Nº, kind: Tipo, name: Désignation, serves: [Réf. fabricant, Autres réf.], quantity: Quantité, unit: Unité, expires: Périme}
            kinds: {pièce: part, vis: screw, produit: consumable, outil: tool}
            units: {pce: piece}
            decimal: ","
            dates: [dd/MM/yyyy, MM/yyyy]
            """;

    private static final String SHEET =
            """
            Stock de l'atelier;;;;;;;
            ;;;;;;;
            Nº;Tipo;Désignation;Réf. fabricant;Autres réf.;Quantité;Unité;Périme
            Pièces;;;;;;;
            ;;;;;;;
            1;pièce;"Écran, ""clair""\";KD-2001;KD-2001B|KD-2001C;1.250;pce;
            2;produit;Colle;edge-adhesive;;2,5;m;31/03/2026
            3;produit;Graisse;;;;g;06/2026
            4;vis;Vis
            """;

    @TempDir private Path folder;

    @Test
    void readsAFrenchSheetWithTitlesAndGaps() throws Exception {
        List<StockItem> rows = List.copyOf(read(MAPPING, SHEET.getBytes(UTF_8)).rows().values());

        assertEquals(List.of("1", "2", "3", "4"), ids(rows));
        StockItem display = rows.get(0);
        assertEquals("Écran, \"clair\"", display.name());
        assertEquals(List.of("KD-2001", "KD-2001B", "KD-2001C"), display.serves());
        assertEquals(new BigDecimal("1250"), display.onHand());
        assertEquals("piece", display.unit());
        assertEquals(new BigDecimal("2.5"), rows.get(1).onHand());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 31)), rows.get(1).expires());
        assertEquals(List.of("3"), rows.get(2).serves());
        assertEquals(BigDecimal.ZERO, rows.get(2).onHand());
        assertEquals(Optional.of(LocalDate.of(2026, 6, 30)), rows.get(2).expires());
    }

    @Test
    void readsOtherEncodingsAndSeparators() throws Exception {
        byte[] latin = SHEET.getBytes(Charset.forName("windows-1252"));
        assertEquals(4, read(MAPPING + "charset: windows-1252\n", latin).rows().size());

        byte[] wide = ("\uFEFF" + SHEET.replace(';', '\t')).getBytes(UTF_16LE);
        assertEquals(4, read(MAPPING, wide).rows().size());

        BadInputException e = assertThrows(BadInputException.class, () -> read(MAPPING, latin));
        assertTrue(e.getMessage().contains("charset: windows-1252"), e.getMessage());
    }

    @Test
    void tellsAllThatIsWrongWithItsLine() {
        String wrong =
                """
                Nº;Tipo;Désignation;Réf. fabricant;Autres réf.;Quantité;Unité;Périme
                1;pièces;;;;1;;
                2;vis;;;;1.5;;
                2;vis;;;;1;;
                3;vis;;;;1;;31/02/2026
                ;vis;;;;1;;
                """;

        BadInputException e =
                assertThrows(BadInputException.class, () -> read(MAPPING, wrong.getBytes(UTF_8)));

        List<String> lines =
                e.getMessage().lines().map(l -> l.replaceFirst("^.*?/s[.]csv", "s.csv")).toList();
        assertEquals(5, lines.size(), e.getMessage());
        assertTrue(lines.get(0).startsWith("s.csv:2: error: column \"Tipo\": found \"pièces\""));
        assertTrue(lines.get(1).startsWith("s.csv:3: error: column \"Quantité\": found \"1.5\""));
        assertTrue(lines.get(2).contains("\"2\", which is already the id of line 3"), lines.get(2));
        assertTrue(lines.get(3).startsWith("s.csv:5: error: column \"Périme\""), lines.get(3));
        assertTrue(lines.get(4).startsWith("s.csv:6: error: column \"Nº\""), lines.get(4));
    }

    @Test
    void tellsWhichHeadingsItHasInstead() {
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () -> read(MAPPING, "No;Kind;Quantity\n1;part;3\n".getBytes(UTF_8)));

        assertTrue(e.getMessage().contains("line 1 has \"No\", \"Kind\", \"Quantity\""));
    }

    @Test
    void readsNumbersAsPeopleWriteThem() {
        assertEquals(Optional.of(new BigDecimal("1234567.5")), Cells.number("1.234.567,5", ','));
        assertEquals(Optional.of(new BigDecimal("1234.5")), Cells.number("1 234,5", ','));
        assertEquals(Optional.of(new BigDecimal("1234.5")), Cells.number("1'234.5", '.'));
        assertEquals(Optional.of(new BigDecimal("1234")), Cells.number("1,234", '.'));
        assertEquals(Optional.empty(), Cells.number("12.34", ','));
        assertEquals(Optional.empty(), Cells.number("-1", '.'));
        assertEquals(Optional.empty(), Cells.number("1e9", '.'));
        assertEquals(Optional.empty(), Cells.number("ca. 5", '.'));
    }

    @Test
    void tellsWhatIsWrongWithAMapping() throws Exception {
        Path file = folder.resolve("m.yaml");
        Files.writeString(
                file,
                """
                columns: {id: [A, B], quantiti: C}
                kinds: {Teil: spare}
                decimal: ;
                dates: [dd.QX.foo]
                charset: latin-9000
                """);

        BadInputException e = assertThrows(BadInputException.class, () -> Columns.read(file));

        for (String part :
                List.of(
                        "m.yaml:1:16: error: columns/id must name one column",
                        "Did you mean \"columns/quantity\"?",
                        "\"columns/quantity\" is missing",
                        "found \"spare\", expected part, screw, consumable or tool",
                        "found \";\", expected \".\" or \",\"",
                        "found \"dd.QX.foo\", expected a date",
                        "found \"latin-9000\", expected UTF-8")) {
            assertTrue(e.getMessage().contains(part), part + " not in " + e.getMessage());
        }
    }

    private Sheet read(String mapping, byte[] content) throws Exception {
        Path file = folder.resolve("mapping.yaml");
        Files.writeString(file, mapping);
        return Sheet.parse(folder.resolve("s.csv").toString(), content, Columns.read(file));
    }

    private static List<String> ids(List<StockItem> rows) {
        return rows.stream().map(StockItem::id).toList();
    }
}
