package reseat.stock.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.stock.Reservation;
import reseat.stock.StockItem;

/** Asks for repairs of a sample with stocks made up here. */
class TodayTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
    private static final Device TANSY =
            DeviceFiles.read(Path.of("../../samples/tansy/tansy.yaml"), Optional.empty(), List.of())
                    .device()
                    .orElseThrow();

    private final List<StockItem> stock = new ArrayList<>();

    @Test
    void saysYesAndWhatToTake() {
        add("C1", StockItem.Kind.PART, "AI-T-02", 1, null);
        add("P1", StockItem.Kind.CONSUMABLE, "pad-adhesive", 3, DAY.plusDays(90));
        add("P2", StockItem.Kind.CONSUMABLE, "pad-adhesive", 3, DAY.plusDays(9));
        add("P0", StockItem.Kind.CONSUMABLE, "pad-adhesive", 3, DAY.minusDays(1));

        CanDo answer = cell();

        assertTrue(answer.yes());
        Availability found = answer.availability().orElseThrow();
        assertFalse(found.toolsJudged());
        assertEquals(List.of(pick("C1"), pick("P2")), found.picks(), "the one that expires first");
        assertEquals(List.of("P2"), found.soon().stream().map(t -> t.item().id()).toList());
        Availability.Line pads = found.lines().get(1);
        assertEquals(List.of("P1"), pads.alternates().stream().map(StockItem::id).toList());
        assertEquals(List.of("P0"), pads.expired().stream().map(StockItem::id).toList());
    }

    @Test
    void saysWhatIsMissingAndThatOthersHoldIt() {
        add("C1", StockItem.Kind.PART, "AI-T-03", 1, null);
        stock.add(
                new StockItem(
                        "P1",
                        StockItem.Kind.CONSUMABLE,
                        "pads",
                        List.of("pad-adhesive"),
                        BigDecimal.TEN,
                        BigDecimal.TEN,
                        "piece",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));

        CanDo answer = cell();

        assertFalse(answer.yes());
        List<Availability.Line> missing = answer.availability().orElseThrow().missing();
        assertEquals(
                List.of("cell", "pad-adhesive"), missing.stream().map(l -> l.need().id()).toList());
        assertEquals(BigDecimal.TEN, missing.get(1).held());
    }

    @Test
    void asksForToolsOnceAStockListsAny() {
        add("C1", StockItem.Kind.PART, "AI-T-02", 1, null);
        add("P1", StockItem.Kind.CONSUMABLE, "pad-adhesive", 3, null);
        add("T1", StockItem.Kind.TOOL, "T6", 1, null);

        Availability found = cell().availability().orElseThrow();

        assertTrue(found.toolsJudged());
        assertEquals(List.of("spudger"), found.missing().stream().map(l -> l.need().id()).toList());
        assertTrue(found.picks().contains(pick("T1")), "by the drive that the bit turns");
    }

    @Test
    void aPartThatGoesBackNeedsNoSpare() {
        add("P1", StockItem.Kind.CONSUMABLE, "pad-adhesive", 3, null);

        Today today = new Today(stock, DAY, 30, new Planner());

        assertTrue(today.canDo(request("cell"), false, Watch.NONE).yes());
        assertFalse(today.canDo(request("cell"), true, Watch.NONE).yes());
    }

    @Test
    void theCatalogueIsWhatCanBeOrdered() {
        add("C1", StockItem.Kind.PART, "AI-T-01", 1, null);

        List<CanDo> answers =
                new Today(stock, DAY, 30, new Planner())
                        .catalogue(List.of(TANSY), Effort.ofExpansions(50_000), Watch.NONE);

        assertEquals(
                List.of("cover", "cell", "board", "cell-tray", "sensor"),
                answers.stream().flatMap(a -> a.targets().stream()).toList());
        assertEquals(
                List.of("cover"),
                answers.stream()
                        .filter(CanDo::yes)
                        .flatMap(answer -> answer.targets().stream())
                        .toList());
    }

    @Test
    void doesWithoutWhatIsMissingWhereThatCanBeDone(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("box.yaml");
        Files.writeString(
                file,
                """
                format: reseat-device/1
                id: box
                base: cup
                usualPosture: face-up
                parts:
                  cup: {kind: housing}
                  lid: {kind: cover, spare: B-1}
                joints:
                  bond:
                    kind: press-fit
                    holds: [lid, cup]
                    ways:
                      glued:
                        kind: pull-straight
                        tool: spudger
                        time: 1 s
                        restoreTime: 1 s
                        consumes: [{of: pad-adhesive, quantity: 1, unit: piece}]
                      pressed: {kind: pull-straight, tool: hand, time: 50 s, restoreTime: 50 s}
                """);
        Reading box = DeviceFiles.read(file, Optional.empty(), List.of());
        Device device = box.device().orElseThrow(() -> new AssertionError(box.toString()));
        PlanRequest lid =
                PlanRequest.of(device, new Goal.Free(List.of("lid")))
                        .with(Effort.ofExpansions(1000));
        add("L1", StockItem.Kind.PART, "B-1", 1, null);
        add("T1", StockItem.Kind.TOOL, "T6", 1, null);

        CanDo answer = new Today(stock, DAY, 30, new Planner()).canDo(lid, true, Watch.NONE);

        assertTrue(answer.yes(), answer.toString());
        assertEquals(
                List.of("pad-adhesive", "spudger"),
                answer.avoided().stream().map(StockNeed::id).toList());
        assertEquals(List.of("bond"), answer.plan().orElseThrow().releasedJoints());
        stock.remove(0);
        CanDo none = new Today(stock, DAY, 30, new Planner()).canDo(lid, true, Watch.NONE);
        assertFalse(none.yes());
        assertEquals(List.of(), none.avoided());
    }

    @Test
    void tellsWhyThereIsNoPlan() {
        CanDo answer =
                new Today(stock, DAY, 30, new Planner()).canDo(request("lid"), true, Watch.NONE);

        assertFalse(answer.yes());
        assertTrue(answer.reasons().get(0).contains("lid"), answer.reasons().toString());
    }

    private CanDo cell() {
        return new Today(stock, DAY, 30, new Planner()).canDo(request("cell"), true, Watch.NONE);
    }

    private static PlanRequest request(String part) {
        return PlanRequest.of(TANSY, new Goal.Free(List.of(part)))
                .with(Effort.ofExpansions(50_000));
    }

    private static Reservation.Pick pick(String item) {
        return new Reservation.Pick(item, BigDecimal.ONE);
    }

    private void add(String id, StockItem.Kind kind, String serves, int onHand, LocalDate expires) {
        stock.add(
                new StockItem(
                        id,
                        kind,
                        id,
                        List.of(serves),
                        BigDecimal.valueOf(onHand),
                        BigDecimal.ZERO,
                        "piece",
                        Optional.empty(),
                        Optional.ofNullable(expires),
                        Optional.empty()));
    }
}
