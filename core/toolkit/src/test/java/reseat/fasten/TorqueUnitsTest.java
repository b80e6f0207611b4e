package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.given.TestDevice;

/**
 * Units of torque (facts 8 and 10); factors exact, seven figures as CRAN NISTunits quotes NIST SP
 * 811 B.8.
 */
class TorqueUnitsTest {

    private final TorqueUnits units = TestDevice.tables().torqueUnits();

    @ParameterizedTest
    @CsvSource({
        "mN·m, 0.001, 1000",
        "N·cm, 0.01, 100",
        "kgf·m, 9.80665, 0.1019716213",
        "kgf·cm, 0.0980665, 10.19716213",
        "gf·cm, 0.0000980665, 10197.16213",
        "lbf·in, 0.1129848290276167, 8.850745791",
        "ozf·in, 0.00706155181422604375, 141.6119327",
        "lbf·ft, 1.3558179483314004, 0.7375621493",
        "dyn·cm, 1e-7, 1e7"
    })
    void holdsExactFactors(String name, BigDecimal newtonMetres, BigDecimal perNewtonMetre) {
        TorqueUnit unit = units.unit(name);
        assertEquals(
                0,
                newtonMetres.compareTo(unit.newtonMetres()),
                unit.newtonMetres().toPlainString());
        BigDecimal per = Torque.newtonMetres(1).in(unit);
        assertEquals(
                0,
                per.round(new MathContext(perNewtonMetre.precision())).compareTo(perNewtonMetre),
                per.toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"kgf·m, 9.80665", "lbf·in, 0.1129848", "ozf·in, 0.007061552", "lbf·ft, 1.355818"})
    void agreesWithSevenFiguresOfNist(String name, BigDecimal nist) {
        assertEquals(
                0,
                units.unit(name)
                        .newtonMetres()
                        .round(new MathContext(nist.precision()))
                        .compareTo(nist));
    }

    @Test
    void derivesFactorsFromTheDefinitions() {
        BigDecimal lbf = new BigDecimal("4.4482216152605");
        assertEquals(
                0,
                lbf.multiply(new BigDecimal("0.0254"))
                        .compareTo(units.unit("lbf·in").newtonMetres()));
        assertEquals(
                0,
                lbf.multiply(new BigDecimal("0.3048"))
                        .compareTo(units.unit("lbf·ft").newtonMetres()));
    }

    @ParameterizedTest
    @CsvSource({
        "1 lbf·in, ozf·in, 16", "1 lbf·ft, lbf·in, 12", "1 lbf·ft, ozf·in, 192",
                "1 kgf·cm, N·cm, 9.80665",
        "1 kgf·cm, mN·m, 98.0665", "0.6 kgf·cm, mN·m, 58.8399", "1 kgf·m, kgf·cm, 100",
                "1 N·m, dyn·cm, 10000000"
    })
    void convertsExactly(String from, String to, BigDecimal expected) {
        assertEquals(0, expected.compareTo(units.parse(from).in(units.unit(to))));
    }

    /** Spot checks of facts 8, to the figures printed there. */
    @ParameterizedTest
    @CsvSource({
        "1 kgf·cm, ozf·in, 13.8874",
        "1 kgf·cm, lbf·in, 0.867962",
        "5 lbf·in, N·m, 0.564924",
        "20 ozf·in, N·m, 0.141231",
        "1 N·m, lbf·ft, 0.737562"
    })
    void passesTheSpotChecks(String from, String to, BigDecimal expected) {
        BigDecimal got = units.parse(from).in(units.unit(to));
        assertEquals(0, got.round(new MathContext(6)).compareTo(expected), got.toPlainString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.6 kgf·cm",
                "0.6kgf.cm",
                "0.6 kgf cm",
                "0.6 kgf-cm",
                "0.6 kgf*cm",
                "0,6 kg·cm",
                "0.6 kg-cm",
                "6e-1 KGF·CM"
            })
    void readsTheSpellingsOfShops(String text) {
        assertEquals(0, new BigDecimal("0.0588399").compareTo(units.parse(text).newtonMetres()));
    }

    @ParameterizedTest
    @CsvSource({
        "8 in-lb, lbf·in",
        "8 oz-in, ozf·in",
        "8 in oz, ozf·in",
        "8 ft·lbs, lbf·ft",
        "8 Nm, N·m",
        "8 Ncm, N·cm",
        "8 cNm, cN·m"
    })
    void readsTurnedRoundAndShortSpellings(String text, String unit) {
        assertEquals(unit, units.parse(text).unit().name());
    }

    @Test
    void keepsSmallAndLargePrefixesApart() {
        assertEquals("mN·m", units.parse("5 mN·m").unit().name());
        assertTrue(message("5 MN·m").contains("no unit of torque"), message("5 MN·m"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "0.6", "12 "})
    void asksForAMissingUnit(String text) {
        assertTrue(message(text).contains("has no unit. Known: N·m, mN·m"), message(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 kg", "5 N", "5 N/m", "5 mm", "5 N·m·m", "5 bananas"})
    void refusesImpossibleUnits(String text) {
        assertTrue(message(text).contains("There is no unit of torque"), message(text));
        assertTrue(message(text).contains("Known: N·m"), message(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 N·m", "-1 N·m"})
    void refusesTorquesThatAreNotAboveZero(String text) {
        assertTrue(message(text).contains("not above 0"), message(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,000 N·mm", "1,500 N·mm", "250,000 mN·m"})
    void refusesACommaThatMayPartThousands(String text) {
        assertTrue(message(text).contains("ambiguous"), message(text));
    }

    @ParameterizedTest
    @CsvSource({"'0,125 N·m', 0.125", "'1,25 N·m', 1.25", "'1000,5 N·mm', 1.0005"})
    void readsACommaThatCanOnlyBeginAFraction(String text, BigDecimal newtonMetres) {
        assertEquals(0, newtonMetres.compareTo(units.parse(text).newtonMetres()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "N·m", "abc", "1.2.3 N·m", "1e999 N·m"})
    void refusesWhatIsNoTorque(String text) {
        assertThrows(FastenerInputException.class, () -> units.parse(text));
    }

    private String message(String text) {
        return String.valueOf(
                assertThrows(FastenerInputException.class, () -> units.parse(text)).getMessage());
    }
}
