package reseat.bench;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Severity;
import reseat.script.host.Approvals;
import reseat.script.host.ScriptFolder;
import reseat.script.host.ScriptHost;
import reseat.script.host.ScriptLimits;
import reseat.script.host.ScriptOutcome;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Kind;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.query.ActRow;
import reseat.query.CycleRow;
import reseat.query.GroupRow;
import reseat.query.LookAlikeRow;
import reseat.query.NeedRow;
import reseat.query.PartRow;
import reseat.query.PlanFacts;
import reseat.query.TurnRow;
import reseat.query.TorqueRow;
import reseat.query.VariantScrewRow;
import reseat.files.PluginFiles;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.stock.StockItem;

/**
 * Runs each shipped script and the same check written in Java on one device, first run against first run, and prints a
 * CSV row for each. What it costs to start a worker and to compile Java stands apart.
 */
public final class ScriptBench {

    private static final Map<String, Function<CheckInput, List<Finding>>> SAME = new LinkedHashMap<>();

    static {
        SAME.put("connector-cycles", ScriptBench::connectorCycles);
        SAME.put("drawer-tools", ScriptBench::drawerTools);
        SAME.put("long-screw-near-cell", ScriptBench::longScrewNearCell);
        SAME.put("many-flips", ScriptBench::manyFlips);
        SAME.put("torque-table", ScriptBench::torqueTable);
        SAME.put("esd-before-live", ScriptBench::esdBeforeLive);
        SAME.put("magnet-screws", ScriptBench::magnetScrews);
        SAME.put("rebuild-consumables", ScriptBench::rebuildConsumables);
        SAME.put("untested-parts", ScriptBench::untestedParts);
        SAME.put("variant-screws", ScriptBench::variantScrews);
    }

    private ScriptBench() {}

    /** Takes the folder of scripts, the device file, the part to free, and javascript or java. */
    public static void main(String[] args) throws Exception {
        Path shop = Files.createTempDirectory("bench-shop");
        Approvals approvals = Approvals.in(shop);
        List<ScriptFile> scripts = ScriptFolder.read(List.of(Path.of(args[0]))).scripts();
        for (ScriptFile each : scripts) {
            approvals = approvals.approve(each, "bench", LocalDate.of(2026, 3, 2));
        }
        // one language a process: what the first check loads and computes, the next one finds, on both sides
        Language language = Language.valueOf(args[3].toUpperCase(Locale.ROOT));
        scripts = scripts.stream().filter(script -> script.language() == language).toList();
        Map<String, Double> own = new LinkedHashMap<>();
        Map<String, Integer> found = new LinkedHashMap<>();
        CheckInput first = input(Path.of(args[1]), args[2]); // computes nothing before it is asked
        for (ScriptFile script : scripts) {
            CheckInput its = first.forCheck(script.info());
            long start = System.nanoTime();
            List<Finding> findings = SAME.get(script.info().id()).apply(its);
            own.put(script.info().id(), (System.nanoTime() - start) / 1e6);
            found.put(script.info().id(), findings.size());
        }
        CheckInput input = input(Path.of(args[1]), args[2]);
        ScriptHost.Ran ran = new ScriptHost(ScriptLimits.USUAL, approvals).run(scripts, input);
        System.out.println("script,language,script_ms,java_ms,ratio,compile_ms,findings");
        double all = 0;
        double allOwn = 0;
        for (ScriptOutcome each : ran.outcomes()) {
            String id = each.script().info().id();
            if (each.status() != ScriptOutcome.Status.RAN || each.findings().size() != found.get(id)) {
                throw new IllegalStateException(each + " against " + found.get(id));
            }
            double ms = each.micros() / 1e3;
            all += ms;
            allOwn += own.get(id);
            System.out.printf(Locale.ROOT, "%s,%s,%.1f,%.1f,%.1f,%.0f,%d%n", id, each.script().language(), ms,
                    own.get(id), ms / own.get(id), each.compileMicros() / 1e3, each.findings().size());
        }
        System.out.printf(Locale.ROOT, "# %s %.1f ms against %.1f ms: %.2f; worker start %.0f ms%n", language, all,
                allOwn, all / allOwn, ran.startMicros().get(language) / 1e3);
    }

    private static CheckInput input(Path file, String part) throws Exception {
        Reading base = DeviceFiles.read(file, Optional.empty(), PluginFiles.bundled().families());
        Device device = base.orThrow();
        List<Device> variants = new ArrayList<>(List.of(device));
        for (String id : base.variants()) {
            variants.add(DeviceFiles.read(file, Optional.of(id), PluginFiles.bundled().families()).orThrow());
        }
        PlanResult.Found plan = (PlanResult.Found)
                new Planner().plan(PlanRequest.of(device, new Goal.Free(List.of(part))));
        StockItem pads = new StockItem("1", StockItem.Kind.CONSUMABLE, "Pads", List.of("pad-adhesive"),
                BigDecimal.ONE, BigDecimal.ZERO, "piece", Optional.empty(), Optional.empty(), Optional.empty());
        return CheckInput.of(device).withVariants(variants).withPlan(plan.plan()).withStock(List.of(pads))
                .withDrives(List.of("T6", "PH00"));
    }

    // --- the same checks

    private static List<Finding> longScrewNearCell(CheckInput input) {
        double least = input.number("least");
        return input.facts().screwsNear(Kind.Role.CELL, least).stream()
                .map(row -> {
                    double gap = row.clearanceMm();
                    String where = gap <= 0
                            ? String.format(Locale.ROOT, "goes %.1f mm into %s", -gap, row.name())
                            : String.format(Locale.ROOT, "ends %.1f mm before %s", gap, row.name());
                    return input.finding(row.pointer())
                            .title(gap <= 0 ? "Screw goes into a cell" : "Screw near a cell")
                            .evidence(row.type() + " is " + row.lengthMm() + " mm long")
                            .says(row.joint() + " " + where + ".", "Measure screw and seat.");
                })
                .toList();
    }

    private static final Map<String, Map<String, double[]>> TABLE = Map.of(
            "M1.4x0.3", Map.of("brass", new double[] {0.04, 0.08}, "any", new double[] {0.04, 0.08}),
            "M1.6x0.35", Map.of("brass", new double[] {0.07, 0.14}, "magnesium", new double[] {0.06, 0.12}, "any",
                    new double[] {0.06, 0.12}),
            "M2x0.4", Map.of("brass", new double[] {0.14, 0.25}, "steel", new double[] {0.14, 0.25}, "any",
                    new double[] {0.12, 0.2}),
            "M2.5x0.45", Map.of("brass", new double[] {0.25, 0.4}, "steel", new double[] {0.3, 0.5}, "any",
                    new double[] {0.25, 0.4}));

    private static List<Finding> torqueTable(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (TorqueRow row : input.facts().torques()) {
            Map<String, double[]> line = TABLE.get(row.thread());
            if (line == null) {
                continue;
            }
            double[] range = line.getOrDefault(row.material(), line.get("any"));
            if (row.givenNm().isEmpty()) {
                found.add(input.finding(row.pointer()).severity(Severity.NOTE)
                        .says(row.joint() + " has no torque.", "Look into the maker's document."));
            } else if (row.givenNm().getAsDouble() < range[0] || row.givenNm().getAsDouble() > range[1]) {
                found.add(input.finding(row.pointer()).evidence(row.thread() + " " + range[0] + " to " + range[1])
                        .says(row.joint() + " gets " + row.givenNm().getAsDouble() + " N·m.", "Look it up again."));
            }
        }
        return found;
    }

    private static List<Finding> connectorCycles(CheckInput input) {
        double reserve = input.number("reserve");
        Map<String, CycleRow> rows = new LinkedHashMap<>();
        input.facts().connectors().forEach(row -> rows.put(row.joint(), row));
        input.planFacts().ifPresent(plan -> plan.wear().forEach(row -> rows.put(row.joint(), row)));
        return rows.values().stream()
                .filter(row -> row.left() < reserve)
                .map(row -> input.finding(row.pointer())
                        .evidence("made " + row.made() + " times, rated for " + row.rated())
                        .says(row.joint() + " may be made " + row.left() + " times more.", "Leave it connected."))
                .toList();
    }

    private static List<Finding> manyFlips(CheckInput input) {
        int most = (int) input.number("most");
        List<TurnRow> turns = input.planFacts().orElseThrow().postureChanges();
        if (turns.size() <= most) {
            return List.of();
        }
        TurnRow over = turns.get(most);
        return List.of(input.finding(over.pointer())
                .evidence(String.join(", ", turns.stream().map(TurnRow::to).toList()))
                .says("The plan turns the device " + turns.size() + " times.", "See whether another way works."));
    }

    private static List<Finding> drawerTools(CheckInput input) {
        return input.planFacts().orElseThrow().tools().stream()
                .filter(tool -> tool.owned().isPresent() && !tool.owned().get())
                .map(tool -> input.finding(tool.pointer())
                        .evidence("used for " + tool.acts() + " acts")
                        .says("The plan needs " + tool.name() + ".", "Get it."))
                .toList();
    }

    private static List<Finding> magnetScrews(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (GroupRow group : input.facts().screwsByCover()) {
            if (!group.magnetic() || group.types().size() < 2) {
                continue;
            }
            List<LookAlikeRow> alike = input.facts().lookAlikes().stream()
                    .filter(p -> group.types().contains(p.one()) && group.types().contains(p.other()))
                    .toList();
            found.add(input.finding(group.pointer())
                    .severity(alike.isEmpty() ? Severity.WARNING : Severity.ERROR)
                    .says(group.name() + " is magnetic.", "Take out one type before the next."));
        }
        return found;
    }

    private static List<Finding> rebuildConsumables(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (NeedRow need : input.planFacts().orElseThrow().stockGaps()) {
            if (need.kind() == StockItem.Kind.CONSUMABLE) {
                found.add(input.finding(need.pointer())
                        .evidence("needed: " + need.quantity() + " " + need.unit())
                        .says("The rebuild uses " + need.name() + ".", "Order it."));
            }
        }
        return found;
    }

    private static List<Finding> variantScrews(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (VariantScrewRow row : input.facts().variantScrews()) {
            if (row.change() == VariantScrewRow.Change.ANOTHER && input.device().joints().containsKey(row.joint())) {
                found.add(input.finding(row.pointer()).says(row.joint() + " takes another.", "Read the label first."));
            }
        }
        return found;
    }

    private static List<Finding> esdBeforeLive(CheckInput input) {
        List<ActRow> acts = input.planFacts().orElseThrow().acts();
        if (acts.stream().anyMatch(a -> a.kind() == ActRow.Kind.PREPARE && a.hazards().contains("esd"))) {
            return List.of();
        }
        List<ActRow> risky = input.planFacts().orElseThrow().liveActs().stream()
                .filter(a -> a.hazards().contains("esd"))
                .toList();
        return risky.isEmpty()
                ? List.of()
                : List.of(input.finding(risky.get(0).pointer()).says(risky.get(0).id() + " is live.", "Add an act."));
    }

    private static List<Finding> untestedParts(CheckInput input) {
        List<PartRow> untested =
                input.planFacts().map(PlanFacts::untested).orElseGet(() -> input.facts().untested());
        return untested.stream()
                .map(p -> input.finding(p.pointer()).says("No test shows that " + p.name() + " works.", "Write one."))
                .toList();
    }
}
