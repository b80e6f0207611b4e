package reseat.internal.files;

import static reseat.internal.files.JsonPieces.lower;
import static reseat.internal.files.JsonPieces.some;
import static reseat.internal.files.JsonPieces.texts;
import static reseat.internal.files.JsonPieces.uses;

import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.Seat;
import reseat.model.State;
import reseat.plan.Advice;
import reseat.plan.Fastening;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.SpareNeed;
import reseat.plan.Tally;
import reseat.plan.Wear;

/** Writes plans as {@code reseat-plan/1}. */
public final class PlanWriter {

    /** The name and version of the format. */
    static final String FORMAT = "reseat-plan/1";

    private final JsonObject root = new JsonObject();

    private PlanWriter() {}

    /** Writes a plan; see {@code PlanJson.write}. */
    public static String write(Plan plan, Rebuild rebuild, Tally tally, PlanNotes notes) {
        PlanWriter writer = new PlanWriter();
        writer.head(plan);
        writer.acts(plan);
        writer.rebuild(plan, rebuild);
        writer.needs(rebuild);
        JsonPieces.tally(writer.root.putObject("tally"), tally);
        writer.tests(rebuild);
        JsonArray all = writer.root.putArray("notes");
        notes(all, "teardown", notes.teardown());
        notes(all, "rebuild", notes.rebuild());
        return writer.root.text();
    }

    private void head(Plan plan) {
        Device device = plan.request().device();
        root.put("format", FORMAT).put("device", device.id());
        device.variant().ifPresent(variant -> root.put("variant", variant));
        goal(root.putObject("goal"), plan.request().goal());
        state(root.putObject("start"), plan.request().start());
        rules(plan.request().rules());
        if (plan.request().leaveOpen()) {
            root.put("leaveOpen", true);
        }
        root.put("totalMs", plan.totalMs())
                .put("lowerBoundMs", plan.lowerBoundMs())
                .put("proved", plan.proved())
                .put("ended", lower(plan.ended()))
                .put("gap", plan.gap())
                .put("expansions", plan.expansions());
    }

    private static void goal(JsonObject node, Goal goal) {
        if (goal instanceof Goal.Free free) {
            node.put("kind", "free");
            texts(node.putArray("parts"), free.targets());
        } else if (goal instanceof Goal.Reach reach) {
            node.put("kind", "reach").put("joint", reach.joint());
        } else {
            node.put("kind", "teardown");
        }
    }

    private static void state(JsonObject node, State state) {
        texts(node.putArray("released"), state.released());
        JsonArray places = node.putArray("places");
        for (Set<String> place : state.places()) {
            texts(places.addArray(), place);
        }
        texts(node.putArray("prepared"), state.prepared());
    }

    private void rules(Rules rules) {
        JsonObject node = root.putObject("rules");
        some(node, "forbiddenActs", rules.forbiddenActs());
        some(node, "forbiddenJoints", rules.forbiddenJoints());
        some(node, "forbiddenParts", rules.forbiddenParts());
        some(node, "forbiddenTools", rules.forbiddenTools());
        some(node, "requiredActs", rules.requiredActs());
        some(node, "requiredJoints", rules.requiredJoints());
        some(node, "requiredParts", rules.requiredParts());
        some(node, "requiredTools", rules.requiredTools());
        some(node, "permittedRuin", rules.permittedRuin());
    }

    private void acts(Plan plan) {
        JsonArray acts = root.putArray("acts");
        for (CostedAct each : plan.acts()) {
            JsonObject node = acts.addObject().put("id", each.act().id());
            what(node, each.act());
            node.put("tool", each.tool())
                    .put("posture", each.posture())
                    .put("ms", each.ms())
                    .put("restoreMs", each.restoreMs())
                    .put("setupMs", each.setupMs());
        }
    }

    private static void what(JsonObject node, Act act) {
        if (act instanceof Act.Prepared prepared) {
            node.put("kind", "prepare").put("prepare", prepared.prepare());
        } else if (act instanceof Act.Release release) {
            node.put("kind", "release").put("joint", release.joint()).put("way", release.way());
        } else if (act instanceof Act.MoveParts move) {
            node.put("kind", "move");
            texts(node.putArray("parts"), move.parts());
        }
    }

    private void rebuild(Plan plan, Rebuild rebuild) {
        JsonObject node =
                root.putObject("rebuild")
                        .put("restoreMs", rebuild.restoreMs())
                        .put("setupMs", rebuild.setupMs())
                        .put("setupBoundMs", rebuild.setupBoundMs())
                        .put("proved", rebuild.proved())
                        .put("ended", lower(rebuild.ended()))
                        .put("dwellMs", rebuild.dwellMs());
        JsonArray acts = node.putArray("acts");
        for (RebuildAct each : rebuild.acts()) {
            act(acts.addObject(), each);
        }
        JsonArray fastenings = node.putArray("fastenings");
        for (Fastening each : rebuild.fastenings()) {
            fastening(fastenings.addObject(), plan.request().device(), each);
        }
        texts(node.putArray("leftOpen"), rebuild.leftOpen());
        texts(node.putArray("leftApart"), rebuild.leftApart());
        if (!rebuild.broken().isEmpty()) {
            texts(node.putArray("broken"), rebuild.broken());
        }
    }

    private static void act(JsonObject node, RebuildAct act) {
        node.put("kind", lower(act.kind()));
        if (act.kind().isUndoing()) {
            act.act().ifPresent(undone -> node.put("undoes", undone.id()));
            if (act.undoes().isEmpty()) {
                node.put("openBefore", true);
            }
        }
        some(node, "joints", act.joints());
        act.test().ifPresent(test -> node.put("test", test.id()));
        node.put("tool", act.tool())
                .put("posture", act.posture())
                .put("ms", act.ms())
                .put("setupMs", act.setupMs());
        act.rest().ifPresent(rest -> node.put("dwellMs", act.dwellMs()).put("rest", lower(rest)));
        some(node, "brings", act.brings());
        if (!act.consumes().isEmpty()) {
            uses(node.putArray("consumes"), act.consumes());
        }
        if (act.irreversible()) {
            node.put("irreversible", true);
        }
        some(node, "newParts", act.fresh());
        some(node, "on", act.on());
    }

    private static void fastening(JsonObject node, Device device, Fastening fastening) {
        node.put("part", fastening.part())
                .put("firstAct", (long) fastening.first())
                .put("lastAct", (long) fastening.last());
        JsonArray screws = node.putArray("screws");
        for (String id : fastening.joints()) {
            Seat seat = device.joint(id).seat().orElseThrow();
            JsonObject screw = screws.addObject().put("joint", id).put("screw", seat.screw());
            seat.torqueNm()
                    .ifPresent(
                            nm ->
                                    screw.put("torqueNm", nm)
                                            .put("torqueSource", seat.torqueSource()));
        }
        JsonPieces.passes(node.putArray("passes"), fastening.order());
        texts(node.putArray("notes"), fastening.order().notes());
    }

    private void needs(Rebuild rebuild) {
        uses(root.putArray("consumables"), rebuild.consumables());
        JsonArray spares = root.putArray("spares");
        for (SpareNeed need : rebuild.spares()) {
            JsonObject node =
                    spares.addObject()
                            .put("id", need.id())
                            .put("count", (long) need.count())
                            .put("reason", lower(need.reason()));
            need.number().ifPresent(number -> node.put("number", number));
        }
        JsonArray wear = root.putArray("wear");
        for (Wear each : rebuild.wear()) {
            wear.addObject()
                    .put("joint", each.joint())
                    .put("made", (long) each.made())
                    .put("rated", (long) each.rated());
        }
    }

    private void tests(Rebuild rebuild) {
        JsonArray tests = root.putArray("tests");
        for (PlacedTest each : rebuild.tests()) {
            JsonObject node =
                    tests.addObject()
                            .put("id", each.test().id())
                            .put("text", each.test().text())
                            .put("rebuildAct", (long) each.at());
            each.closing().ifPresent(joint -> node.put("closing", joint));
        }
    }

    private static void notes(JsonArray all, String side, List<List<Advice>> notes) {
        for (int at = 0; at < notes.size(); at++) {
            for (Advice advice : notes.get(at)) {
                JsonObject node =
                        all.addObject()
                                .put("of", side)
                                .put("act", (long) at)
                                .put("kind", lower(advice.kind()))
                                .put("signal", advice.signal().name())
                                .put("subject", advice.subject())
                                .put("text", advice.text());
                advice.until().ifPresent(until -> node.put("untilAct", (long) until));
            }
        }
    }
}
