package reseat.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables that people keep in a spreadsheet. */
class CsvTextTest {

    private static String split(String text) throws CsvException {
        StringBuilder out = new StringBuilder();
        for (List<CsvText.Cell> row : CsvText.rows(text)) {
            out.append(texts(row)).append('\n');
        }
        return out.toString();
    }

    @Test
    void separatesByWhatTheHeaderHasMostOf() throws CsvException {
        assertEquals("[a, b]\n[1, 2]\n", split("a,b\n1,2\n"));
        assertEquals("[a, b, c]\n[1,5, 2, ]\n", split("a;b;c\n1,5;2;\n"));
        assertEquals("[a, b]\n[1;2, 3]\n", split("a\tb\r\n1;2\t3\r\n"));
    }

    @Test
    void understandsQuotes() throws CsvException {
        assertEquals("[a, b]\n[x,y, say \"no\"]\n", split("a,b\n\"x,y\",\"say \"\"no\"\"\"\n"));
    }

    @Test
    void leavesOutBlankRows() throws CsvException {
        assertEquals("[a, b]\n[1, 2]\n", split("a,b\n\n,\n1,2\n\n"));
    }

    @Test
    void everyCellKnowsItsPlace() throws CsvException {
        List<List<CsvText.Cell>> rows = CsvText.rows("a,b,c\n\"x\ny\", z,µ\n1,2,3");
        assertEquals("2:1", at(rows.get(1).get(0)));
        assertEquals("3:5", at(rows.get(1).get(1)));
        assertEquals("3:7", at(rows.get(1).get(2)));
        assertEquals("4:5", at(rows.get(2).get(2)));
    }

    @Test
    void saysWhereAQuoteIsOpen() {
        CsvException open = assertThrows(CsvException.class, () -> split("a,b\n1,\"2\n3,4\n"));
        assertEquals("2:3 this quote is never closed", at(open));
        CsvException after = assertThrows(CsvException.class, () -> split("a,b\n\"1\"x,2\n"));
        assertEquals("2:4 something follows the closing quote of this cell", at(after));
    }

    @Test
    void passesOverCommentsAndTheByteOrderMark() throws CsvException {
        List<List<CsvText.Cell>> rows = CsvText.rows("\uFEFF# of 2026; mine\n\na;b\n# more\n1;2");
        assertEquals("[[a, b], [1, 2]]", rows.stream().map(CsvTextTest::texts).toList().toString());
        assertEquals("5:3", at(rows.get(1).get(1)));
        assertEquals("1:1", at(CsvText.rows("\uFEFFa;b").get(0).get(0)));
    }

    @Test
    void refusesATableThatNobodyCouldHaveWritten() {
        CsvException much =
                assertThrows(
                        CsvException.class, () -> split(",".repeat(CsvText.MOST_CELLS) + "x\n"));
        assertEquals("1:500001 the table has more than 500000 cells", at(much));
    }

    private static List<String> texts(List<CsvText.Cell> row) {
        return row.stream().map(CsvText.Cell::text).toList();
    }

    private static String at(CsvText.Cell cell) {
        return cell.line() + ":" + cell.column();
    }

    private static String at(CsvException e) {
        return e.line() + ":" + e.column() + " " + e.text();
    }
}
