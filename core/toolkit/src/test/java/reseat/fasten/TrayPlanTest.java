package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.given.TestDevice;
import reseat.model.Device;

class TrayPlanTest {

    private final FastenerTables tables = TestDevice.tables();

    /**
     * Three lengths a hair apart over a cell, one screw of another drive, one of another finish.
     */
    private static Device device() {
        return new TestDevice()
                .type("m2x4", "M2", 4)
                .type("m2x4.8", "M2", 4.8)
                .type("m2x5.5", "M2", 5.5)
                .type("m2x4-ph", "M2", 4, t -> TestDevice.drive(t, "PH0"))
                .type("m2x4-silver", "M2", 4, t -> TestDevice.finish(t, "silver"))
                .screw("a", TestDevice.seat("m2x4").lengths(1, 3).behind("cell", 0.2))
                .screw("b", TestDevice.seat("m2x4.8").lengths(1.8, 3).behind("cell", 0.2))
                .screw("c", TestDevice.seat("m2x5.5").lengths(2.5, 3).behind("board", 0.2))
                .screw("d", TestDevice.seat("m2x4-ph").lengths(1, 3))
                .screw("e", TestDevice.seat("m2x4-silver").lengths(1, 3))
                .screw("a2", TestDevice.seat("m2x4").lengths(1, 3).behind("cell", 0.2))
                .build();
    }

    @Test
    void weighsLookAlikesByWhatASwapDoes() {
        LookAlikes alike = LookAlikes.of(tables, device());
        LookAlikes.Pair pair = alike.pair("m2x4.8", "m2x4").orElseThrow();
        assertEquals(6, pair.weight());
        assertTrue(pair.dangerous());
        assertEquals(List.of("length 4 mm / 4.8 mm"), pair.differences());
        assertEquals("a", pair.worst().orElseThrow().joint());
        assertEquals(pair, alike.pairs().get(0));
    }

    @Test
    void leavesOutWhatAPersonSees() {
        LookAlikes alike = LookAlikes.of(tables, device());
        assertTrue(alike.pair("m2x4", "m2x5.5").isEmpty(), "1.5 mm of length");
        assertTrue(alike.pair("m2x4", "m2x4-ph").isEmpty(), "another bit");
        assertTrue(alike.pair("m2x4", "m2x4-silver").isEmpty(), "another finish");
        assertTrue(alike.pair("m2x4", "m2x4").isEmpty());
    }

    @Test
    void looksOnlyAtTheScrewsOfAPlan() {
        LookAlikes alike =
                LookAlikes.of(tables, device(), List.of("a", "c", "d"), LookAlikes.Eye.of(tables));
        assertEquals(List.of("m2x4", "m2x5.5", "m2x4-ph"), alike.types());
        assertTrue(alike.pairs().isEmpty());
    }

    @Test
    void laysDangerousScrewsApartInTheOrderTheyComeOut() {
        TrayPlan plan =
                TrayPlan.of(
                        device(),
                        List.of("b", "a", "c", "d", "e", "a2"),
                        LookAlikes.of(tables, device()));
        assertEquals(2, plan.compartments().size());
        assertTrue(plan.proved());
        assertEquals("m2x4.8", plan.compartments().get(0).content().get(0).screw());
        assertTrue(
                plan.proof().startsWith("Fewer compartments are impossible: none of m2x4.8, m2x"),
                plan.proof());
        assertEquals(
                List.of("a", "a2"),
                plan.compartments().stream()
                        .flatMap(c -> c.content().stream())
                        .filter(lot -> lot.screw().equals("m2x4"))
                        .findFirst()
                        .orElseThrow()
                        .joints());
    }

    @Test
    void needsOneCompartmentWhereNothingIsDangerous() {
        TrayPlan plan = TrayPlan.of(device(), List.of("d", "e"), LookAlikes.of(tables, device()));
        assertEquals(1, plan.compartments().size());
        assertEquals("No two of these screws are dangerous to confuse.", plan.proof());
        assertEquals(
                0,
                TrayPlan.of(device(), List.of(), LookAlikes.of(tables, device()))
                        .compartments()
                        .size());
    }

    /** Five types in a ring, each dangerous with its neighbours: two compartments cannot do. */
    @Test
    void aRingOfFiveNeedsThreeCompartmentsThoughNoThreeAreMutuallyDangerous() {
        TestDevice bench = new TestDevice();
        List<String> types = List.of("a", "b", "c", "d", "e");
        types.forEach(t -> bench.type(t, "M2", 4).screw("of-" + t, TestDevice.seat(t)));
        LookAlikes ring =
                new LookAlikes(
                        types,
                        List.of(
                                pair("a", "b", 2),
                                pair("b", "c", 2),
                                pair("c", "d", 2),
                                pair("d", "e", 2),
                                pair("e", "a", 2),
                                pair("a", "c", 1)));
        TrayPlan plan =
                TrayPlan.of(bench.build(), types.stream().map(t -> "of-" + t).toList(), ring);
        assertEquals(3, plan.compartments().size());
        assertEquals(
                List.of(1, 2, 3),
                plan.compartments().stream().map(TrayPlan.Compartment::number).toList());
        assertTrue(
                plan.proof()
                        .startsWith(
                                "Fewer compartments are impossible: every way to use 2"
                                        + " was tried ("),
                plan.proof());
    }

    @Test
    void withoutScrewsThereIsNothingToLayApart() {
        Device device = new TestDevice().build();
        assertEquals(
                "No screw comes out.",
                TrayPlan.of(device, List.of(), LookAlikes.of(tables, device)).proof());
    }

    private static LookAlikes.Pair pair(String one, String other, int weight) {
        return new LookAlikes.Pair(one, other, List.of(), weight, Optional.empty());
    }
}
