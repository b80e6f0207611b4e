package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {

    private static String split(String text) throws TreeException {
        StringBuilder out = new StringBuilder();
        for (List<Csv.Cell> row : Csv.rows("t", text)) {
            out.append(row.stream().map(Csv.Cell::text).toList()).append('\n');
        }
        return out.toString();
    }

    @Test
    void separatesByWhatTheHeaderHasMostOf() throws TreeException {
        assertEquals("[a, b]\n[1, 2]\n", split("a,b\n1,2\n"));
        assertEquals("[a, b, c]\n[1,5, 2, ]\n", split("a;b;c\n1,5;2;\n"));
        assertEquals("[a, b]\n[1;2, 3]\n", split("a\tb\r\n1;2\t3\r\n"));
    }

    @Test
    void understandsQuotes() throws TreeException {
        assertEquals("[a, b]\n[x,y, say \"no\"]\n", split("a,b\n\"x,y\",\"say \"\"no\"\"\"\n"));
    }

    @Test
    void leavesOutBlankRows() throws TreeException {
        assertEquals("[a, b]\n[1, 2]\n", split("a,b\n\n,\n1,2\n\n"));
    }

    @Test
    void everyCellKnowsItsPlace() throws TreeException {
        List<List<Csv.Cell>> rows = Csv.rows("t", "a,b,c\n\"x\ny\", z,µ\n1,2,3");
        assertEquals("t:2:1", rows.get(1).get(0).at().toString());
        assertEquals("t:3:5", rows.get(1).get(1).at().toString());
        assertEquals("t:3:7", rows.get(1).get(2).at().toString());
        assertEquals("t:4:5", rows.get(2).get(2).at().toString());
    }

    @Test
    void saysWhereAQuoteIsOpen() {
        TreeException open = assertThrows(TreeException.class, () -> split("a,b\n1,\"2\n3,4\n"));
        assertEquals("t:2:3 this quote is never closed", open.at() + " " + open.text());
        TreeException after = assertThrows(TreeException.class, () -> split("a,b\n\"1\"x,2\n"));
        assertEquals(
                "t:2:4 unexpected text after the closing quote of this cell",
                after.at() + " " + after.text());
    }
}
