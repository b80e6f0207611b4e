package reseat.internal.files;

import static reseat.internal.files.FormatParts.actKeys;
import static reseat.internal.files.FormatParts.group;
import static reseat.internal.files.FormatParts.idKeyed;
import static reseat.internal.files.FormatParts.join;
import static reseat.internal.files.FormatParts.length;
import static reseat.internal.files.FormatParts.may;
import static reseat.internal.files.FormatParts.must;
import static reseat.internal.files.FormatParts.refs;
import static reseat.internal.files.FormatParts.several;
import static reseat.internal.files.FormatParts.value;

import java.util.List;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Shape.FormatKey;
import reseat.internal.files.Shape.Need;
import reseat.internal.files.Shape.Scope;

/**
 * The one description of a device file. {@link ShapeCheck} uses it to validate and {@link
 * SchemaWriter} to generate the JSON Schema, so that the two cannot differ. Documentation:
 * core/docs/device-file.md.
 */
final class Format {

    /** The value of the key {@code format}. */
    static final String NAME = "reseat-device/1";

    private static final FormatKey SUPPLIES =
            may(
                    "supplies",
                    idKeyed(
                            group(
                                    "supply",
                                    List.of(
                                            may(
                                                    "name",
                                                    value(ScalarType.TEXT),
                                                    "The name people use."),
                                            may(
                                                    "of",
                                                    new Shape.Ref(Scope.PART),
                                                    "The part it comes from, such as a cell."),
                                            may(
                                                    "first",
                                                    value(ScalarType.BOOL),
                                                    "Whether it is cut before any work inside."))),
                            "a supply"),
                    "Sources of power.");

    private static final FormatKey PREPARE =
            may("prepare", idKeyed(FormatParts.PREPARE, "a prepare act"), "Acts before work.");

    /** The contents of a built-in or family file of defaults. */
    static final Shape.Group DEFAULTS =
            group("defaults", join(FormatParts.defaults(), List.of(SUPPLIES, PREPARE)));

    private static final Shape.Group MOVE =
            group("move", actKeys("How the part is moved; lift by default."));

    private static final Shape.Group PART =
            group(
                    "part",
                    List.of(
                            may("name", value(ScalarType.TEXT), "The name people use."),
                            may(
                                    "kind",
                                    new Shape.Ref(Scope.PART_KIND),
                                    "Kind of part; part by default."),
                            may("under", refs(Scope.PART), "Parts in the way of moving it."),
                            may(
                                    "move",
                                    new Shape.Either(new Shape.Ref(Scope.MANIPULATION), MOVE),
                                    "How it is moved."),
                            may("spare", value(ScalarType.TEXT), "What it is ordered by."),
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
                                    several(value(ScalarType.TEXT)),
                                    "What to look at when it is out."),
                            may(
                                    "needs",
                                    refs(Scope.SUPPLY),
                                    "Supplies that must be cut before it is moved; left out:"
                                            + " computed.")));

    private static final Shape.Group SCREW_TYPE =
            group(
                    "screwType",
                    join(
                            List.of(
                                    must(
                                            "thread",
                                            value(ScalarType.TEXT),
                                            "Thread, such as M2x0.4.")),
                            length("length", Need.ALWAYS, "Nominal length."),
                            length(
                                    "threadLength",
                                    Need.NEVER,
                                    "Length of thread; left out: to the head."),
                            List.of(
                                    must(
                                            "head",
                                            value(ScalarType.TEXT),
                                            "Form of the head, such as pan.")),
                            length("headDiameter", Need.NEVER, "Diameter of the head."),
                            length("headHeight", Need.NEVER, "Height of the head."),
                            List.of(
                                    must("drive", value(ScalarType.TEXT), "Drive, such as PH0."),
                                    may(
                                            "class",
                                            value(ScalarType.TEXT),
                                            "Property class or grade, such as 8.8."),
                                    may("finish", value(ScalarType.TEXT), "Finish or colour."),
                                    may(
                                            "patch",
                                            value(ScalarType.BOOL),
                                            "Whether it carries a locking patch."),
                                    may(
                                            "spare",
                                            value(ScalarType.TEXT),
                                            "What it is ordered by."))));

    /** The variants of a device; each is checked when it is applied. */
    static final Shape VARIANTS = idKeyed(new Shape.Anything(), "a variant");

    /** A whole device file. */
    static final Shape.Group DEVICE =
            group(
                    "device",
                    join(
                            List.of(
                                    must(
                                            "format",
                                            value(ScalarType.FORMAT),
                                            "Version of the format."),
                                    may(
                                            "resolved",
                                            value(ScalarType.BOOL),
                                            "Everything is spelled out and no default applies."),
                                    must("id", value(ScalarType.ID), "Id of the device."),
                                    new FormatKey(
                                            "variant",
                                            value(ScalarType.ID),
                                            Need.ONLY_RESOLVED,
                                            "",
                                            "Variant that was applied."),
                                    may("name", value(ScalarType.TEXT), "The name people use."),
                                    may("maker", value(ScalarType.TEXT), "Who makes it."),
                                    may(
                                            "family",
                                            value(ScalarType.ID),
                                            "Family whose kinds and times apply."),
                                    must(
                                            "base",
                                            new Shape.Ref(Scope.PART),
                                            "The part that everything is mounted to."),
                                    new FormatKey(
                                            "hand",
                                            new Shape.Ref(Scope.TOOL),
                                            Need.RESOLVED,
                                            "",
                                            "The bare hand."),
                                    new FormatKey(
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
                                    SUPPLIES),
                            FormatParts.defaults(),
                            List.of(
                                    may(
                                            "screwTypes",
                                            idKeyed(SCREW_TYPE, "a screw type"),
                                            "Types of screw."),
                                    PREPARE,
                                    must("parts", idKeyed(PART, "a part"), "Parts."),
                                    must(
                                            "joints",
                                            idKeyed(FormatJoints.JOINT, "a joint"),
                                            "Joints."),
                                    may(
                                            "tests",
                                            idKeyed(FormatParts.TEST, "a test"),
                                            "Tests of what was touched."),
                                    may(
                                            "seatTable",
                                            several(value(ScalarType.TEXT)),
                                            "CSV files of seats beside this file."),
                                    may(
                                            "variants",
                                            VARIANTS,
                                            "Merge patches (RFC 7396) on this document."),
                                    new FormatKey(
                                            "computed",
                                            new Shape.Anything(),
                                            Need.ONLY_RESOLVED,
                                            "",
                                            "What follows from the facts; ignored when read."))));

    private Format() {}
}
