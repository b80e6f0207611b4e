package reseat.internal.files;

import static reseat.internal.files.JsonPieces.lower;
import static reseat.internal.files.JsonPieces.some;
import static reseat.internal.files.JsonPieces.texts;

import java.util.List;
import reseat.fasten.CutPlan;
import reseat.fasten.StripPlan;
import reseat.model.Supply;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.sheet.Group;
import reseat.sheet.Head;
import reseat.sheet.Need;
import reseat.sheet.Sheet;
import reseat.sheet.Step;

/** Writes sheets as {@code reseat-sheet/1}. */
public final class SheetWriter {

    /** The name and version of the format. */
    static final String FORMAT = "reseat-sheet/1";

    private SheetWriter() {}

    /** Writes a sheet; see {@code SheetJson.write}. */
    public static String write(Sheet sheet) {
        JsonObject root = new JsonObject();
        root.put("format", FORMAT).put("extent", lower(sheet.extent()));
        head(root, sheet.head());
        JsonArray needs = root.putArray("needs");
        sheet.needs().forEach(need -> need(needs.addObject(), need));
        groups(root.putArray("teardown"), sheet.teardown());
        groups(root.putArray("rebuild"), sheet.rebuild());
        JsonPieces.tally(root.putObject("tally"), sheet.tally());
        texts(root.putArray("checks"), sheet.checks());
        return root.text();
    }

    private static void head(JsonObject root, Head head) {
        root.put("device", head.device());
        head.variant().ifPresent(variant -> root.put("variant", variant));
        root.put("title", head.title())
                .put("goal", head.goal())
                .put("proved", head.proved())
                .put("totalMs", head.totalMs())
                .put("lowerBoundMs", head.lowerBoundMs())
                .put("teardownMs", head.teardownMs())
                .put("setupMs", head.setupMs())
                .put("rebuildMs", head.rebuildMs())
                .put("rebuildSetupMs", head.rebuildSetupMs())
                .put("waitMs", head.waitMs())
                .put("leastMs", head.leastMs())
                .put("mostMs", head.mostMs());
        JsonArray entries = root.putArray("entries");
        for (Entry entry : head.entries()) {
            entries.addObject().put("label", entry.label()).put("text", entry.text());
        }
        cautions(root.putArray("cautions"), head.cautions());
        cautions(root.putArray("hazards"), head.hazards());
        JsonArray supplies = root.putArray("supplies");
        for (Supply supply : head.supplies()) {
            supplies.addObject()
                    .put("id", supply.id())
                    .put("name", supply.name())
                    .put("staysOn", head.staysOn().contains(supply));
        }
        root.put("notice", head.notice());
    }

    private static void cautions(JsonArray all, List<Caution> cautions) {
        for (Caution each : cautions) {
            JsonObject node =
                    all.addObject()
                            .put("signal", each.signal().name())
                            .put("subject", each.subject())
                            .put("step", (long) each.step())
                            .put("brief", each.brief())
                            .put("text", each.text());
            each.hazard()
                    .ifPresent(
                            hazard ->
                                    node.put("nature", hazard.nature())
                                            .put("consequence", hazard.consequence())
                                            .put("avoidance", hazard.avoidance()));
        }
    }

    private static void need(JsonObject node, Need need) {
        node.put("kind", lower(need.kind()))
                .put("id", need.id())
                .put("name", need.name())
                .put("quantity", need.quantity())
                .put("unit", need.unit());
        need.number().ifPresent(number -> node.put("number", number));
        if (!need.why().isEmpty()) {
            node.put("why", need.why());
        }
        node.put("text", need.text());
    }

    private static void groups(JsonArray all, List<Group> groups) {
        for (Group group : groups) {
            JsonObject node = all.addObject().put("title", group.title());
            group.tool().ifPresent(tool -> node.put("tool", tool));
            node.put("posture", group.posture());
            if (!group.turn().isEmpty()) {
                node.put("turn", group.turn());
            }
            if (!group.power().isEmpty()) {
                node.put("power", group.power());
            }
            texts(node.putArray("on"), group.on().stream().map(Supply::id).toList());
            node.put("setupMs", group.setupMs());
            JsonArray steps = node.putArray("steps");
            group.steps().forEach(step -> step(steps.addObject(), step));
        }
    }

    private static void step(JsonObject node, Step step) {
        node.put("number", (long) step.number()).put("kind", lower(step.kind()));
        texts(node.putArray("acts"), step.acts());
        step.test().ifPresent(test -> node.put("test", test));
        cautions(node.putArray("cautions"), step.cautions());
        cautions(node.putArray("reminders"), step.reminders());
        node.put("text", step.text());
        if (!step.aside().isEmpty()) {
            node.put("aside", step.aside());
        }
        texts(node.putArray("details"), step.details());
        facts(node, step.facts());
        texts(node.putArray("on"), step.on().stream().map(Supply::id).toList());
        node.put("ms", step.ms()).put("waitMs", step.waitMs()).put("doneMs", step.doneMs());
    }

    private static void facts(JsonObject node, Step.Facts facts) {
        if (!facts.screws().isEmpty()) {
            JsonArray screws = node.putArray("screws");
            for (Step.Screw each : facts.screws()) {
                JsonObject screw =
                        screws.addObject().put("joint", each.joint()).put("screw", each.type());
                each.torqueNm()
                        .ifPresent(
                                nm ->
                                        screw.put("torqueNm", nm)
                                                .put("torqueSource", each.torqueSource()));
                each.tray().ifPresent(tray -> screw.put("tray", (long) tray));
            }
        }
        facts.tightening().ifPresent(order -> JsonPieces.passes(node.putArray("passes"), order));
        if (!facts.cuts().isEmpty()) {
            JsonArray cuts = node.putArray("cuts");
            facts.cuts().forEach((bond, cut) -> cut(cuts.addObject().put("bond", bond), cut));
        }
        if (!facts.strips().isEmpty()) {
            JsonArray strips = node.putArray("strips");
            facts.strips().forEach((bond, plan) -> strips(strips, bond, plan));
        }
        if (!facts.uses().isEmpty()) {
            JsonPieces.uses(node.putArray("uses"), facts.uses());
        }
        some(node, "ruins", facts.ruins());
        some(node, "newParts", facts.newParts());
    }

    private static void strips(JsonArray strips, String bond, StripPlan plan) {
        for (StripPlan.Piece piece : plan.pieces()) {
            strips.addObject()
                    .put("bond", bond)
                    .put("strip", piece.strip())
                    .put("lengthMm", piece.lengthMm())
                    .put("widthMm", piece.widthMm());
        }
    }

    private static void cut(JsonObject node, CutPlan cut) {
        JsonArray passes = node.putArray("passes");
        for (CutPlan.Pass pass : cut.passes()) {
            JsonArray places = passes.addObject().put("depthMm", pass.depthMm()).putArray("places");
            pass.places().forEach(place -> place(places.addObject(), place));
        }
        JsonArray unsafe = node.putArray("unsafe");
        for (CutPlan.Unsafe each : cut.unsafe()) {
            place(unsafe.addObject(), each.place())
                    .put("neededMm", each.neededMm())
                    .put("allowedMm", each.allowedMm())
                    .put("keepOut", each.keepOut());
        }
    }

    private static JsonObject place(JsonObject node, CutPlan.Place place) {
        return node.put("edge", (long) place.edge())
                .put("fromMm", place.fromMm())
                .put("toMm", place.toMm());
    }
}
