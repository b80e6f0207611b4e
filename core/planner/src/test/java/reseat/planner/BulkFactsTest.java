package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFiles;
import reseat.given.Samples;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Severity;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.query.ActRow;
import reseat.query.ClearanceRow;
import reseat.query.CycleRow;
import reseat.query.DeviceFacts;
import reseat.query.GroupRow;
import reseat.query.NeedRow;
import reseat.query.NeighbourRow;
import reseat.query.PairRow;
import reseat.query.PlanFacts;
import reseat.query.ScrewRow;
import reseat.query.TorqueRow;
import reseat.query.TurnRow;
import reseat.query.VariantScrewRow;

/** Answers in bulk, held against the facts that they are made of; on the notebook. */
class BulkFactsTest {

    private static Device quill;
    private static Device noRadio;
    private static DeviceFacts facts;
    private static Plan plan;

    @BeforeAll
    static void read() throws Exception {
        quill = read(Optional.empty());
        noRadio = read(Optional.of("no-radio"));
        facts = DeviceFacts.of(quill, FastenerTables.standard());
        plan =
                ((PlanResult.Found)
                                new Planner()
                                        .plan(
                                                PlanRequest.of(quill, new Goal.Free(List.of("fan")))
                                                        .with(Effort.ofExpansions(100_000))))
                        .plan();
    }

    private static Device read(Optional<String> variant) throws Exception {
        return DeviceFiles.read(
                        Path.of("../../samples/quill/quill.yaml"), variant, Samples.families())
                .orThrow();
    }

    @Test
    void everyScrewIsThereOnceAndInOneGroupOfEachSort() {
        List<String> seated =
                quill.joints().values().stream()
                        .filter(joint -> joint.seat().isPresent())
                        .map(Joint::id)
                        .toList();
        assertEquals(seated, facts.screws().stream().map(ScrewRow::joint).toList());
        assertEquals(seated, facts.torques().stream().map(TorqueRow::joint).toList());
        for (List<GroupRow> groups :
                List.of(facts.screwsByType(), facts.screwsByDrive(), facts.screwsBySite())) {
            List<String> grouped = new ArrayList<>();
            groups.forEach(group -> grouped.addAll(group.joints()));
            assertEquals(seated.stream().sorted().toList(), grouped.stream().sorted().toList());
        }
        for (ScrewRow row : facts.screws()) {
            assertEquals("/joints/" + row.joint(), row.pointer());
            assertEquals(quill.joint(row.joint()).site(), row.site());
            assertEquals(Optional.of(true), row.outcome().map(o -> o.name().equals("FITS")));
        }
    }

    @Test
    void coversAreWhatHidesAScrewAndWhatItHolds() {
        for (GroupRow group : facts.screwsByCover()) {
            for (String joint : group.joints()) {
                Joint of = quill.joint(joint);
                assertTrue(
                        of.under().contains(group.key())
                                || of.holds()
                                        .subList(0, of.holds().size() - 1)
                                        .contains(group.key()),
                        group.key() + " " + joint);
            }
        }
        assertTrue(
                facts.screwsByCover().stream()
                        .anyMatch(group -> group.key().equals("speaker-bar") && group.magnetic()));
    }

    @Test
    void nearnessIsOfOneRoleAndBelowTheDistance() {
        List<ClearanceRow> all = facts.screwsNear(Kind.Role.BOARD, 1000);
        assertFalse(all.isEmpty());
        double least = all.get(0).clearanceMm();
        assertEquals(List.of(), facts.screwsNear(Kind.Role.BOARD, least));
        assertFalse(facts.screwsNear(Kind.Role.BOARD, least + 0.01).isEmpty());
        for (int i = 1; i < all.size(); i++) {
            assertTrue(all.get(i - 1).clearanceMm() <= all.get(i).clearanceMm());
            assertEquals(Optional.of(Kind.Role.BOARD), all.get(i).role());
        }
    }

    @Test
    void pairsAndNeighboursAreMadeOfJointsAndCovers() {
        for (PairRow pair : facts.joinedPairs()) {
            for (String joint : pair.joints()) {
                assertTrue(
                        quill.joint(joint).holds().containsAll(List.of(pair.one(), pair.other())));
            }
        }
        int held =
                quill.joints().values().stream()
                        .mapToInt(j -> j.holds().size() * (j.holds().size() - 1) / 2)
                        .sum();
        assertEquals(held, facts.joinedPairs().stream().mapToInt(p -> p.joints().size()).sum());
        for (NeighbourRow row : facts.neighbours("fan")) {
            assertEquals(quill.part("fan").under().contains(row.part()), row.above());
            assertEquals(quill.part(row.part()).under().contains("fan"), row.below());
            assertTrue(row.above() || row.below() || !row.joints().isEmpty());
        }
        assertTrue(facts.neighbours("fan").stream().anyMatch(n -> n.part().equals("fan-hatch")));
    }

    @Test
    void aJobGoesBeforeTheDeviceFile() {
        CycleRow row = facts.connectors().get(0);
        Job job = new Job("1", "unit", "quill", Optional.empty(), Map.of(row.joint(), row.rated()));
        CycleRow worn = facts.of(job).connectors().get(0);
        assertEquals(0, worn.left());
        assertEquals(row.rated(), worn.made());
        assertEquals(facts.connectors().get(1), facts.of(job).connectors().get(1));
    }

    @Test
    void aVariantThatLeavesAScrewOutIsTold() {
        assertEquals(List.of(), facts.variantScrews());
        List<VariantScrewRow> rows = facts.withVariants(List.of(quill, noRadio)).variantScrews();
        assertEquals(List.of("radio-screw"), rows.stream().map(VariantScrewRow::joint).toList());
        assertEquals(VariantScrewRow.Change.LEFT_OUT, rows.get(0).change());
        assertEquals("no-radio", rows.get(0).variant());
    }

    @Test
    void aPlanIsAnsweredActByAct() {
        PlanFacts of = PlanFacts.of(plan, FastenerTables.standard());
        assertEquals(plan.acts().size(), of.acts().size());
        boolean cut = false;
        for (int i = 0; i < of.acts().size(); i++) {
            ActRow row = of.acts().get(i);
            assertEquals(plan.acts().get(i).act().id(), row.id());
            // nothing of it needs the clock cell cut
            assertEquals(cut ? List.of("clock") : List.of("cell", "clock"), row.live(), row.id());
            cut |= row.kind() == ActRow.Kind.RELEASE && quill.joint(row.subject()).isIsolator();
        }
        assertTrue(cut);
        assertTrue(of.liveActs().stream().allMatch(act -> act.live().contains("clock")));
        assertTrue(of.tools().stream().noneMatch(tool -> tool.tool().equals(quill.hand())));
        assertTrue(of.tools().stream().allMatch(tool -> tool.owned().isEmpty()));
        String posture = quill.usualPosture();
        for (TurnRow turn : of.postureChanges()) {
            assertEquals(posture, turn.from());
            posture = turn.to();
        }
        assertEquals(of.rebuild().consumables().size(), of.consumables().size());
    }

    @Test
    void aShopWithNothingLacksAllThatIsNeeded() {
        PlanFacts unknown = PlanFacts.of(plan, FastenerTables.standard());
        assertFalse(unknown.needs().isEmpty());
        assertEquals(List.of(), unknown.stockGaps());
        PlanFacts empty = unknown.withStock(List.of()).withDrives(List.of("PH1"));
        assertEquals(
                unknown.needs().stream().map(NeedRow::id).toList(),
                empty.stockGaps().stream().map(NeedRow::id).toList());
        assertTrue(
                empty.tools().stream()
                        .filter(tool -> tool.drive().isPresent())
                        .allMatch(tool -> tool.owned().equals(Optional.of(false))));
    }

    @Test
    void factsAreSharedByTheChecksOfOneInput() {
        CheckInput input = CheckInput.of(quill).withPlan(plan);
        CheckInfo info = new CheckInfo("a", "t", "f", "m", Severity.NOTE, List.of(), List.of());
        assertSame(input.facts(), input.forCheck(info).facts());
        assertSame(input.planFacts().orElseThrow(), input.forCheck(info).planFacts().orElseThrow());
        assertNotSame(input.facts(), input.withVariants(List.of(quill, noRadio)).facts());
        assertEquals(Optional.empty(), CheckInput.of(quill).planFacts());
    }
}
