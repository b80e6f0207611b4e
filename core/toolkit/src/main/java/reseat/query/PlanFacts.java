package reseat.query;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.fasten.FastenerTables;
import reseat.job.Job;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Tool;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.stock.StockItem;

/**
 * Bulk queries on a plan: its acts, turns and tools, and what it needs from the shop. Immutable;
 * answers are computed on first use.
 */
public final class PlanFacts {

    private final Plan plan;
    private final Device device;
    private final Shop shop;
    private final DeviceFacts facts;
    private final Lazy<List<ActRow>> acts;
    private final Lazy<List<NeedRow>> needs;

    /** What is known about the shop; null if unknown. */
    private record Shop(
            FastenerTables tables,
            @Nullable List<StockItem> stock,
            @Nullable List<String> drives,
            @Nullable LocalDate today,
            Map<String, Integer> cycles) {}

    private PlanFacts(Plan plan, Shop shop) {
        this.plan = plan;
        this.device = plan.request().device();
        this.shop = shop;
        this.facts = DeviceFacts.of(device, shop.tables);
        this.acts = new Lazy<>(this::everyAct);
        this.needs =
                new Lazy<>(
                        () ->
                                PlanNeeds.of(
                                        device,
                                        plan.rebuild(),
                                        Optional.ofNullable(shop.stock),
                                        Optional.ofNullable(shop.today)));
    }

    /** Returns the facts of a plan for an unknown shop. */
    public static PlanFacts of(Plan plan, FastenerTables tables) {
        return new PlanFacts(plan, new Shop(tables, null, null, null, Map.of()));
    }

    /** Returns these facts for a shop with a stock. */
    public PlanFacts withStock(List<StockItem> items) {
        return new PlanFacts(
                plan,
                new Shop(shop.tables, List.copyOf(items), shop.drives, shop.today, shop.cycles));
    }

    /** Returns these facts for a shop that has drivers for these drives. */
    public PlanFacts withDrives(List<String> ids) {
        return new PlanFacts(
                plan, new Shop(shop.tables, shop.stock, List.copyOf(ids), shop.today, shop.cycles));
    }

    /** Returns these facts with the day on which expiry is judged. */
    public PlanFacts on(LocalDate day) {
        return new PlanFacts(
                plan, new Shop(shop.tables, shop.stock, shop.drives, day, shop.cycles));
    }

    /** Returns these facts for the unit that a job is about. */
    public PlanFacts of(Job job) {
        return new PlanFacts(
                plan, new Shop(shop.tables, shop.stock, shop.drives, shop.today, job.cycles()));
    }

    /** Returns the plan. */
    public Plan plan() {
        return plan;
    }

    /** Returns the rebuild of the plan. */
    public Rebuild rebuild() {
        return plan.rebuild();
    }

    /** Returns the acts, in order. */
    public List<ActRow> acts() {
        return acts.get();
    }

    /** Returns the acts done while a supply is not cut, without the prepare acts. */
    public List<ActRow> liveActs() {
        return acts().stream()
                .filter(act -> act.kind() != ActRow.Kind.PREPARE && !act.live().isEmpty())
                .toList();
    }

    /** Returns the changes of posture of the teardown, in order. */
    public List<TurnRow> postureChanges() {
        PlanNotes notes = PlanNotes.of(plan, rebuild());
        List<TurnRow> turns = new ArrayList<>();
        String posture = device.usualPosture();
        for (ActRow act : acts()) {
            if (act.kind() != ActRow.Kind.PREPARE && !act.posture().equals(posture)) {
                boolean loose =
                        notes.teardown().get(act.index()).stream()
                                .map(Advice::kind)
                                .anyMatch(
                                        k ->
                                                k == Advice.Kind.HANGING
                                                        || k == Advice.Kind.LOOSE_PARTS
                                                        || k == Advice.Kind.LOOSE_SCREWS);
                turns.add(
                        new TurnRow(
                                act.index(),
                                act.id(),
                                act.pointer(),
                                posture,
                                act.posture(),
                                loose));
                posture = act.posture();
            }
        }
        return List.copyOf(turns);
    }

    /** Returns the tools that the plan uses, without the hand, in order of first use. */
    public List<ToolRow> tools() {
        Map<String, List<ActRow>> uses = new LinkedHashMap<>();
        for (ActRow act : acts()) {
            if (act.kind() != ActRow.Kind.PREPARE && !act.tool().equals(device.hand())) {
                uses.computeIfAbsent(act.tool(), t -> new ArrayList<>()).add(act);
            }
        }
        Owned owned =
                new Owned(
                        shop.tables,
                        Optional.ofNullable(shop.drives),
                        Optional.ofNullable(shop.stock));
        List<ToolRow> rows = new ArrayList<>();
        uses.forEach(
                (id, of) -> {
                    Tool tool = device.tools().get(id);
                    Optional<String> drive = tool == null ? Optional.empty() : tool.drive();
                    rows.add(
                            new ToolRow(
                                    id,
                                    of.get(0).pointer(),
                                    tool == null ? id : tool.name(),
                                    drive,
                                    of.size(),
                                    of.get(0).id(),
                                    owned.has(id, drive)));
                });
        return List.copyOf(rows);
    }

    /** Returns what the plan and its rebuild need from a stock: consumables, spares, screws. */
    public List<NeedRow> needs() {
        return needs.get();
    }

    /** Returns what the rebuild uses up. */
    public List<NeedRow> consumables() {
        return needs().stream().filter(n -> n.kind() == StockItem.Kind.CONSUMABLE).toList();
    }

    /** Returns what the plan needs and the stock lacks; nothing if the stock is unknown. */
    public List<NeedRow> stockGaps() {
        return needs().stream().filter(NeedRow::isShort).toList();
    }

    /**
     * Returns the joints with a rated number of cycles that the plan makes, with the cycles after
     * the rebuild.
     */
    public List<CycleRow> wear() {
        List<CycleRow> rows = new ArrayList<>();
        rebuild()
                .wear()
                .forEach(
                        w -> {
                            Joint joint = device.joint(w.joint());
                            int again = w.made() - joint.madeCycles();
                            int made =
                                    shop.cycles.getOrDefault(joint.id(), joint.madeCycles())
                                            + again;
                            rows.add(CycleRow.of(joint, made, w.rated()));
                        });
        return List.copyOf(rows);
    }

    /** Returns the tests that are due after the plan, in the order in which they are made. */
    public List<TestRow> tests() {
        return rebuild().tests().stream()
                .map(placed -> placed.test())
                .map(t -> new TestRow(t.id(), "/tests/" + t.id(), t.text(), t.of(), t.needs()))
                .toList();
    }

    /**
     * Returns the parts that the plan unplugs for which no test names the part or one of its
     * connectors.
     */
    public List<PartRow> untested() {
        Set<String> touched = new LinkedHashSet<>();
        for (ActRow act : acts()) {
            if (act.role().equals(Optional.of(Kind.Role.CONNECTOR))) {
                touched.addAll(act.parts());
            }
        }
        return facts.untested().stream().filter(p -> touched.contains(p.part())).toList();
    }

    private List<ActRow> everyAct() {
        PlanNotes notes = PlanNotes.of(plan, rebuild());
        Set<String> live = new LinkedHashSet<>(device.supplies().keySet());
        plan.request().start().released().forEach(j -> live.removeAll(device.joint(j).cuts()));
        List<ActRow> rows = new ArrayList<>();
        for (int i = 0; i < plan.acts().size(); i++) {
            rows.add(
                    ActRows.row(
                            device,
                            i,
                            plan.acts().get(i),
                            notes.teardown().get(i),
                            List.copyOf(live)));
            if (plan.acts().get(i).act() instanceof Act.Release release) {
                live.removeAll(device.joint(release.joint()).cuts());
            }
        }
        return List.copyOf(rows);
    }
}
