package reseat.fasteners.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.check.Check;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.FastenerTables;
import reseat.given.TestDevice;
import reseat.model.Bond;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Point;
import reseat.model.Seat;
import reseat.model.Severity;

class FastenerChecksTest {

    private static final FastenerTables TABLES = FastenerTables.standard();

    @Test
    void hasNothingToSayOfACleanDevice() {
        Device device =
                new TestDevice()
                        .type("m2x4", "M2", 4)
                        .screw("right", TestDevice.seat("m2x4").lengths(0, 4).behind("cell", 3))
                        .type("m2x6", "M2", 6, t -> TestDevice.finish(t, "silver"))
                        .type("st", "ST2", 6, t -> TestDevice.strength(t, ""))
                        .screw("long", TestDevice.seat("m2x6").lengths(2, 5).behind("cell", 1))
                        .screw(
                                "boss",
                                TestDevice.seat("st")
                                        .form(Seat.Form.FORMED)
                                        .material("pc-abs")
                                        .lengths(1, 6)
                                        .depth(6)
                                        .torque(0.08))
                        .bond("glue", bond(4, 0))
                        .build();
        assertEquals(List.of(), run(CheckInput.of(device).withDrives(List.of("T5", "PH0"))));
    }

    @Test
    void describesEveryCheck() {
        List<Check> checks = FastenerChecks.all();
        assertEquals(checks.size(), checks.stream().map(c -> c.info().id()).distinct().count());
        for (Check check : checks) {
            assertTrue(
                    check.info().finds().endsWith(".") && check.info().matters().endsWith("."),
                    check.info().id());
            assertTrue(!check.info().tags().isEmpty(), check.info().id());
        }
    }

    @Test
    void findsALookAlikeThatReachesTheCell() {
        Device device =
                bench().type("m2x4.8", "M2", 4.8)
                        .screw("longer", TestDevice.seat("m2x4.8").lengths(0.8, 4))
                        .origin("/joints/right", 12)
                        .build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(
                List.of("wrong-screw-possible", "wrong-screw-possible"),
                found.stream().map(Finding::check).toList());
        assertEquals(Severity.WARNING, found.get(1).severity(), "the short one in the deep seat");
        Finding finding = found.get(0);
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals("/joints/right", finding.subject());
        assertEquals(12, finding.at().line());
        assertTrue(finding.message().contains("m2x4.8 can be taken for m2x4"), finding.message());
        assertTrue(finding.message().contains("goes 0.3 mm into the cell"), finding.message());
    }

    @Test
    void looksOnlyAtScrewsThatThePlanTakesOut() {
        Device device =
                bench().type("m2x4.8", "M2", 4.8)
                        .screw("longer", TestDevice.seat("m2x4.8").lengths(0.8, 4))
                        .build();
        assertEquals(List.of(), run(CheckInput.of(device).withJoints(List.of("right"))));
        assertEquals(2, run(CheckInput.of(device).withJoints(List.of("right", "longer"))).size());
        CheckInput sharp =
                CheckInput.of(device)
                        .set("wrong-screw-possible", "lengthSeenCellMm", "0.5")
                        .set("wrong-screw-possible", "lengthSeenMm", "0.5");
        List<Finding> told = run(sharp);
        assertEquals(1, told.size(), "a cell is not left to the eye");
        assertEquals(Severity.WARNING, told.get(0).severity());
        assertTrue(
                told.get(0).evidence().contains("told apart by length 4 / 4.8 mm"),
                told.toString());
    }

    @Test
    void findsTooLittleThread() {
        Finding finding =
                only(
                        bench().screw("s", TestDevice.seat("m2x4").lengths(2.5, 3)).build(),
                        "under-engagement");
        assertTrue(
                finding.message().contains("engages 1.5 mm (3.8 turns); 2 mm is the least"),
                finding.message());
        Device modest = bench().screw("s", TestDevice.seat("m2x4").lengths(1, 3.5)).build();
        Finding note = only(modest, "under-engagement");
        assertEquals(Severity.NOTE, note.severity());
        assertTrue(note.message().contains("engages 3 mm; 4 mm is good practice"), note.message());
        Device tooThick = bench().screw("s", TestDevice.seat("m2x4").lengths(4.5, 3)).build();
        assertEquals(Severity.ERROR, only(tooThick, "under-engagement").severity());
    }

    @Test
    void findsAScrewThatBottoms() {
        Finding finding =
                only(
                        bench().screw(
                                        "s",
                                        TestDevice.seat("m2x4")
                                                .material("steel")
                                                .lengths(1, 2.5)
                                                .depth(2.8))
                                .build(),
                        "screw-bottoms");
        assertTrue(
                finding.message().contains("bottoms 0.2 mm before the head clamps"),
                finding.message());
        assertTrue(finding.evidence().contains("depth of hole 2.8 mm"));
    }

    @ParameterizedTest
    @CsvSource({"0.5, ERROR", "0.6, ERROR", "0.7, WARNING", "0.85, ''"})
    void findsAScrewThatReachesTheCell(double gap, String severity) {
        Device device =
                bench().screw(
                                "s",
                                TestDevice.seat("m2x4")
                                        .material("steel")
                                        .lengths(1, 2.4)
                                        .behind("cell", gap))
                        .build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(severity, found.isEmpty() ? "" : found.get(0).severity().name());
        found.forEach(f -> assertEquals("protrusion-into-hazard", f.check()));
    }

    @Test
    void findsATorqueThatNothingStands() {
        Device device =
                bench().screw(
                                "s",
                                TestDevice.seat("m2x4").lengths(0, 4.2).torque(1.8, "manual p. 3"))
                        .build();
        Finding finding = only(device, "torque-above-limit");
        assertEquals(Severity.ERROR, finding.severity());
        assertTrue(
                finding.message().startsWith("The torque of 1.8 N·m (manual p. 3) is above"),
                finding.message());
    }

    @Test
    void findsAMissingTorqueAndOffersAnEstimate() {
        Finding estimated =
                only(
                        bench().screw("s", TestDevice.seat("m2x4").lengths(0, 4.2).noTorque())
                                .build(),
                        "torque-missing");
        assertEquals(Severity.NOTE, estimated.severity());
        assertTrue(
                estimated.evidence().get(0).startsWith("estimate 0."),
                estimated.evidence().toString());
        Device bare =
                new TestDevice()
                        .type("m2x4", "M2", 4, t -> TestDevice.strength(t, ""))
                        .screw("s", TestDevice.seat("m2x4").lengths(0, 4.2).noTorque())
                        .build();
        Finding none = only(bare, "torque-missing");
        assertEquals(Severity.WARNING, none.severity());
        assertTrue(
                none.evidence().get(0).contains("Missing: the property class"),
                none.evidence().toString());
    }

    @Test
    void findsTorquesThatDisagreeWithTheirSource() {
        Device device =
                bench().screw(
                                "s",
                                TestDevice.seat("m2x4")
                                        .lengths(0, 4.2)
                                        .torque(0.06, "manual p. 9: 0.6 kgf·cm x 2, 12 N·cm"))
                        .build();
        assertEquals(List.of(), run(CheckInput.of(device)), "one of the torques named agrees");
        Device wrong =
                bench().screw(
                                "s",
                                TestDevice.seat("m2x4")
                                        .lengths(0, 4.2)
                                        .torque(0.06, "manual p. 9: 6 kgf·cm"))
                        .build();
        assertTrue(
                only(wrong, "torque-disagrees")
                        .message()
                        .contains("0.06 N·m, but 0.588 N·m stands in its own source"));
    }

    @Test
    void findsTorquesThatDisagreeBetweenSeatsAndWithTheFamily() throws Exception {
        Device twins =
                bench().screw("a", TestDevice.seat("m2x4").lengths(0, 4.2).torque(0.1))
                        .screw("b", TestDevice.seat("m2x4").lengths(0, 4.2).torque(0.12))
                        .build();
        assertTrue(
                only(twins, "torque-disagrees")
                        .message()
                        .contains("stands in a, a seat that is alike"));
        FastenerTables own =
                TABLES.withRows(
                        "family-torques.csv",
                        "family,thread,material,torque,source,tag\nslates,M2,any,15 N·cm,manual,shop\n");
        Device family = bench().family("slates").build();
        List<Finding> found = run(CheckInput.of(family, own));
        assertEquals(List.of("torque-disagrees"), found.stream().map(Finding::check).toList());
        assertTrue(found.get(0).message().contains("0.15 N·m stands in the table of the family"));
    }

    @ParameterizedTest
    @CsvSource({"PH1, ERROR", "T4, WARNING", "T6, ERROR", "T5, ''", "'', ''"})
    void findsDriversThatDoNotFit(String driver, String severity) {
        Device device =
                bench().tool("bit", driver)
                        .screw("s", TestDevice.seat("m2x4").lengths(0, 4.2), "bit", List.of())
                        .build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(severity, found.isEmpty() ? "" : found.get(0).severity().name());
        found.forEach(f -> assertEquals("drive-mismatch", f.check()));
    }

    @Test
    void findsTheTrapOfJapaneseCrossRecesses() {
        Device device =
                new TestDevice()
                        .type("m2x4", "M2", 4, t -> TestDevice.drive(t, "JIS-S0"))
                        .tool("ph0", "PH0")
                        .screw("s", TestDevice.seat("m2x4").lengths(0, 4.2), "ph0", List.of())
                        .build();
        Finding finding = only(device, "drive-mismatch");
        assertTrue(
                finding.message().contains("looks alike; the S recess is shallower"),
                finding.message());
    }

    @Test
    void findsDriversThatTheShopDoesNotHave() {
        List<Finding> found = run(CheckInput.of(bench().build()).withDrives(List.of("T4", "PH0")));
        assertEquals(List.of("driver-not-in-shop"), found.stream().map(Finding::check).toList());
        assertTrue(
                found.get(0).evidence().get(0).startsWith("T4 is there, but"),
                found.get(0).evidence().toString());
    }

    @Test
    void findsAPatchThatGoesBackSpent() {
        TestDevice bench = new TestDevice().type("m2x4", "M2", 4, TestDevice::patched);
        Device spent = bench.screw("s", TestDevice.seat("m2x4").lengths(0, 4.2)).build();
        assertTrue(only(spent, "patch-screw-reused").remedy().contains("SP-1"));
    }

    @Test
    void letsAPatchBeReplaced() {
        Device fresh =
                new TestDevice()
                        .type("m2x4", "M2", 4, TestDevice::patched)
                        .screw(
                                "s",
                                TestDevice.seat("m2x4").lengths(0, 4.2),
                                "t5",
                                List.of(new ConsumableUse("screw", BigDecimal.ONE, "piece")))
                        .build();
        assertEquals(List.of(), run(CheckInput.of(fresh)));
    }

    @ParameterizedTest
    @CsvSource({"9, 0", "10, 1"})
    void countsTheCyclesOfFormedThreads(int cycles, int findings) {
        Device device =
                new TestDevice()
                        .type("st", "ST2", 6)
                        .screw(
                                "s",
                                TestDevice.seat("st")
                                        .form(Seat.Form.FORMED)
                                        .material("abs")
                                        .lengths(1, 6)
                                        .cycles(cycles)
                                        .torque(0.05))
                        .build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(findings, found.size(), found.toString());
        found.forEach(f -> assertEquals("formed-thread-worn", f.check()));
    }

    @Test
    void findsWhereNoCutIsSafeAndWhereAGivenOneIsNot() {
        Device device = bench().bond("glue", bond(2, 3)).build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(
                List.of("given-cut-depth-unsafe", "no-safe-cut-depth"),
                found.stream().map(Finding::check).toList());
        assertTrue(
                found.get(0).message().contains("deeper than the 1.5 mm that keep-out coax allows"),
                found.get(0).message());
        assertTrue(
                found.get(1).message().contains("keep-out coax forbids it"),
                found.get(1).message());
        Device shallow = bench().bond("glue", bond(4, 1)).build();
        Finding holds = only(shallow, "given-cut-depth-unsafe");
        assertEquals(Severity.WARNING, holds.severity());
        assertTrue(holds.message().contains("does not sever"), holds.message());
    }

    @Test
    void findsNamesThatNoTableHas() {
        Device device =
                new TestDevice()
                        .type(
                                "odd",
                                "M1.5",
                                4,
                                t -> TestDevice.drive(TestDevice.strength(t, "8.9"), "T11"))
                        .screw("s", TestDevice.seat("odd").material("mithril"))
                        .build();
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(
                4,
                found.stream().filter(f -> f.check().equals("fastener-name-unknown")).count(),
                found.toString());
        assertTrue(found.stream().anyMatch(f -> f.message().contains("Nearest: M1.4 and M1.6")));
    }

    @Test
    void asksForSeatsThatNobodyMeasured() {
        Device device = bench().screw("s", TestDevice.seat("m2x4").unmeasured()).build();
        assertEquals(Severity.NOTE, only(device, "seat-facts-missing").severity());
    }

    @Test
    void saysTheSameEveryTime() {
        Device device =
                bench().type("m2x4.8", "M2", 4.8)
                        .screw("longer", TestDevice.seat("m2x4.8").lengths(0.8, 4).noTorque())
                        .bond("glue", bond(2, 3))
                        .build();
        assertEquals(run(CheckInput.of(device)), run(CheckInput.of(device)));
    }

    private static TestDevice bench() {
        return new TestDevice()
                .type("m2x4", "M2", 4)
                .screw("right", TestDevice.seat("m2x4").lengths(0, 4).behind("cell", 0.5));
    }

    /**
     * A strip 3 mm wide along the lower edge, a coax at a distance above it, and a depth given for
     * that edge; 0 for none.
     */
    private static Bond bond(double coaxAt, double given) {
        return new Bond(
                Arrays.asList(
                        new Point(0, 0), new Point(100, 0), new Point(100, 60), new Point(0, 60)),
                List.of(new Bond.Strip("s", List.of(new Point(10, 1.5), new Point(90, 1.5)), 3)),
                List.of(
                        new Bond.KeepOut(
                                "coax",
                                "board",
                                List.of(
                                        new Point(40, coaxAt),
                                        new Point(50, coaxAt),
                                        new Point(50, coaxAt + 2),
                                        new Point(40, coaxAt + 2)))),
                0.5,
                OptionalDouble.empty(),
                given == 0 ? List.of() : List.of(new Bond.GivenDepth(0, given)));
    }

    private static Finding only(Device device, String check) {
        List<Finding> found = run(CheckInput.of(device));
        assertEquals(List.of(check), found.stream().map(Finding::check).toList(), found.toString());
        return found.get(0);
    }

    private static List<Finding> run(CheckInput input) {
        return FastenerChecks.all().stream()
                .flatMap(check -> check.on(input).stream())
                .sorted()
                .toList();
    }
}
