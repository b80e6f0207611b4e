package reseat.internal.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Shape.FormatKey;
import reseat.internal.files.Shape.Need;
import reseat.internal.files.Shape.Scope;
import reseat.model.Duration;
import reseat.model.Kind;
import reseat.model.Seat;
import reseat.model.Signal;

/** The smaller parts of the {@link Format}, and helpers for describing it. */
final class FormatParts {

    /** The value of the key {@code neededBy}. */
    static final String INSIDE = "inside";

    static final List<String> FORMS = lower(Seat.Form.values());

    private static final List<String> SIGNALS = Stream.of(Signal.values()).map(Enum::name).toList();

    /** Consumable uses. */
    static final Shape USES =
            several(
                    group(
                            "use",
                            List.of(
                                    must("of", new Shape.Ref(Scope.CONSUMABLE), "The consumable."),
                                    must("quantity", value(ScalarType.QUANTITY), "How much."),
                                    may(
                                            "unit",
                                            value(ScalarType.TEXT),
                                            "The unit it is counted in; that of the"
                                                    + " consumable by default."))));

    static final Shape.Group PREPARE =
            group(
                    "prepare",
                    join(
                            List.of(
                                    must(
                                            "text",
                                            value(ScalarType.TEXT),
                                            "What to do, in the imperative."),
                                    may(
                                            "restore",
                                            value(ScalarType.TEXT),
                                            "What undoes it at the end, in the imperative.")),
                            time("time", "ms", Need.ALWAYS, "Time of the act."),
                            time(
                                    "restoreTime",
                                    "restoreMs",
                                    Need.NEVER,
                                    "Time of its undoing; 0 by default."),
                            List.of(
                                    may("hazards", refs(Scope.HAZARD), "Hazards it brings."),
                                    may(
                                            "neededBy",
                                            new Shape.Choice(List.of(INSIDE)),
                                            "Which plans need it: inside, those with an act"
                                                    + " inside the device; left out: all."))));

    static final Shape.Group TEST =
            group(
                    "test",
                    List.of(
                            must("text", value(ScalarType.TEXT), "What to do and what to expect."),
                            must(
                                    "of",
                                    new Shape.Several(new Shape.Ref(Scope.JOINT_OR_PART), 1, true),
                                    "Parts and joints that it tests."),
                            may(
                                    "needs",
                                    refs(Scope.JOINT_OR_PART),
                                    "Parts and joints that must be back before it."),
                            may(
                                    "switchedOn",
                                    value(ScalarType.BOOL),
                                    "The device is switched on for it; stated false, or not"
                                            + " stated for a leak test: it is off."),
                            may(
                                    "at",
                                    value(ScalarType.ID),
                                    "Where it runs, such as dock; bench unless stated."),
                            may(
                                    "leak",
                                    value(ScalarType.BOOL),
                                    "It shows that a seal is tight, so it comes last.")));

    private static final Shape.Group KIND =
            group(
                    "kind",
                    List.of(
                            may("title", value(ScalarType.TEXT), "The noun people use."),
                            may(
                                    "verb",
                                    value(ScalarType.TEXT),
                                    "Wording of the act, in the imperative."),
                            may(
                                    "restoreVerb",
                                    value(ScalarType.TEXT),
                                    "Wording of the restore act."),
                            may(
                                    "role",
                                    new Shape.Choice(lower(Kind.Role.values())),
                                    "Role that the toolkit computes with."),
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
                                    value(ScalarType.TIME),
                                    "Time of the act, unless a device says otherwise."),
                            may(
                                    "timeBasis",
                                    basis(),
                                    "How that time is known, if not by where it is stated."),
                            may(
                                    "restoreTime",
                                    value(ScalarType.TIME),
                                    "Time of the restore act, unless a device says otherwise."),
                            may(
                                    "restoreTimeBasis",
                                    basis(),
                                    "How that time is known, if not by where it is stated."),
                            may(
                                    "slack",
                                    value(ScalarType.BOOL),
                                    "Kind of joint: its parts can lie apart while connected."),
                            may(
                                    "gives",
                                    value(ScalarType.BOOL),
                                    "Kind of joint: it lets go by itself when its parts come"
                                            + " apart."),
                            may(
                                    "way",
                                    new Shape.Ref(Scope.MANIPULATION),
                                    "Kind of joint: the manipulation that releases it."),
                            may("hazards", refs(Scope.HAZARD), "Hazards it brings."),
                            may(
                                    "handling",
                                    several(value(ScalarType.TEXT)),
                                    "Sentences to print with each act."),
                            may(
                                    "consumes",
                                    USES,
                                    "What a rebuild uses up, unless a way says otherwise."),
                            may("restore", value(ScalarType.TEXT), "What the rebuild has to do."),
                            may(
                                    "irreversible",
                                    value(ScalarType.BOOL),
                                    "Making it again closes what only destruction opens."),
                            may(
                                    "keepHold",
                                    value(ScalarType.BOOL),
                                    "The hand stays on it until the next part is moved."),
                            may("magnetic", value(ScalarType.BOOL), "It catches loose screws."),
                            may(
                                    "captive",
                                    value(ScalarType.BOOL),
                                    "A screw that it loosens stays in its part."),
                            may(
                                    "dwell",
                                    value(ScalarType.DWELL),
                                    "Time to wait after the restore act."),
                            may(
                                    "ratedCycles",
                                    value(ScalarType.COUNT),
                                    "How often it may be made and broken."),
                            may(
                                    "needs",
                                    refs(Scope.SUPPLY),
                                    "Supplies that must be cut first; an empty list: none."),
                            may(
                                    "forceful",
                                    value(ScalarType.BOOL),
                                    "Tight screws would strain what it works on."),
                            may(
                                    "laid",
                                    value(ScalarType.BOOL),
                                    "It is laid before the part that covers it."),
                            may(
                                    "flammable",
                                    value(ScalarType.BOOL),
                                    "It uses something that burns."),
                            may(
                                    "storesCharge",
                                    value(ScalarType.BOOL),
                                    "It stays charged after the power is cut."),
                            may(
                                    "heat",
                                    group(
                                            "heat",
                                            join(
                                                    List.of(
                                                            must(
                                                                    "source",
                                                                    value(ScalarType.TEXT),
                                                                    "What gives the heat."),
                                                            must(
                                                                    "celsius",
                                                                    value(ScalarType.COUNT),
                                                                    "Temperature of the source.")),
                                                    time("time", "ms", Need.ALWAYS, "How long."))),
                                    "Heat that it puts to the device."),
                            may("source", value(ScalarType.TEXT), "Where the values come from.")));

    private FormatParts() {}

    /** The keys that a device file has in common with built-in data and families. */
    static List<FormatKey> defaults() {
        Shape tool =
                group(
                        "tool",
                        List.of(
                                may("name", value(ScalarType.TEXT), "The name people use."),
                                may("handle", value(ScalarType.ID), "Handle that the bit fits."),
                                may(
                                        "drive",
                                        value(ScalarType.TEXT),
                                        "Drive that it turns, such as T5.")));
        Shape hazard =
                group(
                        "hazard",
                        List.of(
                                must("signal", new Shape.Choice(SIGNALS), "Signal word."),
                                must("nature", value(ScalarType.TEXT), "What the hazard is."),
                                must(
                                        "consequence",
                                        value(ScalarType.TEXT),
                                        "What happens if it is not avoided."),
                                must("avoidance", value(ScalarType.TEXT), "What to do."),
                                may(
                                        "protection",
                                        several(value(ScalarType.TEXT)),
                                        "What to wear, such as safety glasses.")));
        Shape consumable =
                group(
                        "consumable",
                        List.of(
                                may("name", value(ScalarType.TEXT), "The name people use."),
                                must("unit", value(ScalarType.TEXT), "The unit it is counted in."),
                                may(
                                        "flammable",
                                        value(ScalarType.BOOL),
                                        "It burns until it has dried.")));
        return List.of(
                may("tools", idKeyed(tool, "a tool"), "Tools; added to the known ones."),
                new FormatKey(
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
        Shape toTool = new Shape.Table(Scope.TOOL, value(ScalarType.TABLE_TIME), "a tool");
        Shape toPosture = new Shape.Table(Scope.NEW, value(ScalarType.TABLE_TIME), "a posture");
        return group(
                "setup",
                List.of(
                        may(
                                "toolChange",
                                value(ScalarType.TIME),
                                "Put one tool away and fetch another."),
                        may("bitChange", value(ScalarType.TIME), "Change the bit on one handle."),
                        may("postureChange", value(ScalarType.TIME), "Turn or prop the device."),
                        may(
                                "layAside",
                                value(ScalarType.TIME),
                                "Lay a part aside on its tether, more than lifting it off."),
                        may(
                                "turnOpen",
                                value(ScalarType.TIME),
                                "Turn the device while a part is laid aside, more than usual."),
                        new FormatKey(
                                "tool",
                                new Shape.Table(Scope.TOOL, toTool, "a tool"),
                                Need.RESOLVED,
                                "",
                                "From, to."),
                        new FormatKey(
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

    /** The keys of acts done with a tool in a posture. */
    static List<FormatKey> actKeys(String kindHelp) {
        return join(
                List.of(
                        may("kind", new Shape.Ref(Scope.MANIPULATION), kindHelp),
                        new FormatKey(
                                "tool", new Shape.Ref(Scope.TOOL), Need.RESOLVED, "", "Tool."),
                        new FormatKey(
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
                                several(value(ScalarType.TEXT)),
                                "Sentences to print with the act."),
                        may("hazards", refs(Scope.HAZARD), "Hazards it brings.")));
    }

    static Shape.Group group(String name, List<FormatKey> keys) {
        return Shape.Group.of(name, keys);
    }

    static FormatKey must(String name, Shape shape, String help) {
        return new FormatKey(name, shape, Need.ALWAYS, "", help);
    }

    static FormatKey may(String name, Shape shape, String help) {
        return new FormatKey(name, shape, Need.NEVER, "", help);
    }

    /** A length with its unit, or the same in bare millimetres under a separate key. */
    static List<FormatKey> length(String name, Need need, String help) {
        return List.of(
                new FormatKey(name, value(ScalarType.LENGTH), need, name + "Mm", help),
                new FormatKey(
                        name + "Mm",
                        value(ScalarType.MM),
                        Need.NEVER,
                        name,
                        help + " In millimetres."));
    }

    /** A length of a seat: like {@link #length}, but a bare number is allowed. */
    static List<FormatKey> seatLength(String name, Need need, String help) {
        return List.of(
                new FormatKey(name, value(ScalarType.SEAT_LENGTH), need, name + "Mm", help),
                new FormatKey(
                        name + "Mm",
                        value(ScalarType.MM),
                        Need.NEVER,
                        name,
                        help + " In millimetres."));
    }

    /** A torque of a seat, with its unit or bare, or in bare newton metres under a separate key. */
    static List<FormatKey> seatTorque(String name, String help) {
        return List.of(
                new FormatKey(name, value(ScalarType.SEAT_TORQUE), Need.NEVER, name + "Nm", help),
                new FormatKey(
                        name + "Nm",
                        value(ScalarType.NM),
                        Need.NEVER,
                        name,
                        help + " In newton metres."));
    }

    private static List<FormatKey> time(String name, String bare, Need need, String help) {
        return List.of(
                new FormatKey(name, value(ScalarType.TIME), need, bare, help),
                new FormatKey(
                        bare,
                        value(ScalarType.MS),
                        Need.NEVER,
                        name,
                        help + " In whole milliseconds."));
    }

    @SafeVarargs
    static List<FormatKey> join(List<FormatKey>... lists) {
        List<FormatKey> all = new ArrayList<>();
        for (List<FormatKey> list : lists) {
            all.addAll(list);
        }
        return all;
    }

    static Shape value(ScalarType type) {
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
