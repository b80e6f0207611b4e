package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which test covers which table of the facts that is marked read or recomputed. {@link
 * #namesTestsThatExist} keeps the list true to the code.
 *
 * <p>Not held as data, so not tested: hardness and elongation (3a, 3b: no computation uses them),
 * MISUMI's k by material and Q by tool (4b; the caller tells them), hole tolerance, relief
 * counterbore and driving speed of plastic bosses (6), ASME inch sizes of recesses (7b: no inch
 * threads here), the older B set of ISO 10664 (7a: A agrees). The orders of section 9 are in
 * TighteningPatternTest.
 */
class FactsCoverageTest {

    @ParameterizedTest
    @CsvSource({
        "1 table, StrengthTablesTest, recomputesBreakingTorques",
        "1 recomputed, StrengthTablesTest, agreesWithTheRecomputedColumns",
        "1 W_P, StrengthTablesTest, usesTheLeastCore",
        "1 DIN 7500, StrengthTablesTest, holdsTheFormingScrewsForMetal",
        "2 coarse, ThreadTablesTest, agreesWithTheCoarseSeries",
        "2 limits, ThreadTablesTest, computesTheLimitsThatWereRead",
        "2 choice, ThreadTablesTest, holdsTheChoice",
        "2 miniature, ThreadTablesTest, agreesWithTheMiniatureSeries",
        "2 UNM limits, ThreadTablesTest, holdsTheLimitsOfTheMiniatureThread",
        "2 old JIS, ThreadTablesTest, knowsOldSizes",
        "2 dw, FastenerTablesTest, holdsBearingFaces",
        "3a, StrengthTablesTest, agreesWithTheSteelClasses",
        "3a loads, StrengthTablesTest, multipliesToTheLoadsOfTheStandard",
        "3b, StrengthTablesTest, agreesWithTheStainlessGrades",
        "3b plausibility, StrengthTablesTest, findsTheStainlessTablePlausible",
        "4a i, PreloadTablesTest, agreesWithTheFineM8",
        "4a i M10, PreloadTablesTest, agreesWithTheFineM10",
        "4a ii, PreloadTablesTest, agreesWithTheCoarseTable",
        "4a ii recomputed, PreloadTablesTest, agreesWithTheRecomputedColumns",
        "4a iii forces, PreloadTablesTest, agreesWithTheStainlessTable",
        "4a iii torques, PreloadTablesTest, agreesWithTheStainlessTorques",
        "4a iii beckhoff, PreloadTablesTest, agreesWithTheSecondStainlessSource",
        "4a iv, PreloadTablesTest, comesNearEveryCellOfTheSmallestRow",
        "4a starting table, PreloadTablesTest, recomputesTheStartingTable",
        "4a alphaA, PreloadTablesTest, leavesTheLeastPreloadOfTheExample",
        "4b K, PreloadTablesTest, linksNutFactorAndFriction",
        "4b A, PreloadTablesTest, reproducesTheMisumiExample",
        "4b B, PreloadTablesTest, reproducesTheShigleyExample",
        "5 H28, StripFormulasTest, givesTheEngagementOfEqualStrength",
        "5 example, StripFormulasTest, reproducesBothStrippingExamples",
        "5 pull-out, StripFormulasTest, givesTheCautiousPullOut",
        "5 trials, StripFormulasTest, holdsTheTrials",
        "5 AZ91, StripFormulasTest, reproducesTheMagnesiumExample",
        "6 guidance, FactsCoverageTest, holdsTheGuidanceForPlastic",
        "6 breaking loads, StrengthTablesTest, holdsTheBreakingLoadsOfScrewsForPlastics",
        "7a A B, DrivesTest, holdsHexalobularSizes",
        "7a f, DrivesTest, holdsFlares",
        "7a t, DrivesTest, holdsPenetrationOfHexalobularRecesses",
        "7a to 7d by screw, DrivesTest, holdsEveryRowOfTheTablesByScrew",
        "7b b g, DrivesTest, holdsCrossSizes",
        "7b alpha beta, DrivesTest, holdsAnglesOfTheCross",
        "7b m, DrivesTest, holdsDiametersOfCrossRecesses",
        "7b key difference, DrivesTest, tellsIsoFromJisRecesses",
        "7c t, DrivesTest, holdsDepthsOfSockets",
        "7d minimum, DrivesTest, holdsLeastWidthsOfSlots",
        "8 exact, TorqueUnitsTest, holdsExactFactors",
        "8 NIST, TorqueUnitsTest, agreesWithSevenFiguresOfNist",
        "8 ratios, TorqueUnitsTest, convertsExactly",
        "8 spot checks, TorqueUnitsTest, passesTheSpotChecks",
        "10 rows 1 2, StrengthTablesTest, passesTheReadyMadeBreakingTests",
        "10 rows 4 5 6, PreloadTablesTest, passesTheReadyMadePreloadTests"
    })
    void namesTestsThatExist(String section, String test, String method) throws Exception {
        assertTrue(
                Arrays.stream(Class.forName("reseat.fasten." + test).getDeclaredMethods())
                        .anyMatch(m -> m.getName().equals(method)),
                section);
    }

    /** Guidance for bosses in plastic that decides something here, as read (facts 6). */
    @Test
    void holdsTheGuidanceForPlastic() {
        FastenerTables tables = FastenerTables.standard();
        assertRule(tables, "plastic-engagement-diameters", 2, 3);
        assertRule(tables, "plastic-hole-depth-diameters", 2.7, 2.7);
        assertRule(tables, "plastic-boss-diameters", 2.0, 2.5);
        assertRule(tables, "plastic-cycles", 10, 10);
        assertRule(tables, "incomplete-threads", 2, 3);
    }

    private static void assertRule(FastenerTables tables, String id, double low, double high) {
        Rule rule = tables.rule(id);
        assertEquals(low, rule.low(), id);
        assertEquals(high, rule.high(), id);
    }
}
