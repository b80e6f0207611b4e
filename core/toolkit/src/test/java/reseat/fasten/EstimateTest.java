package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.fasten.TorqueEstimate.Limit;
import reseat.given.TestDevice;
import reseat.model.Seat;

/** Estimates of torques, worked out beside the code, and the words in which they are asked for. */
class EstimateTest {

    private final FastenerTables tables = TestDevice.tables();
    private final TorqueAdvisor advisor = TorqueAdvisor.of(tables);

    private TorqueEstimate estimate(String words) {
        return advisor.estimate(advisor.read(words));
    }

    private String refusal(String words) {
        return String.valueOf(
                assertThrows(FastenerInputException.class, () -> estimate(words)).getMessage());
    }

    private static Limit limit(TorqueEstimate estimate, Limit.Kind kind) {
        return estimate.limits().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
    }

    /**
     * P = 0.4, d2 = 1.740192, d3 = 1.509252, As = 2.0732 mm²; ISO 965 6g/6H: d 1.886 to 1.981, d2
     * at least 1.654, D2 at most 1.830, D1 at most 1.679; dw = 0.92 * 3.5, dh = 2.4 (ISO 273), mu
     * 0.08 to 0.16. VDI 2230: F = share 640 As / sqrt(1 + 3 (1.5 d2/d0 (P/(pi d2) + mu/cos 30°))²)
     * = 844 N at 70 %; M = F (0.16 P + 0.58 d2 mu + (dw + dh)/4 mu) with an arm of 0.257145 mm. ISO
     * 898-7: 0.84 * 800 pi/16 (1.654 - 0.616025 P)³ = 0.36798 N·m, of which the thread takes 56.29
     * %. Shear area of the hole 10.324 mm², of the screw 7.341 mm².
     */
    @Test
    void anM2InMagnesiumIsWorkedOut() {
        TorqueEstimate estimate =
                estimate("M2 8.8 pan T5 oiled tapped into magnesium, 3 mm, head 3.5 mm");
        assertEquals(
                List.of("SEAT_THREAD", "SCREW_YIELD", "DRIVE", "SCREW_TORSION", "SCREW_THREAD"),
                estimate.limits().stream().map(l -> l.kind().name()).toList(),
                "what gives way first is told first");
        assertLimit(0.185839, 0.260175, limit(estimate, Limit.Kind.SEAT_THREAD));
        assertLimit(0.216928, 0.278908, limit(estimate, Limit.Kind.SCREW_YIELD));
        assertLimit(0.344, 0.43, limit(estimate, Limit.Kind.DRIVE));
        assertLimit(0.392241, 0.522989, limit(estimate, Limit.Kind.SCREW_TORSION));
        assertLimit(0.453054, 0.634276, limit(estimate, Limit.Kind.SCREW_THREAD));
        assertEquals(0.185839, estimate.valueNm(), 1e-6);
        assertEquals(0.148671, estimate.lowNm(), 1e-6);
        assertEquals(0.260175, estimate.highNm(), 1e-6);
        assertEquals(412.71, estimate.preloadLowN(), 0.01);
        assertEquals(722.70, estimate.preloadHighN(), 0.01);
    }

    private static void assertLimit(double cautious, double utmost, Limit limit) {
        assertEquals(cautious, limit.cautiousNm(), 1e-6, limit.told());
        assertEquals(utmost, limit.utmostNm(), 1e-6, limit.told());
    }

    @Test
    void everyLimitTellsTheNumbersItComesFrom() {
        TorqueEstimate estimate =
                estimate("M2 8.8 pan T5 oiled tapped into magnesium, 3 mm, head 3.5 mm");
        assertEquals(
                List.of(
                        "50 to 70 % of the stripping load 1450 N of 3 mm in magnesium,"
                                + " shear strength"
                                + " 140 N/mm²",
                        "70 to 90 % of the yield stress 640 N/mm² at friction 0.08:"
                                + " preload 844 to 1080"
                                + " N",
                        "80 to 100 % of 0.43 N·m, the least that T5 drivers are sold or tested for",
                        "60 to 80 % of the breaking torque 0.368 N·m; the thread takes 56 % of the"
                                + " torque",
                        "50 to 70 % of the stripping load 3520 N of the screw's own thread, shear"
                                + " strength 0.6 of 800 N/mm²"),
                estimate.limits().stream().map(Limit::told).toList());
        assertEquals(
                List.of(
                        "thread: M2, pitch 0.4 mm, stress area 2.07 mm²",
                        "screw: 8.8, yield 640 N/mm²",
                        "friction: oiled, 0.08 to 0.16",
                        "head: pan, bears on 3.22 mm over a hole of 2.4 mm",
                        "drive: T5",
                        "seat: tapped in magnesium, shear strength 140 N/mm²",
                        "engagement: 3 mm"),
                estimate.inputs().stream().map(i -> i.name() + ": " + i.value()).toList());
        assertEquals(
                List.of("The hole under the head was not given; assumed 2.4 mm, ISO 273 medium."),
                estimate.assumptions());
        assertEquals(List.of(TorqueEstimate.CAUTION), estimate.cautions());
        assertEquals("the thread of the seat strips", estimate.governing().kind().words());
    }

    @Test
    void whatIsNotToldIsAssumedOneByOne() {
        assertEquals(
                List.of(
                        "Friction was not given; assumed from 0.08 to 0.3.",
                        "The head was not given; assumed to bear on 3.07 mm, the least"
                                + " that is known for"
                                + " M2.",
                        "The form of the seat was not given; assumed a tapped hole.",
                        "The drive was not given; it does not limit the value.",
                        "The hole under the head was not given; assumed 2.4 mm, ISO 273 medium."),
                estimate("M2 8.8 into steel, 3 mm").assumptions());
    }

    @ParameterizedTest
    @CsvSource({
        "'M2 8.8 into brass, 3 mm', an insert.",
        "'ST1.8 hardened into pc-abs, 4 mm', formed by the screw."
    })
    void theSeatIsAssumedByThreadAndMaterial(String words, String assumed) {
        assertTrue(
                estimate(words)
                        .assumptions()
                        .contains("The form of the seat was not given; assumed " + assumed));
    }

    /** Five full turns of M2 are 2 mm. */
    @Test
    void fewerThanFiveTurnsShareTheLoadBadly() {
        assertEquals(
                List.of(TorqueEstimate.CAUTION), estimate("M2 8.8 into steel, 2 mm").cautions());
        assertEquals(
                "Only 4.7 turns engage; fewer than 5 share the load badly.",
                estimate("M2 8.8 into steel, 1.9 mm").cautions().get(1));
    }

    private TorqueRequest.Builder boss(String thread, String material, double outerMm) {
        return TorqueRequest.builder()
                .thread(tables.thread(thread))
                .strength(tables.strengthClass("8.8"))
                .material(tables.material(material))
                .form(Seat.Form.TAPPED)
                .engagementMm(3)
                .bossOuterMm(outerMm)
                .assumeCautiously();
    }

    /** Rule boss-wall-diameters: 1.9 d, which is 3.8 mm for M2. */
    @Test
    void aThinBossMaySplit() {
        String thin = "The boss of 3.7 mm is thinner than 3.8 mm and may widen or split before the";
        assertTrue(
                advisor.estimate(boss("M2", "steel", 3.7).build())
                        .cautions()
                        .get(1)
                        .startsWith(thin));
        assertEquals(1, advisor.estimate(boss("M2", "steel", 3.8).build()).cautions().size());
        assertFalse(
                advisor
                        .estimate(boss("M2", "steel", 3.7).form(Seat.Form.INSERT).build())
                        .cautions()
                        .stream()
                        .anyMatch(c -> c.startsWith("The boss")),
                "an insert does not spread it");
    }

    /** Rule plastic-boss-diameters: 2.0 d. */
    @Test
    void plasticAsksForAThickerBossAndCreeps() {
        List<String> cautions = advisor.estimate(boss("M2", "pc-abs", 3.9).build()).cautions();
        assertTrue(cautions.get(1).startsWith("The boss of 3.9 mm is thinner than 4 mm"));
        assertTrue(cautions.get(2).startsWith("Plastic creeps"));
    }

    /** Half of 200 N at the arm for oiled M2 under the least head, 3.07 over 2.4 mm: 0.2541 mm. */
    @Test
    void anInsertIsHeldByItsPullOutLoad() {
        TorqueRequest request =
                boss("M2", "brass", 9)
                        .form(Seat.Form.INSERT)
                        .friction(tables.friction("oiled"))
                        .pullOutN(200)
                        .build();
        Limit insert = limit(advisor.estimate(request), Limit.Kind.INSERT);
        assertLimit(0.0254145, 0.0355802, insert);
        assertEquals("50 to 70 % of the pull-out load 200 N", insert.told());
    }

    @Test
    void aDriveOfUnknownStrengthDoesNotLimit() {
        TorqueEstimate estimate = estimate("M2 8.8 5L0.8 into steel, 3 mm");
        assertTrue(estimate.limits().stream().noneMatch(l -> l.kind() == Limit.Kind.DRIVE));
        assertEquals(
                "The torque that drive 5L0.8 withstands is not known; it does not limit the value.",
                estimate.cautions().get(1));
    }

    @ParameterizedTest
    @CsvSource({
        "'M2 M2.5 8.8 into steel, 3 mm', 'A second thread \"M2.5\" beside \"M2\".'",
        "'M2 8.8 10.9 into steel, 3 mm', 'A second property class \"10.9\" beside \"8.8\".'",
        "'M2 8.8 into steel magnesium, 3 mm', 'A second material \"magnesium\" beside \"steel\".'",
        "'M2 8.8 tapped nut into steel, 3 mm', 'A second form of seat \"nut\" beside \"tapped\".'",
        "'M2 8.8 oiled zinc-dry into steel, 3 mm', 'A second friction \"zinc-dry\""
                + " beside \"oiled\".'",
        "'M2 8.8 pan csk into steel, 3 mm', 'A second head \"csk\" beside \"pan\".'",
        "'M2 8.8 T5 T6 into steel, 3 mm', 'A second drive \"T6\" beside \"T5\".'"
    })
    void nothingIsToldTwice(String words, String why) {
        assertEquals(why, refusal(words));
    }

    @ParameterizedTest
    @CsvSource({
        "'M2 8.8 into steel, 0.3 cm', 3",
        "'M2 8.8 into steel, 0,3 cm', 3",
        "'M2 8.8 into steel, 0.1 in', 2.54",
        "'M2 8.8 in steel, 3mm deep', 3",
        "'M2 class 8.8 in magnesium, 3 mm', 3"
    })
    void lengthsComeInTheUnitsOfTheTrade(String words, double mm) {
        assertEquals(mm, advisor.read(words).engagementMm().orElseThrow(), 1e-9);
    }

    @Test
    void anEngagementIsUpToAMetre() {
        assertEquals(
                1000, advisor.read("M2 8.8 into steel, 1 m").engagementMm().orElseThrow(), 1e-9);
        assertEquals(
                "An engagement of \"1001mm\" is too long for any screw; the maximum is 1000 mm.",
                refusal("M2 8.8 into steel, 1001 mm"));
    }

    @Test
    void aHeadIsToldByFormOrDiameterOrBoth() {
        assertEquals(
                0.92 * 3.2,
                advisor.read("M2 8.8 head 3.2 mm into steel, 3 mm")
                        .head()
                        .orElseThrow()
                        .bearingMm(),
                1e-9);
        assertEquals(
                3.2,
                advisor.read("M2 8.8 csk head 3.2 mm into steel, 3 mm")
                        .head()
                        .orElseThrow()
                        .bearingMm(),
                1e-9,
                "a cone bears to its rim");
        assertTrue(advisor.read("M2 8.8 into steel, 3 mm").head().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "'M2 8.8 head 2 mm into steel, 3 mm', A head of 2 mm is no wider than the thread M2.",
        "'M2 8.8 into steel, nan', '\"nan\" is not a number; expected a length such as 3 mm.'",
        "'M2 8.8 into steel, 3 furlongs', '\"3\" is not a property class, and a length"
                + " needs a unit:'",
        "'M2 8.8 into steel, 3ft', '\"3ft\" is not a length; its unit must be mm, cm or in.'",
        "'M2 8.8 panne into steel, 3 mm', '\"panne\" is not a thread, class, head,"
                + " drive, friction or'"
    })
    void whatMakesNoSenseIsNamed(String words, String why) {
        assertTrue(refusal(words).startsWith(why), refusal(words));
    }

    /** The hole that is usual for M2 is 2.4 mm; a head of 2.5 mm bears on 2.3 mm only. */
    @Test
    void aHeadThatWouldFallThroughTheUsualHoleHasANarrowerOne() {
        assertTrue(
                estimate("M2 8.8 head 2.5 mm into steel, 3 mm")
                        .assumptions()
                        .contains(
                                "The hole under the head was not given; the head would"
                                        + " fall through the"
                                        + " 2.4 mm that is usual, so it is taken as"
                                        + " wide as the thread,"
                                        + " 2 mm."));
        TorqueRequest wide =
                boss("M2", "steel", 9).head(tables.headSize("pan", 3)).holeMm(3).build();
        assertEquals(
                "A head of 3 mm falls through a hole of 3 mm.",
                assertThrows(FastenerInputException.class, () -> advisor.estimate(wide))
                        .getMessage());
    }
}
