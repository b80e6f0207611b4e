package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import reseat.console.load.OurPlugins;
import reseat.console.sheet.PlanSheet;
import reseat.console.sheet.ShortSheet;
import reseat.console.sheet.Terminal;
import reseat.fasten.CutPlan;
import reseat.fasten.StripPlan;
import reseat.files.SheetJson;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Part;
import reseat.model.Supply;
import reseat.model.Way;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.sheet.Caution;
import reseat.sheet.Group;
import reseat.sheet.Need;
import reseat.sheet.Sheet;
import reseat.sheet.Step;
import reseat.spi.Output;
import reseat.spi.OutputFiles;

/**
 * The sheet of every repair of every sample holds the facts of its plan, and terminal, page and
 * JSON show all of it.
 */
class SheetFactsTest {

    /** Wider than any line, so that nothing is wrapped. */
    private static final int NO_WRAPPING = 1_000;

    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");

    private static Map<String, Plan> plans = Map.of();
    private static final Map<Plan, Map<Sheet.Extent, Sheet>> SHEETS = new IdentityHashMap<>();

    @BeforeAll
    static void plan() throws Exception {
        plans = SampleSheets.plans();
        assertTrue(plans.size() > (SampleSheets.ALL ? 200 : 60), plans.size() + " plans");
        assertTrue(
                plans.values().stream().anyMatch(plan -> !ruined(plan).isEmpty()),
                "no plan ruins a part");
    }

    private static Sheet sheet(Plan plan) {
        return sheet(plan, Sheet.Extent.WHOLE);
    }

    /** Returns the one sheet of a plan: making it costs as much as planning the rebuild. */
    private static Sheet sheet(Plan plan, Sheet.Extent extent) {
        return SHEETS.computeIfAbsent(plan, p -> new EnumMap<>(Sheet.Extent.class))
                .computeIfAbsent(extent, e -> Sheet.of(plan, e));
    }

    @Test
    void theSameAgainIsTheSameText() {
        Plan plan = plans.values().iterator().next();

        assertEquals(SheetJson.write(sheet(plan)), SheetJson.write(Sheet.of(plan)));
    }

    @Test
    void theStepsAreTheActsOfThePlanInOrder() {
        plans.forEach(
                (name, plan) -> {
                    Sheet sheet = sheet(plan);
                    assertEquals(
                            plan.acts().stream().map(act -> act.act().id()).toList(),
                            acts(
                                    sheet.teardown().stream()
                                            .flatMap(g -> g.steps().stream())
                                            .toList()),
                            name);
                    List<String> back =
                            plan.rebuild().acts().stream()
                                    .flatMap(act -> act.act().stream())
                                    .filter(act -> !leavesNothing(plan, act))
                                    .map(Act::id)
                                    .toList();
                    // screws that go in together are sorted by type, everything else is in order
                    assertEquals(
                            back.stream().sorted().toList(),
                            acts(sheet.rebuild().stream().flatMap(g -> g.steps().stream()).toList())
                                    .stream()
                                    .sorted()
                                    .toList(),
                            name);
                    List<Integer> numbers = sheet.steps().map(Step::number).toList();
                    for (int i = 0; i < numbers.size(); i++) {
                        assertEquals(i + 1, numbers.get(i), name);
                    }
                });
    }

    private static List<String> acts(List<Step> steps) {
        return steps.stream().flatMap(step -> step.acts().stream()).toList();
    }

    private static boolean leavesNothing(Plan plan, Act act) {
        Device device = plan.request().device();
        return act instanceof Act.Prepared prepared
                && Objects.requireNonNull(device.prepares().get(prepared.prepare()))
                        .restore()
                        .isEmpty()
                && Objects.requireNonNull(device.prepares().get(prepared.prepare())).restoreMs()
                        == 0;
    }

    @Test
    void timesScrewsAndConsumablesAddUp() {
        plans.forEach(
                (name, plan) -> {
                    Sheet sheet = sheet(plan);
                    Rebuild rebuild = plan.rebuild();
                    List<Step> steps = sheet.steps().toList();
                    assertEquals(
                            plan.acts().stream().mapToLong(a -> a.ms() + a.setupMs()).sum()
                                    + rebuild.restoreMs()
                                    + rebuild.setupMs(),
                            steps.get(steps.size() - 1).doneMs(),
                            name);
                    long before = 0;
                    for (Step step : steps) {
                        assertTrue(step.doneMs() >= before + step.ms(), name + step);
                        before = step.doneMs();
                    }
                    long screws =
                            plan.releasedJoints().stream()
                                    .filter(j -> device(plan).joint(j).seat().isPresent())
                                    .count();
                    assertEquals(
                            2 * screws,
                            steps.stream().mapToLong(s -> s.facts().screws().size()).sum(),
                            name);
                    Map<String, BigDecimal> used = new TreeMap<>();
                    steps.forEach(step -> add(used, step.facts().uses()));
                    Map<String, BigDecimal> needed = new TreeMap<>();
                    for (CostedAct act : plan.acts()) {
                        if (act.act() instanceof Act.Release release) {
                            add(needed, way(plan, release).consumes());
                        }
                    }
                    assertEquals(needed, used, name);
                    Map<String, BigDecimal> ready = new TreeMap<>();
                    for (Need need : sheet.needs()) {
                        if (need.kind() == Need.Kind.USED_UP) {
                            add(
                                    ready,
                                    List.of(
                                            new ConsumableUse(
                                                    need.id(), need.quantity(), need.unit())));
                        }
                    }
                    assertEquals(needed, ready, name);
                });
    }

    private static Device device(Plan plan) {
        return plan.request().device();
    }

    private static Way way(Plan plan, Act.Release release) {
        return Objects.requireNonNull(
                device(plan).joint(release.joint()).ways().get(release.way()));
    }

    private static void add(Map<String, BigDecimal> sums, List<ConsumableUse> uses) {
        for (ConsumableUse use : uses) {
            sums.merge(
                    use.consumable() + " " + use.unit(),
                    use.quantity().stripTrailingZeros(),
                    (a, b) -> a.add(b).stripTrailingZeros());
        }
    }

    private static Set<String> ruined(Plan plan) {
        Set<String> ruined = new TreeSet<>();
        for (CostedAct act : plan.acts()) {
            if (act.act() instanceof Act.Release release) {
                ruined.addAll(way(plan, release).ruins());
            }
        }
        return ruined;
    }

    @Test
    void whatIsRuinedIsAtItsStepAmongTheNeedsAndNewInTheRebuild() {
        plans.forEach(
                (name, plan) -> {
                    Sheet sheet = sheet(plan);
                    Set<String> ruins = new TreeSet<>();
                    Set<String> fresh = new TreeSet<>();
                    sheet.steps()
                            .forEach(
                                    step -> {
                                        ruins.addAll(step.facts().ruins());
                                        fresh.addAll(step.facts().newParts());
                                    });
                    assertEquals(ruined(plan), ruins, name);
                    assertEquals(ruined(plan), fresh, name);
                    Set<String> ready =
                            sheet.needs().stream()
                                    .filter(
                                            need ->
                                                    need.kind() == Need.Kind.RUINED
                                                            || need.kind() == Need.Kind.TARGET)
                                    .map(Need::id)
                                    .collect(Collectors.toSet());
                    assertTrue(ready.containsAll(ruins), name + ready);
                    for (String part : ruins) {
                        String words = "Destroys " + device(plan).part(part).name();
                        assertTrue(
                                PlanSheet.render(sheet, wide()).contains("- " + words + ";"), name);
                    }
                });
    }

    @Test
    void everyHazardComesInFullBeforeTheFirstStepThatHasIt() {
        plans.forEach(
                (name, plan) -> {
                    for (Sheet.Extent extent : Sheet.Extent.values()) {
                        Set<String> told = new LinkedHashSet<>();
                        Map<String, Set<String>> ofAct = hazards(plan, extent);
                        sheet(plan, extent)
                                .steps()
                                .forEach(
                                        step -> {
                                            step.cautions().forEach(c -> told.add(c.subject()));
                                            for (Caution again : step.reminders()) {
                                                assertTrue(again.step() < step.number(), name);
                                                assertTrue(told.contains(again.subject()), name);
                                            }
                                            for (String act : step.acts()) {
                                                Set<String> due = ofAct.getOrDefault(act, Set.of());
                                                assertTrue(told.containsAll(due), name + act + due);
                                            }
                                        });
                    }
                });
    }

    private static Map<String, Set<String>> hazards(Plan plan, Sheet.Extent extent) {
        Rebuild rebuild = plan.rebuild();
        PlanNotes notes = PlanNotes.of(plan, rebuild);
        Map<String, Set<String>> hazards = new LinkedHashMap<>();
        boolean back = extent == Sheet.Extent.REBUILD;
        List<List<Advice>> all = back ? notes.rebuild() : notes.teardown();
        for (int at = 0; at < all.size(); at++) {
            if (back && rebuild.acts().get(at).act().isEmpty()) {
                continue;
            }
            Act act = back ? rebuild.acts().get(at).act().orElseThrow() : plan.acts().get(at).act();
            all.get(at).stream()
                    .filter(advice -> advice.kind() == Advice.Kind.HAZARD)
                    .forEach(
                            advice ->
                                    hazards.computeIfAbsent(act.id(), a -> new TreeSet<>())
                                            .add(advice.subject()));
        }
        return hazards;
    }

    @Test
    void aHazardOfAPartIsToldBeforeItsLastCoverLeaves() {
        int[] uncovered = {0};
        plans.forEach(
                (name, plan) -> {
                    Set<String> away = new LinkedHashSet<>();
                    Set<String> told = new LinkedHashSet<>();
                    for (Step step : steps(sheet(plan).teardown())) {
                        step.cautions().forEach(caution -> told.add(caution.subject()));
                        for (String act : step.acts()) {
                            if (act.startsWith("move:")) {
                                away.addAll(List.of(act.substring(5).split("\\+")));
                            }
                        }
                        for (Part part : device(plan).parts().values()) {
                            if (!part.under().isEmpty()
                                    && !away.contains(part.id())
                                    && away.containsAll(part.under())) {
                                uncovered[0]++;
                                Set<String> due = new TreeSet<>(part.hazards());
                                due.addAll(device(plan).kindOf(part).hazards());
                                assertTrue(told.containsAll(due), name + part.id() + due);
                            }
                        }
                    }
                });
        assertTrue(uncovered[0] > (SampleSheets.ALL ? 200 : 60), uncovered[0] + " parts uncovered");
    }

    private static List<Step> steps(List<Group> groups) {
        return groups.stream().flatMap(group -> group.steps().stream()).toList();
    }

    @Test
    void aSwollenCellIsLookedForBeforeAnythingIsTouched() {
        plans.forEach(
                (name, plan) -> {
                    boolean checked = false;
                    for (Step step : steps(sheet(plan).teardown())) {
                        checked |=
                                step.kind() == Step.Kind.CHECK
                                        && step.text().contains("swollen cell");
                        boolean prepared =
                                step.acts().stream().allMatch(act -> act.startsWith("prepare:"));
                        assertTrue(checked || prepared, name + step.text());
                    }
                });
    }

    @Test
    void everyGroupSaysWhichSuppliesAreOn() {
        plans.forEach(
                (name, plan) -> {
                    Sheet sheet = sheet(plan);
                    for (Group group : both(sheet)) {
                        for (Step step : group.steps()) {
                            assertEquals(group.on(), step.on(), name + step.text());
                        }
                        for (Supply supply : device(plan).supplies().values()) {
                            assertEquals(
                                    group.on().contains(supply),
                                    group.power().contains(supply.name()),
                                    name + group.power());
                        }
                        assertEquals(group.on().isEmpty(), group.power().equals("all cut"), name);
                    }
                    boolean never = sheet.head().staysOn().containsAll(sheet.head().supplies());
                    assertEquals(
                            never,
                            sheet.head().entries().stream()
                                    .anyMatch(entry -> entry.text().contains("NEVER CUT")),
                            name);
                });
    }

    @Test
    void aStepOfTheRebuildPutsInOneTypeOfScrew() {
        plans.forEach(
                (name, plan) -> {
                    for (Step step : steps(sheet(plan).rebuild())) {
                        Set<String> types =
                                step.facts().screws().stream()
                                        .map(Step.Screw::type)
                                        .collect(Collectors.toSet());
                        assertTrue(types.size() <= 1, name + step.text());
                        boolean patch =
                                types.stream()
                                        .anyMatch(
                                                type ->
                                                        Objects.requireNonNull(
                                                                        device(plan)
                                                                                .screwTypes()
                                                                                .get(type))
                                                                .patch());
                        if (patch) {
                            assertFalse(step.details().toString().contains("old thread"), name);
                        }
                    }
                });
    }

    @Test
    void theShortSheetIsOnePage() {
        plans.forEach(
                (name, plan) -> {
                    String text = ShortSheet.render(sheet(plan), Terminal.none().wide(80));
                    assertTrue(text.lines().count() <= 60, name);
                    assertTrue(text.lines().allMatch(line -> line.length() <= 80), name);
                });
    }

    @Test
    void whatASheetCallsCutIsCut() {
        plans.forEach(
                (name, plan) -> {
                    Sheet sheet = sheet(plan);
                    Set<String> needed = new TreeSet<>();
                    for (Step step : sheet.steps().toList()) {
                        List<String> on = step.on().stream().map(Supply::id).toList();
                        for (String act : step.acts()) {
                            plan.releasedJoints().stream()
                                    .filter(joint -> act.startsWith("release:" + joint + "/"))
                                    .flatMap(
                                            joint ->
                                                    device(plan)
                                                            .power()
                                                            .needs(device(plan).joint(joint))
                                                            .stream())
                                    .forEach(
                                            supply -> {
                                                needed.add(supply);
                                                assertTrue(!on.contains(supply), name + step);
                                            });
                        }
                    }
                    List<String> always = sheet.head().staysOn().stream().map(Supply::id).toList();
                    needed.forEach(supply -> assertTrue(!always.contains(supply), name));
                });
    }

    @Test
    void terminalAndPageShowAllOfItInOrder() throws Exception {
        for (Map.Entry<String, Plan> each : plans.entrySet()) {
            for (Sheet.Extent extent : Sheet.Extent.values()) {
                Sheet sheet = sheet(each.getValue(), extent);
                String name = each.getKey() + " " + extent;
                List<String> facts = facts(sheet);
                inOrder(name + " on the terminal", facts, PlanSheet.render(sheet, wide()));
                inOrder(name + " on the page", facts, page(sheet, each.getValue()));
            }
        }
    }

    private static Terminal wide() {
        return Terminal.none().wide(NO_WRAPPING);
    }

    private static List<String> facts(Sheet sheet) {
        List<String> facts = new ArrayList<>(List.of(sheet.head().title()));
        sheet.head().entries().forEach(entry -> facts.add(entry.label() + " " + entry.text()));
        sheet.head().hazards().forEach(hazard -> facts.add(hazard.reminder()));
        facts.add(sheet.head().notice());
        sheet.head().cautions().forEach(c -> facts.add(c.signal() + " " + c.text()));
        sheet.needLines().forEach(line -> facts.add(line.label() + " " + line.text()));
        sheet.needs().forEach(need -> assertTrue(facts.toString().contains(need.text())));
        for (Group group : both(sheet)) {
            facts.add(group.title());
            facts.add(group.power());
            facts.add(group.turn());
            for (Step step : group.steps()) {
                step.cautions().forEach(c -> facts.add(c.signal() + " " + c.text()));
                step.reminders().forEach(caution -> facts.add(caution.reminder()));
                facts.add(step.number() + " [ ] " + step.text());
                facts.add(step.aside());
                facts.addAll(step.details());
            }
        }
        sheet.checks().forEach(check -> facts.add("[ ] " + check));
        return facts;
    }

    private static List<Group> both(Sheet sheet) {
        List<Group> all = new ArrayList<>(sheet.teardown());
        all.addAll(sheet.rebuild());
        return all;
    }

    private static String page(Sheet sheet, Plan plan) throws IOException {
        Output page =
                OurPlugins.quietly().outputs().stream()
                        .filter(output -> output.id().equals("html-sheet"))
                        .findFirst()
                        .orElseThrow();
        byte[] bytes = OutputFiles.of(page, new Output.Content(sheet, plan)).get(page.fileName());
        return new String(bytes, UTF_8)
                .replace("<span class=\"box\"></span>", " [ ] ")
                .replaceAll("(?s)<style>.*?</style>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    private static void inOrder(String where, List<String> facts, String text) {
        String plain = plain(text);
        int from = 0;
        for (String fact : facts) {
            int at = plain.indexOf(plain(fact), from);
            assertTrue(at >= 0, () -> where + ": \"" + fact + "\" is missing or misplaced");
            from = at;
        }
    }

    private static String plain(String text) {
        return BLANKS.matcher(text).replaceAll(" ").strip();
    }

    @Test
    void noLineIsWiderThanTheTerminal() {
        plans.forEach(
                (name, plan) -> {
                    for (int width : List.of(60, 80)) {
                        String text = PlanSheet.render(sheet(plan), Terminal.none().wide(width));
                        assertEquals(
                                List.of(),
                                text.lines().filter(line -> line.length() > width).toList(),
                                name);
                    }
                });
    }

    /** Names of the lists and objects in the JSON, and the section that documents their members. */
    private static final Map<String, String> SECTIONS =
            Map.ofEntries(
                    Map.entry("entries", "Entry"),
                    Map.entry("hazards", "Caution"),
                    Map.entry("cautions", "Caution"),
                    Map.entry("reminders", "Caution"),
                    Map.entry("supplies", "Supply"),
                    Map.entry("needs", "Need"),
                    Map.entry("teardown", "Group"),
                    Map.entry("rebuild", "Group"),
                    Map.entry("steps", "Step"),
                    Map.entry("screws", "Screw"),
                    Map.entry("passes", "Pass"),
                    Map.entry("cuts", "Cut"),
                    Map.entry("cuts/passes", "Cut pass"),
                    Map.entry("strips", "Strip"),
                    Map.entry("places", "Place"),
                    Map.entry("unsafe", "Unsafe stretch"),
                    Map.entry("uses", "Use"));

    @Test
    void theJsonHasTheMembersThatItsPageDocumentsAndNoOthers() throws IOException {
        Map<String, Set<String>> written = new TreeMap<>();
        for (Plan plan : plans.values()) {
            String json = SheetJson.write(sheet(plan));
            members("The sheet", PlainJson.object(json), written);
        }
        Sheet uncut = withUnsafeStretch(sheet(plans.values().iterator().next()));
        members("The sheet", PlainJson.object(SheetJson.write(uncut)), written);

        assertEquals(documented(), written);
    }

    /** No sample has a bond without a safe depth, or screws for two trays: they are put in here. */
    private static Sheet withUnsafeStretch(Sheet sheet) {
        CutPlan.Place place = new CutPlan.Place(0, 0, 10);
        CutPlan cut =
                new CutPlan(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new CutPlan.Unsafe(place, 5, 2, "coil")));
        Group group = sheet.teardown().get(0);
        Step step = group.steps().get(0);
        Step.Facts facts =
                new Step.Facts(
                        List.of(
                                new Step.Screw(
                                        "joint",
                                        "type",
                                        OptionalDouble.empty(),
                                        "",
                                        OptionalInt.of(2))),
                        Optional.empty(),
                        Map.of("bond", cut),
                        Map.of("bond", new StripPlan(List.of(new StripPlan.Piece("left", 90, 2)))),
                        List.of(),
                        List.of(),
                        List.of());
        Step unsafe =
                new Step(
                        step.number(),
                        step.kind(),
                        step.acts(),
                        step.test(),
                        step.cautions(),
                        step.reminders(),
                        step.text(),
                        step.aside(),
                        step.details(),
                        facts,
                        step.on(),
                        step.ms(),
                        step.waitMs(),
                        step.doneMs());
        Group one =
                new Group(
                        group.title(),
                        group.tool(),
                        group.posture(),
                        group.turn(),
                        group.power(),
                        group.setupMs(),
                        List.of(unsafe));
        return new Sheet(
                sheet.extent(),
                sheet.head(),
                sheet.needs(),
                List.of(one),
                sheet.rebuild(),
                sheet.tally(),
                sheet.checks());
    }

    private static void members(
            String section, Map<?, ?> object, Map<String, Set<String>> written) {
        Set<String> keys = written.computeIfAbsent(section, s -> new TreeSet<>());
        object.forEach(
                (key, value) -> {
                    keys.add(String.valueOf(key));
                    String nested = section.equals("Cut") && key.equals("passes") ? "cuts/" : "";
                    String of = SECTIONS.get(nested + key);
                    if (value instanceof List<?> list) {
                        for (Object item : list) {
                            if (item instanceof Map<?, ?> map) {
                                members(Objects.requireNonNull(of, "" + key), map, written);
                            }
                        }
                    }
                });
    }

    private static Map<String, Set<String>> documented() throws IOException {
        String page = Files.readString(Path.of("../docs/sheet-json.md"));
        Map<String, Set<String>> sections = new TreeMap<>();
        Matcher section = Pattern.compile("(?ms)^## (.*?)\\n(.*?)(?=^## |\\z)").matcher(page);
        while (section.find()) {
            Set<String> keys = new TreeSet<>();
            Matcher row = Pattern.compile("(?m)^\\| (`.*?) \\|").matcher(section.group(2));
            while (row.find()) {
                Pattern.compile("`([^`]+)`")
                        .matcher(row.group(1))
                        .results()
                        .forEach(key -> keys.add(key.group(1)));
            }
            sections.put(section.group(1), keys);
        }
        return sections;
    }
}
