package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.model.Consumable;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Outline;
import reseat.model.Part;
import reseat.model.Prepare;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.model.Supply;
import reseat.model.Tool;
import reseat.model.Way;
import reseat.text.QuoteText;

/** Creates facts from a device tree that {@link ShapeCheck} has checked. */
final class Assembly {

    private final Look device;
    private final Look stated;
    private final boolean resolved;
    private final Problems problems;
    private final Draft draft = new Draft();
    private final Map<String, Tool> tools = new LinkedHashMap<>();
    private final Map<String, Consumable> consumables = new LinkedHashMap<>();
    private final KindTable kinds;
    private final Acts acts;

    /**
     * Creates the facts.
     *
     * @param tree the device with its defaults, seats expanded
     * @param stated the device file without its defaults: what it states is kept, used or not
     * @param file name of the device file
     * @param resolved whether no default applies
     * @param problems collects the errors
     */
    Assembly(
            Node.Fields tree,
            Node.Fields stated,
            String file,
            boolean resolved,
            Problems problems) {
        this.device = new Look(tree, tree.at());
        this.stated = new Look(stated, stated.at());
        this.resolved = resolved;
        this.problems = problems;
        device.each(
                "consumables",
                (id, look) ->
                        consumables.put(
                                id,
                                new Consumable(
                                        id,
                                        look.text("name", id),
                                        look.text("unit", "piece"),
                                        look.flag("flammable", false))));
        device.each(
                "tools",
                (id, look) ->
                        tools.put(
                                id,
                                new Tool(
                                        id,
                                        look.text("name", id),
                                        look.text("handle"),
                                        look.text("drive"))));
        draft.base = device.text("base", "");
        draft.hand = device.text("hand", "hand");
        draft.usualPosture = device.text("usualPosture", "face-up");
        KindTable.Uses uses = KindTable.uses(consumables, problems);
        this.kinds = new KindTable(device, this.stated, file, uses);
        this.acts = new Acts(kinds, uses, draft.hand, draft.usualPosture, resolved, problems);
        fill();
    }

    Draft draft() {
        return draft;
    }

    List<Kind> kinds() {
        return kinds.used();
    }

    private void fill() {
        Look outline = device.look("outline");
        if (outline.mm("width").isPresent() && outline.mm("height").isPresent()) {
            draft.outline =
                    Optional.of(
                            new Outline(
                                    outline.mm("width").getAsDouble(),
                                    outline.mm("height").getAsDouble(),
                                    outline.mm("thickness")));
        }
        device.each(
                "supplies",
                (id, look) -> draft.supplies.put(id, new Supply(id, look.text("name", id))));
        device.each("screwTypes", this::screwType);
        device.each(
                "prepare",
                (id, look) ->
                        draft.prepares.put(
                                id,
                                new Prepare(
                                        id,
                                        look.text("text", ""),
                                        look.text("restore", ""),
                                        look.ms("time", "ms").orElse(0L),
                                        look.ms("restoreTime", "restoreMs").orElse(0L),
                                        look.texts("hazards"),
                                        false)));
        device.each("parts", this::part);
        device.each("joints", this::joint);
        device.each(
                "tests",
                (id, look) ->
                        draft.tests.put(
                                id,
                                new FunctionTest(
                                        id,
                                        look.text("text", ""),
                                        spread(look.texts("of")),
                                        spread(look.texts("needs")),
                                        look.flag("switchedOn", !look.flag("leak", false)),
                                        look.text("at", FunctionTest.BENCH),
                                        look.flag("leak", false))));
        new Usage(device, stated, resolved, kinds.used(), draft).fill(tools, consumables, problems);
    }

    private void screwType(String id, Look look) {
        draft.screwTypes.put(
                id,
                new ScrewType(
                        id,
                        look.text("thread", ""),
                        look.mm("length").orElse(0),
                        look.mm("threadLength"),
                        look.text("head", ""),
                        look.mm("headDiameter"),
                        look.mm("headHeight"),
                        look.text("drive", ""),
                        look.text("class"),
                        look.text("finish", ""),
                        look.flag("patch", false),
                        look.text("spare")));
    }

    private void part(String id, Look look) {
        KindTable.Entry kind = kinds.use(Kind.Scope.PART, look.text("kind", "part"));
        boolean base = id.equals(draft.base);
        if (base && look.has("move")) {
            problems.error(
                    look.at("move"),
                    "part " + id + " is the base: it stays on the bench and has no move");
        } else if (!base && resolved && !look.has("move")) {
            problems.error(
                    look.at(),
                    "part "
                            + id
                            + ": the key \"move\" is missing; no default applies in a"
                            + " resolved file");
        }
        Optional<Move> move = base ? Optional.empty() : Optional.of(acts.move(id, look, kind));
        draft.parts.put(
                id,
                new Part(
                        id,
                        look.text("name", id),
                        kind.kind().id(),
                        look.texts("under"),
                        move,
                        look.texts("spareIncludes"),
                        look.text("spare"),
                        look.texts("hazards"),
                        look.texts("inspect")));
    }

    private void joint(String id, Look look) {
        KindTable.Entry kind = kinds.use(Kind.Scope.JOINT, look.text("kind", "joint"));
        Optional<String> screw = look.text("screw");
        boolean isScrew = kind.kind().role().equals(Optional.of(Kind.Role.SCREW));
        if (screw.isEmpty() && isScrew && !resolved) {
            problems.error(look.at(), "joint " + id + " is a screw: the key \"screw\" is missing");
        } else if (screw.isEmpty() && look.has("seat")) {
            problems.error(
                    look.at("seat"),
                    "joint " + id + " has a seat, but no key \"screw\" says what is in it");
        }
        Look place = look.look("seat");
        if (place.has("x") != place.has("y")) {
            problems.error(
                    place.at(place.has("x") ? "x" : "y"),
                    "joint " + id + ": a seat must have both x and y, or neither");
        }
        Optional<String> driver =
                resolved ? Optional.empty() : screw.flatMap(type -> driver(id, look, type));
        Map<String, Way> ways = acts.ways(id, look, kind, driver);
        if (ways.isEmpty()) {
            problems.error(
                    look.at("ways"),
                    "joint " + id + ": a joint must have at least one way to release it");
        }
        List<String> holds = look.texts("holds");
        if (holds.size() < 2 || ways.isEmpty()) {
            return;
        }
        Optional<Seat> seat = screw.map(type -> SeatAssembly.seat(type, look.look("seat")));
        draft.joints.put(
                id,
                new Joint(
                        id,
                        look.text("name", id),
                        kind.kind().id(),
                        holds,
                        look.texts("under"),
                        look.flag("slack", !resolved && kind.slack()),
                        look.texts("needs"),
                        look.texts("cuts"),
                        ways,
                        seat,
                        look.has("bond")
                                ? Optional.of(SeatAssembly.bond(look.look("bond")))
                                : Optional.empty(),
                        look.count("madeCycles").orElse(0)));
    }

    /**
     * Finds the first tool of the list that turns the drive of a screw; required unless every way
     * names its tool.
     */
    private Optional<String> driver(String joint, Look look, String screwType) {
        String drive = device.look("screwTypes").look(screwType).text("drive", "");
        Optional<String> tool =
                tools.values().stream()
                        .filter(each -> each.drive().equals(Optional.of(drive)))
                        .map(Tool::id)
                        .findFirst();
        boolean named =
                look.has("ways")
                        && look.table("ways").values().stream().allMatch(way -> way.has("tool"));
        if (tool.isEmpty() && !named && !drive.isEmpty()) {
            List<String> drives =
                    tools.values().stream().flatMap(t -> t.drive().stream()).distinct().toList();
            problems.error(
                    look.at("screw"),
                    "joint "
                            + joint
                            + ": no tool turns the drive "
                            + QuoteText.of(drive)
                            + " of "
                            + screwType
                            + "."
                            + Words.hint(drive, drives, "drives"));
        }
        return tool;
    }

    /** An id of an entry with seats stands for the joints of all of its seats. */
    private List<String> spread(List<String> ids) {
        List<String> all = new ArrayList<>();
        for (String id : ids) {
            Node.Fields entry = stated.look("joints").fields().fields(id);
            Node.Fields seats = entry == null ? null : entry.fields("seats");
            if (seats == null) {
                all.add(id);
            } else {
                seats.entries().keySet().forEach(seat -> all.add(Seats.jointId(id, seat)));
            }
        }
        return all.stream().distinct().toList();
    }
}
