package reseat.internal.files;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import reseat.model.Bond;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Duration;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;
import reseat.model.Point;
import reseat.model.Seat;
import reseat.model.SetupTable;
import reseat.model.Way;

/** Writes a device as a resolved device file. The format is documented in core/docs/resolved.md. */
public final class ResolvedWriter {

    private ResolvedWriter() {}

    /** Returns the device as indented JSON: the same facts, the same text. */
    public static String write(Device device) {
        JsonObject root = new JsonObject();
        root.put("format", Format.NAME);
        root.put("resolved", true);
        root.put("id", device.id());
        device.variant().ifPresent(variant -> root.put("variant", variant));
        root.put("name", device.name());
        text(root, "maker", device.maker());
        text(root, "family", device.family());
        root.put("base", device.base());
        root.put("hand", device.hand());
        root.put("usualPosture", device.usualPosture());
        device.outline()
                .ifPresent(
                        outline -> {
                            JsonObject node = root.putObject("outline");
                            node.put("widthMm", outline.widthMm());
                            node.put("heightMm", outline.heightMm());
                            real(node, "thicknessMm", outline.thicknessMm());
                        });
        JsonObject supplies = root.putObject("supplies");
        device.supplies()
                .values()
                .forEach(
                        supply -> {
                            JsonObject node = supplies.putObject(supply.id());
                            node.put("name", supply.name());
                            supply.of().ifPresent(part -> node.put("of", part));
                            flag(node, "first", supply.first());
                        });
        tools(root.putObject("tools"), device);
        JsonObject setup = root.putObject("setup");
        setup(setup.putObject("tool"), device.setup(), true);
        setup(setup.putObject("posture"), device.setup(), false);
        setup.put("layAside", device.setup().layAsideMs());
        setup.put("turnOpen", device.setup().turnOpenMs());
        words(root, device);
        JsonObject prepare = root.putObject("prepare");
        device.prepares()
                .values()
                .forEach(
                        act -> {
                            JsonObject node = prepare.putObject(act.id());
                            node.put("text", act.text());
                            if (!act.restore().isEmpty()) {
                                node.put("restore", act.restore());
                            }
                            node.put("ms", act.ms());
                            node.put("restoreMs", act.restoreMs());
                            texts(node, "hazards", act.hazards());
                            if (act.onlyInside()) {
                                node.put("neededBy", FormatParts.INSIDE);
                            }
                        });
        JsonObject parts = root.putObject("parts");
        device.parts().values().forEach(part -> part(parts.putObject(part.id()), part));
        JsonObject joints = root.putObject("joints");
        device.joints().values().forEach(joint -> joint(joints.putObject(joint.id()), joint));
        JsonObject tests = root.putObject("tests");
        device.tests()
                .values()
                .forEach(
                        test -> {
                            JsonObject node = tests.putObject(test.id());
                            node.put("text", test.text());
                            texts(node, "of", test.of());
                            texts(node, "needs", test.needs());
                            node.put("switchedOn", test.powered()).put("at", test.at());
                            flag(node, "leak", test.leak());
                        });
        new ComputedWriter(device).write(root.putObject("computed"));
        return root.text();
    }

    private static void tools(JsonObject tools, Device device) {
        device.tools()
                .values()
                .forEach(
                        tool -> {
                            JsonObject node = tools.putObject(tool.id());
                            node.put("name", tool.name());
                            tool.handle().ifPresent(handle -> node.put("handle", handle));
                            tool.drive().ifPresent(drive -> node.put("drive", drive));
                        });
    }

    private static void setup(JsonObject table, SetupTable setup, boolean tools) {
        List<String> ids = tools ? setup.tools() : setup.postures();
        for (String from : ids) {
            JsonObject row = table.putObject(from);
            for (String to : ids) {
                row.put(to, tools ? setup.toolChangeMs(from, to) : setup.postureChangeMs(from, to));
            }
        }
    }

    /** Writes kinds, hazards, consumables and screw types: what acts, parts and joints refer to. */
    private static void words(JsonObject root, Device device) {
        JsonObject kinds = root.putObject("kinds");
        kinds(kinds.putObject("parts"), device, Kind.Scope.PART);
        kinds(kinds.putObject("joints"), device, Kind.Scope.JOINT);
        kinds(kinds.putObject("manipulations"), device, Kind.Scope.MANIPULATION);
        JsonObject hazards = root.putObject("hazards");
        device.hazards()
                .values()
                .forEach(
                        hazard -> {
                            JsonObject node = hazards.putObject(hazard.id());
                            node.put("signal", hazard.signal().name());
                            node.put("nature", hazard.nature());
                            node.put("consequence", hazard.consequence());
                            node.put("avoidance", hazard.avoidance());
                            texts(node, "protection", hazard.protection());
                        });
        JsonObject consumables = root.putObject("consumables");
        device.consumables()
                .values()
                .forEach(
                        each -> {
                            JsonObject node = consumables.putObject(each.id());
                            node.put("name", each.name()).put("unit", each.unit());
                            flag(node, "flammable", each.flammable());
                        });
        JsonObject screwTypes = root.putObject("screwTypes");
        device.screwTypes()
                .values()
                .forEach(
                        type -> {
                            JsonObject node = screwTypes.putObject(type.id());
                            node.put("thread", type.thread());
                            node.put("lengthMm", type.lengthMm());
                            real(node, "threadLengthMm", type.threadLengthMm());
                            node.put("head", type.head());
                            real(node, "headDiameterMm", type.headDiameterMm());
                            real(node, "headHeightMm", type.headHeightMm());
                            node.put("drive", type.drive());
                            type.strengthClass().ifPresent(grade -> node.put("class", grade));
                            text(node, "finish", type.finish());
                            node.put("patch", type.patch());
                            type.spare().ifPresent(spare -> node.put("spare", spare));
                        });
    }

    private static void kinds(JsonObject table, Device device, Kind.Scope scope) {
        for (Kind kind : device.kinds(scope).values()) {
            JsonObject node = table.putObject(kind.id());
            node.put("title", kind.title());
            text(node, "verb", kind.verb());
            text(node, "restoreVerb", kind.restoreVerb());
            kind.role().ifPresent(role -> node.put("role", low(role)));
            kind.tool().ifPresent(tool -> node.put("tool", tool));
            kind.posture().ifPresent(posture -> node.put("posture", posture));
            kind.time().ifPresent(time -> time(node, "time", time));
            kind.restoreTime().ifPresent(time -> time(node, "restoreTime", time));
            texts(node, "hazards", kind.hazards());
            texts(node, "handling", kind.handling());
            consumes(node, kind.consumes());
            text(node, "restore", kind.restore());
            flag(node, "irreversible", kind.irreversible());
            flag(node, "keepHold", kind.keepHold());
            flag(node, "magnetic", kind.magnetic());
            flag(node, "captive", kind.captive());
            if (kind.dwellMs() != 0) {
                node.put("dwell", kind.dwellMs());
            }
            kind.ratedCycles().ifPresent(cycles -> node.put("ratedCycles", cycles));
            kind.needs().ifPresent(needs -> list(node, "needs", needs));
            flag(node, "forceful", kind.forceful());
            flag(node, "laid", kind.laid());
            flag(node, "flammable", kind.flammable());
            flag(node, "storesCharge", kind.storesCharge());
            kind.heat().ifPresent(heat -> heat(node, heat));
            text(node, "source", kind.source());
        }
    }

    private static void heat(JsonObject node, Kind.Heat heat) {
        JsonObject inner = node.putObject("heat");
        inner.put("source", heat.source());
        inner.put("celsius", heat.celsius());
        inner.put("ms", heat.ms());
    }

    private static void time(JsonObject node, String key, Duration time) {
        node.put(key, time.text());
        node.put(key + "Basis", low(time.basis()));
    }

    private static void part(JsonObject node, Part part) {
        node.put("name", part.name());
        node.put("kind", part.kind());
        list(node, "under", part.under());
        part.move()
                .ifPresent(
                        move -> {
                            JsonObject act = node.putObject("move");
                            act(
                                    act,
                                    move.kind(),
                                    move.tool(),
                                    move.posture(),
                                    move.ms(),
                                    move.restoreMs());
                            texts(act, "handling", move.handling());
                            texts(act, "hazards", move.hazards());
                        });
        part.spare().ifPresent(spare -> node.put("spare", spare));
        list(node, "spareIncludes", part.spareIncludes());
        texts(node, "hazards", part.hazards());
        texts(node, "inspect", part.inspect());
        part.needs().ifPresent(needs -> list(node, "needs", needs));
    }

    private static void act(
            JsonObject node, String kind, String tool, String posture, long ms, long restoreMs) {
        node.put("kind", kind);
        node.put("tool", tool);
        node.put("posture", posture);
        node.put("ms", ms);
        node.put("restoreMs", restoreMs);
    }

    private static void joint(JsonObject node, Joint joint) {
        node.put("name", joint.name());
        node.put("kind", joint.kind());
        list(node, "holds", joint.holds());
        list(node, "under", joint.under());
        node.put("slack", joint.slack());
        flag(node, "gives", joint.gives());
        joint.needs().ifPresent(needs -> list(node, "needs", needs));
        list(node, "cuts", joint.cuts());
        JsonObject ways = node.putObject("ways");
        joint.ways().values().forEach(way -> way(ways.putObject(way.id()), way));
        joint.seat()
                .ifPresent(
                        seat -> {
                            node.put("screw", seat.screw());
                            seat(node.putObject("seat"), seat);
                        });
        joint.bond().ifPresent(bond -> bond(node.putObject("bond"), bond));
        node.put("madeCycles", joint.madeCycles());
    }

    private static void way(JsonObject node, Way way) {
        act(node, way.kind(), way.tool(), way.posture(), way.ms(), way.restoreMs());
        consumes(node, way.consumes());
        list(node, "ruins", way.ruins());
        text(node, "restore", way.restore());
        texts(node, "handling", way.handling());
        texts(node, "hazards", way.hazards());
        way.strainedBy().ifPresent(strains -> list(node, "strainedBy", strains));
    }

    private static void consumes(JsonObject node, List<ConsumableUse> uses) {
        if (!uses.isEmpty()) {
            JsonArray all = node.putArray("consumes");
            uses.forEach(
                    use ->
                            all.addObject()
                                    .put("of", use.consumable())
                                    .put("quantity", use.quantity())
                                    .put("unit", use.unit()));
        }
    }

    private static void seat(JsonObject node, Seat seat) {
        seat.at().ifPresent(at -> node.put("x", at.xMm()).put("y", at.yMm()));
        node.put("form", low(seat.form()));
        seat.thread().ifPresent(thread -> node.put("thread", thread));
        seat.material().ifPresent(material -> node.put("material", material));
        real(node, "clampedMm", seat.clampedMm());
        real(node, "threadedMm", seat.threadedMm());
        real(node, "depthMm", seat.depthMm());
        real(node, "bossOuterMm", seat.bossOuterMm());
        if (!seat.behind().isEmpty()) {
            JsonArray all = node.putArray("behind");
            seat.behind()
                    .forEach(
                            each ->
                                    all.addObject()
                                            .put("part", each.part())
                                            .put("gapMm", each.gapMm()));
        }
        real(node, "torqueNm", seat.torqueNm());
        text(node, "torqueSource", seat.torqueSource());
        seat.pass().ifPresent(pass -> node.put("pass", pass));
        node.put("formedCycles", seat.formedCycles());
    }

    private static void bond(JsonObject node, Bond bond) {
        points(node, "edge", bond.edge());
        JsonObject strips = node.putObject("strips");
        bond.strips()
                .forEach(
                        strip -> {
                            JsonObject one = strips.putObject(strip.id());
                            points(one, "path", strip.path());
                            one.put("widthMm", strip.widthMm());
                        });
        JsonObject keepOuts = node.putObject("keepOuts");
        bond.keepOuts()
                .forEach(
                        keepOut -> {
                            JsonObject one =
                                    keepOuts.putObject(keepOut.id()).put("part", keepOut.part());
                            points(one, "outline", keepOut.outline());
                        });
        node.put("marginMm", bond.marginMm());
        real(node, "thicknessMm", bond.thicknessMm());
        JsonArray depths = node.putArray("givenDepths");
        bond.givenDepths()
                .forEach(
                        depth ->
                                depths.addObject()
                                        .put("edge", depth.edge())
                                        .put("depthMm", depth.depthMm()));
    }

    private static void points(JsonObject node, String key, List<Point> points) {
        JsonArray all = node.putArray(key);
        points.forEach(point -> all.addArray().add(point.xMm()).add(point.yMm()));
    }

    private static String low(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static void text(JsonObject node, String key, String text) {
        if (!text.isEmpty()) {
            node.put(key, text);
        }
    }

    private static void flag(JsonObject node, String key, boolean flag) {
        if (flag) {
            node.put(key, true);
        }
    }

    private static void real(JsonObject node, String key, OptionalDouble value) {
        value.ifPresent(real -> node.put(key, real));
    }

    /** Writes a value that programs use, even if empty. */
    static void list(JsonObject node, String key, List<String> texts) {
        JsonArray all = node.putArray(key);
        texts.forEach(all::add);
    }

    /** Writes a value that is only printed, unless empty. */
    private static void texts(JsonObject node, String key, List<String> texts) {
        if (!texts.isEmpty()) {
            list(node, key, texts);
        }
    }
}
