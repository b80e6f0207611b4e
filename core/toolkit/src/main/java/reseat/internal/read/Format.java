package reseat.internal.read;

import static reseat.internal.read.FormatParts.actKeys;
import static reseat.internal.read.FormatParts.group;
import static reseat.internal.read.FormatParts.idKeyed;
import static reseat.internal.read.FormatParts.join;
import static reseat.internal.read.FormatParts.length;
import static reseat.internal.read.FormatParts.may;
import static reseat.internal.read.FormatParts.must;
import static reseat.internal.read.FormatParts.refs;
import static reseat.internal.read.FormatParts.several;
import static reseat.internal.read.FormatParts.value;

import java.util.List;
import reseat.internal.read.Scalars.Type;
import reseat.internal.read.Shape.Key;
import reseat.internal.read.Shape.Need;
import reseat.internal.read.Shape.Scope;

/**
 * The one description of a device file. {@link ShapeCheck} reads by it and {@link SchemaWriter}
 * writes the JSON Schema from it, so that the two cannot differ. In words:
 * core/docs/device-file.md.
 */
final class Format {

    /** The value of the key {@code format}. */
    static final String NAME = "reseat-device/1";

    /** What a built-in or family file of defaults holds. */
    static final Shape.Group DEFAULTS = group("defaults", FormatParts.defaults());

    private static final Shape.Group SEAT =
            group(
                    "seat",
                    join(
                            List.of(
                                    may(
                                            "x",
                                            value(Type.COORDINATE),
                                            "Millimetres to the right, in the outline."),
                                    may(
                                            "y",
                                            value(Type.COORDINATE),
                                            "Millimetres up, in the outline."),
                                    may(
                                            "screw",
                                            new Shape.Ref(Scope.SCREW_TYPE),
                                            "Type of screw, if not that of the joint."),
                                    may(
                                            "form",
                                            new Shape.Choice(FormatParts.FORMS),
                                            "What the seat is; tapped by default."),
                                    may(
                                            "thread",
                                            value(Type.TEXT),
                                            "Thread of the seat, if not that of its screw."),
                                    may(
                                            "material",
                                            value(Type.TEXT),
                                            "Material that the thread is in.")),
                            length(
                                    "clamped",
                                    Need.NEVER,
                                    "Between bearing face of the head and first thread of the seat."),
                            length("threaded", Need.NEVER, "Depth of usable thread."),
                            length(
                                    "depth",
                                    Need.NEVER,
                                    "Depth of the hole from its first thread; left out: a through hole."),
                            length("bossOuter", Need.NEVER, "Outer diameter of boss or insert."),
                            List.of(
                                    may(
                                            "behind",
                                            several(
                                                    group(
                                                            "behind",
                                                            join(
                                                                    List.of(
                                                                            must(
                                                                                    "part",
                                                                                    new Shape.Ref(
                                                                                            Scope
                                                                                                    .PART),
                                                                                    "What lies behind.")),
                                                                    length(
                                                                            "gap",
                                                                            Need.ALWAYS,
                                                                            "Distance from the end of the hole.")))),
                                            "What lies behind the end of the hole, nearest first.")),
                            FormatParts.torque("torque", "Torque that the maker gives."),
                            List.of(
                                    may(
                                            "torqueSource",
                                            value(Type.TEXT),
                                            "Where that torque is given."),
                                    may(
                                            "pass",
                                            value(Type.COUNT),
                                            "Pass of the maker's tightening order, from 1."),
                                    may(
                                            "formedCycles",
                                            value(Type.COUNT),
                                            "How often a thread-forming screw was driven in."))));

    private static final Shape.Group BOND =
            group(
                    "bond",
                    join(
                            List.of(
                                    must(
                                            "edge",
                                            corners(3),
                                            "Outline of the bonded part, corner by corner."),
                                    may(
                                            "strips",
                                            idKeyed(
                                                    group(
                                                            "strip",
                                                            join(
                                                                    List.of(
                                                                            must(
                                                                                    "path",
                                                                                    corners(2),
                                                                                    "Its middle line.")),
                                                                    length(
                                                                            "width",
                                                                            Need.ALWAYS,
                                                                            "Its width."))),
                                                    "a strip"),
                                            "The adhesive, strip by strip."),
                                    may(
                                            "keepOuts",
                                            idKeyed(
                                                    group(
                                                            "keepOut",
                                                            List.of(
                                                                    must(
                                                                            "part",
                                                                            new Shape.Ref(
                                                                                    Scope.PART),
                                                                            "What it protects."),
                                                                    must(
                                                                            "outline",
                                                                            corners(3),
                                                                            "Its outline."))),
                                                    "a keep-out"),
                                            "What a blade must not touch.")),
                            length(
                                    "margin",
                                    Need.NEVER,
                                    "Distance to keep from every keep-out; 0 by default."),
                            length("thickness", Need.NEVER, "Thickness of the adhesive."),
                            List.of(
                                    may(
                                            "givenDepths",
                                            several(
                                                    group(
                                                            "givenDepth",
                                                            join(
                                                                    List.of(
                                                                            must(
                                                                                    "edge",
                                                                                    value(
                                                                                            Type
                                                                                                    .COUNT),
                                                                                    "Number of the edge, from 0.")),
                                                                    length(
                                                                            "depth",
                                                                            Need.ALWAYS,
                                                                            "Depth that may be cut.")))),
                                            "Depths that the maker's document gives."))));

    private static final Shape.Group MOVE =
            group("move", actKeys("How the part is moved; lift by default."));

    private static final Shape.Group WAY =
            group(
                    "way",
                    join(
                            actKeys("How the joint is released; the way of its kind by default."),
                            List.of(
                                    may(
                                            "consumes",
                                            FormatParts.USES,
                                            "What making it again uses up."),
                                    may("ruins", refs(Scope.PART), "Parts that do not survive it."),
                                    may(
                                            "restore",
                                            value(Type.TEXT),
                                            "What the restore act is, in the imperative."))));

    private static final Shape.Group PART =
            group(
                    "part",
                    List.of(
                            may("name", value(Type.TEXT), "The name people use."),
                            may(
                                    "kind",
                                    new Shape.Ref(Scope.PART_KIND),
                                    "Kind of part; part by default."),
                            may("under", refs(Scope.PART), "Parts in the way of moving it."),
                            may(
                                    "move",
                                    new Shape.Either(new Shape.Ref(Scope.MANIPULATION), MOVE),
                                    "How it is moved."),
                            may("spare", value(Type.TEXT), "What it is ordered by."),
                            may(
                                    "spareIncludes",
                                    refs(Scope.PART),
                                    "Parts that its spare unit brings along."),
                            may(
                                    "hazards",
                                    refs(Scope.HAZARD),
                                    "Hazards that any act on it brings."),
                            may(
                                    "inspect",
                                    several(value(Type.TEXT)),
                                    "What to look at when it is out.")));

    private static final Shape.Group JOINT =
            group(
                    "joint",
                    List.of(
                            may("name", value(Type.TEXT), "The name people use."),
                            new Key(
                                    "kind",
                                    new Shape.Ref(Scope.JOINT_KIND),
                                    Need.AUTHORED,
                                    "",
                                    "Kind of joint."),
                            must(
                                    "holds",
                                    new Shape.Several(new Shape.Ref(Scope.PART), 2, true),
                                    "Two or more parts; the last is the site."),
                            may("under", refs(Scope.PART), "Parts that hide it."),
                            may(
                                    "slack",
                                    value(Type.BOOL),
                                    "Whether its parts can lie apart while connected."),
                            may(
                                    "needs",
                                    refs(Scope.SUPPLY),
                                    "Supplies that must be cut before its release."),
                            may("cuts", refs(Scope.SUPPLY), "Supplies that its release cuts."),
                            new Key(
                                    "ways",
                                    idKeyed(
                                            new Shape.Either(
                                                    new Shape.Ref(Scope.MANIPULATION), WAY),
                                            "a way"),
                                    Need.RESOLVED,
                                    "",
                                    "Ways to release it."),
                            may("screw", new Shape.Ref(Scope.SCREW_TYPE), "Type of its screw."),
                            may("seat", SEAT, "Its seat; what is the same for all of its seats."),
                            may(
                                    "seats",
                                    idKeyed(SEAT, "a seat"),
                                    "One joint per seat, with the id joint.seat."),
                            may("bond", BOND, "Geometry of a bond."),
                            may(
                                    "madeCycles",
                                    value(Type.COUNT),
                                    "How often it has been made, factory included.")));

    private static final Shape.Group SCREW_TYPE =
            group(
                    "screwType",
                    join(
                            List.of(must("thread", value(Type.TEXT), "Thread, such as M2x0.4.")),
                            length("length", Need.ALWAYS, "Nominal length."),
                            length(
                                    "threadLength",
                                    Need.NEVER,
                                    "Length of thread; left out: to the head."),
                            List.of(
                                    must(
                                            "head",
                                            value(Type.TEXT),
                                            "Form of the head, such as pan.")),
                            length("headDiameter", Need.NEVER, "Diameter of the head."),
                            length("headHeight", Need.NEVER, "Height of the head."),
                            List.of(
                                    must("drive", value(Type.TEXT), "Drive, such as PH0."),
                                    may(
                                            "class",
                                            value(Type.TEXT),
                                            "Property class or grade, such as 8.8."),
                                    may("finish", value(Type.TEXT), "Finish or colour."),
                                    may(
                                            "patch",
                                            value(Type.BOOL),
                                            "Whether it carries a locking patch."),
                                    may("spare", value(Type.TEXT), "What it is ordered by."))));

    /** A whole device file. */
    static final Shape.Group DEVICE =
            group(
                    "device",
                    join(
                            List.of(
                                    must("format", value(Type.FORMAT), "Version of the format."),
                                    may(
                                            "resolved",
                                            value(Type.BOOL),
                                            "Everything is spelled out and no default applies."),
                                    must("id", value(Type.ID), "Id of the device."),
                                    new Key(
                                            "variant",
                                            value(Type.ID),
                                            Need.ONLY_RESOLVED,
                                            "",
                                            "Variant that was applied."),
                                    may("name", value(Type.TEXT), "The name people use."),
                                    may("maker", value(Type.TEXT), "Who makes it."),
                                    may(
                                            "family",
                                            value(Type.ID),
                                            "Family whose kinds and times apply."),
                                    must(
                                            "base",
                                            new Shape.Ref(Scope.PART),
                                            "The part that everything is mounted to."),
                                    new Key(
                                            "hand",
                                            new Shape.Ref(Scope.TOOL),
                                            Need.RESOLVED,
                                            "",
                                            "The bare hand."),
                                    new Key(
                                            "usualPosture",
                                            new Shape.Ref(Scope.POSTURE),
                                            Need.RESOLVED,
                                            "",
                                            "Usual posture."),
                                    may(
                                            "outline",
                                            group(
                                                    "outline",
                                                    join(
                                                            length(
                                                                    "width",
                                                                    Need.ALWAYS,
                                                                    "Extent in x."),
                                                            length(
                                                                    "height",
                                                                    Need.ALWAYS,
                                                                    "Extent in y."),
                                                            length(
                                                                    "thickness",
                                                                    Need.NEVER,
                                                                    "Thickness."))),
                                            "Outline of the device."),
                                    may(
                                            "supplies",
                                            idKeyed(
                                                    group(
                                                            "supply",
                                                            List.of(
                                                                    may(
                                                                            "name",
                                                                            value(Type.TEXT),
                                                                            "The name people use."))),
                                                    "a supply"),
                                            "Sources of power.")),
                            FormatParts.defaults(),
                            List.of(
                                    may(
                                            "screwTypes",
                                            idKeyed(SCREW_TYPE, "a screw type"),
                                            "Types of screw."),
                                    may(
                                            "prepare",
                                            idKeyed(FormatParts.PREPARE, "a prepare act"),
                                            "Acts before work."),
                                    must("parts", idKeyed(PART, "a part"), "Parts."),
                                    must("joints", idKeyed(JOINT, "a joint"), "Joints."),
                                    may(
                                            "tests",
                                            idKeyed(FormatParts.TEST, "a test"),
                                            "Tests of what was touched."),
                                    may(
                                            "seatTable",
                                            several(value(Type.TEXT)),
                                            "CSV files of seats beside this file."),
                                    may(
                                            "variants",
                                            idKeyed(new Shape.Anything(), "a variant"),
                                            "Merge patches (RFC 7396) on this document."))));

    private Format() {}

    private static Shape corners(int least) {
        return new Shape.Several(new Shape.Corner(), least, false);
    }
}
