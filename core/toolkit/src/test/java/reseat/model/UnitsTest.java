package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    private static void same(String expected, BigDecimal actual) {
        assertEquals(
                0,
                new BigDecimal(expected).compareTo(actual),
                () -> expected + " is not " + actual);
    }

    /**
     * Factors by the definitions of inch, pound and kilogram-force; figures of NIST SP 811 where it
     * has them.
     */
    @ParameterizedTest
    @CsvSource({
        "0.06 N·m, 0.06",
        "1 mN·m, 0.001",
        "6 N·cm, 0.06",
        "60 N·mm, 0.06",
        "1 kgf·m, 9.80665",
        "0.6 kgf·cm, 0.0588399",
        "1 gf·cm, 0.0000980665",
        "1 lbf·in, 0.1129848290276167",
        "16 ozf·in, 0.1129848290276167",
        "1 lbf·ft, 1.3558179483314004",
        "12 lbf·in, 1.3558179483314004",
        "1 dyn·cm, 1e-7",
        "20 ozf·in, 0.141231036284520875",
    })
    void convertsTorquesExactly(String text, String newtonMetres) {
        same(newtonMetres, Units.torqueNm(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6 N·cm",
                "6N·cm",
                "6 N.cm",
                "6 N*cm",
                "6 N cm",
                "6 Ncm",
                " 6.0  N-cm ",
                "6 N⋅cm",
                "6e0 Ncm"
            })
    void theDotOfATorqueMayBeWrittenInManyWays(String text) {
        same("0.06", Units.torqueNm(text));
    }

    @Test
    void convertsLengthsAndTimesExactly() {
        same("1.6", Units.lengthMm("1.6 mm"));
        same("2", Units.lengthMm("0.2cm"));
        same("2.54", Units.lengthMm("0.1 in"));
        same("0.05", Units.lengthMm("50 µm"));
        same("0.05", Units.lengthMm("50 \u03BCm"));
        same("0.05", Units.lengthMm("50 um"));
        same("4200", Units.timeMs("4.2 s"));
        same("850", Units.timeMs("850 ms"));
        same("90000", Units.timeMs("1.5 min"));
        same("7200000", Units.timeMs("2 h"));
    }

    @Test
    void aWrongUnitNamesTheKnownOnes() {
        String message =
                assertThrows(IllegalArgumentException.class, () -> Units.torqueNm("8 lbs"))
                        .getMessage();
        assertTrue(
                message.contains("there is no unit \"lbs\"") && message.contains("ozf·in, lbf·in"),
                message);
    }

    @Test
    void aUnitOfAnotherKindIsCalledThat() {
        String message =
                assertThrows(IllegalArgumentException.class, () -> Units.lengthMm("3 N·m"))
                        .getMessage();
        assertTrue(message.contains("\"N·m\" is a unit of torque"), message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "1,6 mm",
                "NaN mm",
                "Infinity mm",
                "1.6",
                "0x10 mm",
                "1e9999 mm",
                "1 2 mm",
                "--1 mm"
            })
    void refusesWhatIsNoLength(String text) {
        assertThrows(IllegalArgumentException.class, () -> Units.lengthMm(text));
    }

    @Test
    void megaIsNotMilli() {
        assertThrows(IllegalArgumentException.class, () -> Units.torqueNm("6 MN·m"));
    }
}
