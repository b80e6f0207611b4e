package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.fasten.TorqueEstimate.Limit.Kind;
import reseat.given.TestDevice;
import reseat.internal.fasten.ScrewFormulas;
import reseat.model.Device;
import reseat.model.Seat;

class TorqueAdvisorTest {

    private final FastenerTables tables = TestDevice.tables();
    private final TorqueAdvisor advisor = TorqueAdvisor.of(tables);

    @Test
    void prefersTheMakerThenTheFamilyThenTheEstimate() throws Exception {
        FastenerTables own =
                tables.withRows(
                        "family-torques.csv",
                        "family,thread,material,torque,source,tag\nslates,M2,any,0.9"
                                + " kgf·cm,manual 7,shop\n"
                                + "slates,M2,magnesium,12 N·cm,manual 8,shop\n");
        TorqueAdvisor ofShop = TorqueAdvisor.of(own);
        Device device =
                new TestDevice()
                        .family("slates")
                        .type("m2x4", "M2", 4)
                        .type("m16x4", "M1.6", 4)
                        .screw("given", TestDevice.seat("m2x4").torque(0.2, "service manual p. 4"))
                        .screw("known", TestDevice.seat("m2x4").noTorque())
                        .screw("steel", TestDevice.seat("m2x4").noTorque().material("steel"))
                        .screw("bare", TestDevice.seat("m16x4").noTorque())
                        .build();
        TorqueAdvice given = ofShop.forSeat(device, "given", SeatConditions.unknown());
        assertEquals(TorqueAdvice.Basis.MAKER, given.basis());
        assertEquals(0.2, given.valueNm());
        assertEquals("service manual p. 4", given.from());
        assertTrue(given.estimate().isPresent());
        assertTrue(given.cautions().isEmpty());
        TorqueAdvice known = ofShop.forSeat(device, "known", SeatConditions.unknown());
        assertEquals(TorqueAdvice.Basis.FAMILY, known.basis());
        assertEquals(0.12, known.valueNm(), 1e-12);
        assertTrue(known.cautions().get(0).contains("local codes take precedence"));
        assertEquals(
                0.0882598,
                ofShop.forSeat(device, "steel", SeatConditions.unknown()).valueNm(),
                1e-7);
        TorqueAdvice bare = ofShop.forSeat(device, "bare", SeatConditions.unknown());
        assertEquals(TorqueAdvice.Basis.ESTIMATE, bare.basis());
        assertEquals(TorqueEstimate.CAUTION, bare.cautions().get(0));
        assertTrue(bare.lowNm() < bare.valueNm() && bare.valueNm() < bare.highNm());
    }

    @Test
    void estimatesTheBareWordsOfATechnician() {
        TorqueEstimate estimate = advisor.estimate(advisor.read("M1.6 8.8 into magnesium, 3 mm"));
        assertEquals(Kind.SCREW_YIELD, estimate.governing().kind());
        assertEquals(0.103, estimate.valueNm(), 0.001);
        assertEquals(5, estimate.assumptions().size());
        assertTrue(estimate.assumptions().get(0).startsWith("Friction was not given"));
        assertEquals(TorqueEstimate.CAUTION, estimate.cautions().get(0));
    }

    @Test
    void limitsByTheThreadOfASoftSeat() {
        TorqueEstimate estimate =
                advisor.estimate(advisor.read("M2 8.8 pan T5 oiled tapped into magnesium, 1.5 mm"));
        assertEquals(Kind.SEAT_THREAD, estimate.governing().kind());
        assertTrue(estimate.cautions().stream().anyMatch(c -> c.contains("turns engage")));
    }

    @Test
    void limitsByTheDrive() {
        TorqueEstimate estimate =
                advisor.estimate(advisor.read("M3 12.9 pan T4 oiled tapped into steel, 3 mm"));
        assertEquals(Kind.DRIVE, estimate.governing().kind());
        assertEquals(0.8 * 0.22, estimate.valueNm(), 1e-9);
        assertEquals(0.22, estimate.highNm(), 1e-9);
    }

    @Test
    void limitsByTheFormedThreadOfPlastic() {
        TorqueEstimate estimate =
                advisor.estimate(advisor.read("ST1.8 hardened into pc-abs, 4 mm"));
        assertEquals(Kind.SEAT_THREAD, estimate.governing().kind());
        double strip = 0.5 * 35 * Math.PI * 1.8 * 4;
        assertTrue(
                estimate.governing().told().contains("stripping load 396 N"),
                estimate.governing().told());
        assertEquals(396, strip, 0.5);
    }

    /**
     * The thread takes only its part of the torque: the torsion limit lies above 80 % of the
     * breaking torque.
     */
    @Test
    void comparesTorsionWithTheShareOfTheThreadAlone() {
        TorqueEstimate estimate =
                advisor.estimate(advisor.read("M1.6 8.8 hex T5 oiled tapped into steel, 3 mm"));
        double breaking =
                ScrewFormulas.breakingTorqueNm(tables.thread("M1.6"), tables.strengthClass("8.8"));
        TorqueEstimate.Limit torsion =
                estimate.limits().stream()
                        .filter(l -> l.kind() == Kind.SCREW_TORSION)
                        .findFirst()
                        .orElseThrow();
        assertTrue(torsion.utmostNm() > 1.2 * breaking, torsion.toString());
    }

    @Test
    void namesAllThatIsMissing() {
        String message =
                message(
                        () ->
                                advisor.estimate(
                                        TorqueRequest.builder()
                                                .thread(tables.thread("M2"))
                                                .build()));
        for (String part :
                new String[] {
                    "property class (4.6",
                    "material of the thread (steel",
                    "length of engagement",
                    "friction (zinc-dry",
                    "head (hex",
                    "the drive",
                    "what the seat is"
                }) {
            assertTrue(message.contains(part), message);
        }
    }

    @Test
    void assumesNothingUnlessAllowed() {
        Device device =
                new TestDevice()
                        .type("m2x4", "M2", 4)
                        .screw("a", TestDevice.seat("m2x4").noTorque())
                        .build();
        String message =
                message(
                        () ->
                                advisor.forSeat(
                                        device, "a", new SeatConditions(Optional.empty(), false)));
        assertTrue(
                message.startsWith(
                        "No torque is given for a. The torque cannot be estimated."
                                + " Missing: the friction"),
                message);
        TorqueAdvice told =
                advisor.forSeat(device, "a", SeatConditions.of(tables.friction("oiled")));
        assertEquals(1, told.estimate().orElseThrow().assumptions().size());
    }

    @Test
    void saysThatAnInsertIsNotKnownToHold() {
        TorqueRequest.Builder request =
                TorqueRequest.builder()
                        .thread(tables.thread("M2"))
                        .strength(tables.strengthClass("8.8"))
                        .friction(tables.friction("oiled"))
                        .material(tables.material("brass"))
                        .form(Seat.Form.INSERT)
                        .engagementMm(3)
                        .assumeCautiously();
        TorqueEstimate without = advisor.estimate(request.build());
        assertTrue(without.cautions().stream().anyMatch(c -> c.contains("pulls the insert out")));
        TorqueEstimate with = advisor.estimate(request.pullOutN(200).build());
        assertEquals(Kind.INSERT, with.governing().kind());
        assertTrue(with.valueNm() < without.valueNm());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M1.5 8.8 into steel, 2 mm",
                "M2x0.5 8.8 into steel, 2 mm",
                "M2 8.8 into cheddar, 2 mm",
                "M2 8.8 into steel, 0 mm",
                "M2 8.8 into steel, -2 mm",
                "M2 8.8 into steel, 2",
                "M2 8.8 into steel, 2 kg",
                "M2 8.8 into steel, 2 mm, 3 mm",
                "M2 8.8 into steel",
                "8.8 into steel, 2 mm",
                "M10 brass into steel, 8 mm",
                "M2 8.8 T25 into steel, 2 mm",
                ""
            })
    void refusesWordsThatCannotBeWorkedWith(String text) {
        assertFalse(message(() -> advisor.estimate(advisor.read(text))).isBlank());
    }

    @ParameterizedTest
    @CsvSource({
        "'M2 8.8 into steel, 2', a length needs a unit",
        "'M2 8.8 into cheddar, 2 mm', There is no material \"cheddar\"",
        "'M10 brass into steel, 8 mm', known up to M6 only",
        "'M2 8.8 into steel, 2 mm, 3 mm', A second length",
        "'M2 8.8 T25 into steel, 2 mm', 'T25 is 4.5 mm across and does not fit into the widest head known for M2'",
        "'M2 8.8 pan PH3 into steel, 2 mm', 'does not fit into a head of 4 mm'",
        "'M2 8.8 grub T8 into steel, 2 mm', 'T8 is 2.4 mm across and does not fit into a screw of 2 mm'",
        "'M2 8.8 head 40 mm into steel, 3 mm', 'too wide for M2'"
    })
    void saysWhy(String text, String why) {
        String message = message(() -> advisor.estimate(advisor.read(text)));
        assertTrue(message.contains(why), message);
    }

    private static String message(Executable run) {
        return String.valueOf(assertThrows(FastenerInputException.class, run).getMessage());
    }
}
