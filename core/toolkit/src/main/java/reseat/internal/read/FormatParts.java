package reseat.internal.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import reseat.internal.read.Scalars.Type;
import reseat.internal.read.Shape.Key;
import reseat.internal.read.Shape.Need;
import reseat.internal.read.Shape.Scope;
import reseat.model.Duration;
import reseat.model.Kind;
import reseat.model.Seat;
import reseat.model.Signal;

/** The smaller parts of the {@link Format}, and the words it is written in. */
final class FormatParts {

    static final List<String> FORMS = lower(Seat.Form.values());

    private static final List<String> SIGNALS = Stream.of(Signal.values()).map(Enum::name).toList();

    /** Things that are used up. */
    static final Shape USES =
            several(
                    group(
                            "use",
                            List.of(
                                    must("of", new Shape.Ref(Scope.CONSUMABLE), "The consumable."),
                                    must("quantity", value(Type.QUANTITY), "How much."),
                                    may(
                                            "unit",
                                            value(Type.TEXT),
                                            "The unit it is counted in; that of the consumable by default."))));

    static final Shape.Group PREPARE =
            group(
                    "prepare",
                    join(
                            List.of(
                                    must(
                                            "text",
                                            value(Type.TEXT),
                                            "What to do, in the imperative.")),
                            time("time", "ms", Need.ALWAYS, "Time of the act."),
                            time(
                                    "restoreTime",
                                    "restoreMs",
                                    Need.NEVER,
                                    "Time of its undoing; 0 by default."),
                            List.of(may("hazards", refs(Scope.HAZARD), "Hazards it brings."))));

    static final Shape.Group TEST =
            group(
                    "test",
                    List.of(
                            must("text", value(Type.TEXT), "What to do and what must be seen."),
                            must(
                                    "of",
                                    new Shape.Several(new Shape.Ref(Scope.JOINT_OR_PART), 1, true),
                                    "Parts and joints that it tests."),
                            may(
                                    "needs",
                                    refs(Scope.JOINT_OR_PART),
                                    "Parts and joints that must be back before it.")));

    private static final Shape.Group KIND =
            group(
                    "kind",
                    List.of(
                            may("title", value(Type.TEXT), "The noun people use."),
                            may(
                                    "verb",
                                    value(Type.TEXT),
                                    "How the act is told, in the imperative."),
                            may("restoreVerb", value(Type.TEXT), "How the restore act is told."),
                            may(
                                    "role",
                                    new Shape.Choice(lower(Kind.Role.values())),
                                    "What the toolkit computes with it as."),
                            may(
                                    "tool",
                                    new Shape.Ref(Scope.TOOL),
                                    "Tool, unless a device says otherwise."),
                            may(
                                    "posture",
                                    new Shape.Ref(Scope.POSTURE),
                                    "Posture, unless a device says otherwise."),
                            may(
                                    "time",
                                    value(Type.TIME),
                                    "Time of the act, unless a device says otherwise."),
                            may(
                                    "timeBasis",
                                    basis(),
                                    "How that time is known, if not as its place says."),
                            may(
                                    "restoreTime",
                                    value(Type.TIME),
                                    "Time of the restore act, unless a device says otherwise."),
                            may(
                                    "restoreTimeBasis",
                                    basis(),
                                    "How that time is known, if not as its place says."),
                            may(
                                    "slack",
                                    value(Type.BOOL),
                                    "Kind of joint: its parts can lie apart while connected."),
                            may(
                                    "way",
                                    new Shape.Ref(Scope.MANIPULATION),
                                    "Kind of joint: the manipulation that releases it."),
                            may("hazards", refs(Scope.HAZARD), "Hazards it brings."),
                            may(
                                    "handling",
                                    several(value(Type.TEXT)),
                                    "Sentences to print with each act."),
                            may(
                                    "consumes",
                                    USES,
                                    "What a rebuild uses up, unless a way says otherwise."),
                            may("restore", value(Type.TEXT), "What the rebuild has to do."),
                            may(
                                    "irreversible",
                                    value(Type.BOOL),
                                    "Making it again closes what only destruction opens."),
                            may(
                                    "keepHold",
                                    value(Type.BOOL),
                                    "The hand stays on it until the next part is moved."),
                            may("magnetic", value(Type.BOOL), "It catches loose screws."),
                            may("captive", value(Type.BOOL), "A screw that it loosens stays in its part."),
                            may("dwell", value(Type.DWELL), "Time to wait after the restore act."),
                            may(
                                    "ratedCycles",
                                    value(Type.COUNT),
                                    "How often it may be made and broken."),
                            may("source", value(Type.TEXT), "Where the values come from.")));

    private FormatParts() {}

    /** The keys that a device file has in common with built-in data and families. */
    static List<Key> defaults() {
        Shape tool =
                group(
                        "tool",
                        List.of(
                                may("name", value(Type.TEXT), "The name people use."),
                                may("handle", value(Type.ID), "Handle that the bit fits."),
                                may(
                                        "drive",
                                        value(Type.TEXT),
                                        "Drive that it turns, such as T5.")));
        Shape hazard =
                group(
                        "hazard",
                        List.of(
                                must("signal", new Shape.Choice(SIGNALS), "Signal word."),
                                must("nature", value(Type.TEXT), "What the hazard is."),
                                must(
                                        "consequence",
                                        value(Type.TEXT),
                                        "What happens if it is not avoided."),
                                must("avoidance", value(Type.TEXT), "What to do.")));
        Shape consumable =
                group(
                        "consumable",
                        List.of(
                                may("name", value(Type.TEXT), "The name people use."),
                                must("unit", value(Type.TEXT), "The unit it is counted in.")));
        return List.of(
                may("tools", idKeyed(tool, "a tool"), "Tools; added to the known ones."),
                new Key(
                        "setup",
                        setup(),
                        Need.RESOLVED,
                        "",
                        "What a change of tool or posture costs."),
                may(
                        "kinds",
                        kinds(),
                        "Kinds of parts, joints and manipulations; added to the known ones."),
                may(
                        "hazards",
                        idKeyed(hazard, "a hazard"),
                        "Safety messages; added to the known ones."),
                may("consumables", idKeyed(consumable, "a consumable"), "What rebuilds use up."));
    }

    private static Shape setup() {
        Shape toTool = new Shape.Table(Scope.TOOL, value(Type.TIME), "a tool");
        Shape toPosture = new Shape.Table(Scope.NEW, value(Type.TIME), "a posture");
        return group(
                "setup",
                List.of(
                        may("toolChange", value(Type.TIME), "Put one tool away and fetch another."),
                        may("bitChange", value(Type.TIME), "Change the bit on one handle."),
                        may("postureChange", value(Type.TIME), "Turn or prop the device."),
                        new Key(
                                "tool",
                                new Shape.Table(Scope.TOOL, toTool, "a tool"),
                                Need.RESOLVED,
                                "",
                                "From, to."),
                        new Key(
                                "posture",
                                idKeyed(toPosture, "a posture"),
                                Need.RESOLVED,
                                "",
                                "From, to.")));
    }

    private static Shape kinds() {
        return group(
                "kinds",
                List.of(
                        may("parts", idKeyed(KIND, "a kind of part"), "Kinds of part."),
                        may("joints", idKeyed(KIND, "a kind of joint"), "Kinds of joint."),
                        may(
                                "manipulations",
                                idKeyed(KIND, "a kind of manipulation"),
                                "Kinds of manipulation.")));
    }

    /** The keys of everything that a hand does with a tool in a posture. */
    static List<Key> actKeys(String kindHelp) {
        return join(
                List.of(
                        may("kind", new Shape.Ref(Scope.MANIPULATION), kindHelp),
                        new Key("tool", new Shape.Ref(Scope.TOOL), Need.RESOLVED, "", "Tool."),
                        new Key(
                                "posture",
                                new Shape.Ref(Scope.POSTURE),
                                Need.RESOLVED,
                                "",
                                "Posture of the device.")),
                time("time", "ms", Need.RESOLVED, "Time of the act."),
                time("restoreTime", "restoreMs", Need.RESOLVED, "Time of the restore act."),
                List.of(
                        may(
                                "handling",
                                several(value(Type.TEXT)),
                                "Sentences to print with the act."),
                        may("hazards", refs(Scope.HAZARD), "Hazards it brings.")));
    }

    static Shape.Group group(String name, List<Key> keys) {
        return Shape.Group.of(name, keys);
    }

    static Key must(String name, Shape shape, String help) {
        return new Key(name, shape, Need.ALWAYS, "", help);
    }

    static Key may(String name, Shape shape, String help) {
        return new Key(name, shape, Need.NEVER, "", help);
    }

    /** A length with its unit, or the same in bare millimetres under a key that says so. */
    static List<Key> length(String name, Need need, String help) {
        return List.of(
                new Key(name, value(Type.LENGTH), need, name + "Mm", help),
                new Key(name + "Mm", value(Type.MM), Need.NEVER, name, help + " In millimetres."));
    }

    /** A torque with its unit, or the same in bare newton metres under a key that says so. */
    static List<Key> torque(String name, String help) {
        return List.of(
                new Key(name, value(Type.TORQUE), Need.NEVER, name + "Nm", help),
                new Key(
                        name + "Nm",
                        value(Type.NM),
                        Need.NEVER,
                        name,
                        help + " In newton metres."));
    }

    private static List<Key> time(String name, String bare, Need need, String help) {
        return List.of(
                new Key(name, value(Type.TIME), need, bare, help),
                new Key(bare, value(Type.MS), Need.NEVER, name, help + " In whole milliseconds."));
    }

    @SafeVarargs
    static List<Key> join(List<Key>... lists) {
        List<Key> all = new ArrayList<>();
        for (List<Key> list : lists) {
            all.addAll(list);
        }
        return all;
    }

    static Shape value(Type type) {
        return new Shape.Value(type);
    }

    static Shape several(Shape item) {
        return new Shape.Several(item, 0, false);
    }

    static Shape refs(Scope scope) {
        return new Shape.Several(new Shape.Ref(scope), 0, true);
    }

    static Shape idKeyed(Shape value, String what) {
        return new Shape.Table(Scope.NEW, value, what);
    }

    private static Shape basis() {
        return new Shape.Choice(lower(Duration.Basis.values()));
    }

    private static List<String> lower(Enum<?>[] values) {
        return Stream.of(values).map(value -> value.name().toLowerCase(Locale.ROOT)).toList();
    }
}
