package reseat.internal.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.internal.time.Worksheet.Row;
import reseat.model.Duration;

/**
 * Worked example: Yang and El-Haik, Design for Six Sigma: A Roadmap for Product Development, table
 * 10.5, at $30 an hour.
 */
class WorksheetTest {

    private static final String PRINTED =
            """
            1,remove screws,3,4.2,11.3,1.4,42.3,35.25,0
            2,reorient,1,0,4.5,0,4.5,3.75,0
            3,loosen setscrew,1,4.2,8.0,0,12.2,10.17,0
            4,remove knob,1,0,2.4,1.4,3.8,3.167,0
            5,remove cover,1,0,2.4,1.4,3.8,3.167,0
            6,reorient,1,0,4.5,0,4.5,3.75,0
            7,unplug connector,1,0,6.4,0,6.4,5.333,0
            8,remove screws,2,4.2,8.0,1.4,23.0,19.17,0
            9,remove circuit board,1,0,2.4,1.4,3.8,3.167,1
            """;

    private final List<String[]> printed =
            PRINTED.lines().map(line -> line.split(",", -1)).toList();
    private final Worksheet sheet = worksheet();

    private Worksheet worksheet() {
        List<Row> rows = new ArrayList<>();
        for (String[] cell : printed) {
            rows.add(
                    new Row(
                            Integer.parseInt(cell[0]),
                            cell[1],
                            Integer.parseInt(cell[2]),
                            seconds(cell[3]),
                            seconds(cell[4]),
                            seconds(cell[5]),
                            Integer.parseInt(cell[8])));
        }
        return new Worksheet(rows, BigDecimal.valueOf(30));
    }

    private static Duration seconds(String text) {
        return Duration.stated(new BigDecimal(text).movePointRight(3).longValueExact());
    }

    @Test
    void eachRowTakesWhatIsPrinted() {
        for (int i = 0; i < printed.size(); i++) {
            assertEquals(
                    seconds(printed.get(i)[6]).ms(), sheet.rows().get(i).ms(), printed.get(i)[1]);
        }
    }

    @Test
    void eachRowCostsWhatIsPrintedInCents() {
        for (int i = 0; i < printed.size(); i++) {
            BigDecimal cents = new BigDecimal(printed.get(i)[7]);
            assertEquals(
                    cents, sheet.cents(sheet.rows().get(i).ms(), cents.scale()), printed.get(i)[1]);
        }
    }

    @Test
    void theTotalsAreThePrintedOnes() {
        assertEquals(104_300, sheet.totalMs());
        assertEquals(new BigDecimal("86.92"), sheet.cents(sheet.totalMs(), 2));
        assertEquals(new BigDecimal("86.917"), sheet.cents(sheet.totalMs(), 3));
        assertEquals(1, sheet.servicedParts());
    }

    /**
     * Same example: reassembly 130.9 s, ideal time about 9 s a serviced part, efficiency 3.8 %,
     * after redesign 16.5 s.
     */
    @Test
    void theServiceIsAsEfficientAsPrinted() {
        ServiceTime service =
                new ServiceTime(sheet.totalMs(), 130_900, sheet.servicedParts(), 9_000);
        assertEquals(235_200, service.serviceMs());
        assertEquals(3.83, 100 * service.efficiency(), 0.005);
        assertEquals(54.5, 100 * new ServiceTime(16_500, 0, 1, 9_000).efficiency(), 0.05);
        double ideal = (2 * 2.4 + 3.6) / 3 + (2 * 3.8 + 2.2) / 3 + 1.4 + 1.4;
        assertEquals(8.87, ideal, 0.005);
        assertEquals(9, Math.round(ideal));
    }

    @Test
    void timesFromIndexStringsGoIntoTheSameSheet() {
        Duration loosen = IndexString.parse("A1 B0 G1 A1 B0 P3 L16 A1 B0 P1 A0").duration();
        Row row = new Row(1, "remove screws", 4, seconds("4.2"), loosen, seconds("1.4"), 0);
        assertEquals(4_200 + 4 * (8_640 + 1_400), row.ms());
    }

    @Test
    void aTaskIsDoneAtLeastOnce() {
        Duration none = Duration.stated(0);
        assertThrows(IllegalArgumentException.class, () -> new Row(1, "x", 0, none, none, none, 0));
        assertThrows(IllegalArgumentException.class, () -> new ServiceTime(0, 0, 1, 1));
    }
}
