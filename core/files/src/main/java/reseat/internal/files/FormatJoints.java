package reseat.internal.files;

import static reseat.internal.files.FormatParts.actKeys;
import static reseat.internal.files.FormatParts.group;
import static reseat.internal.files.FormatParts.idKeyed;
import static reseat.internal.files.FormatParts.join;
import static reseat.internal.files.FormatParts.length;
import static reseat.internal.files.FormatParts.may;
import static reseat.internal.files.FormatParts.must;
import static reseat.internal.files.FormatParts.refs;
import static reseat.internal.files.FormatParts.seatLength;
import static reseat.internal.files.FormatParts.seatTorque;
import static reseat.internal.files.FormatParts.several;
import static reseat.internal.files.FormatParts.value;

import java.util.List;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Shape.FormatKey;
import reseat.internal.files.Shape.Need;
import reseat.internal.files.Shape.Scope;

/** The joint entries of a device file. */
final class FormatJoints {

    private static final Shape.Group SEAT =
            group(
                    "seat",
                    join(
                            List.of(
                                    may(
                                            "x",
                                            value(ScalarType.COORDINATE),
                                            "Millimetres to the right, in the outline."),
                                    may(
                                            "y",
                                            value(ScalarType.COORDINATE),
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
                                            value(ScalarType.TEXT),
                                            "Thread of the seat, if not that of its screw."),
                                    may(
                                            "material",
                                            value(ScalarType.TEXT),
                                            "Material that the thread is in.")),
                            seatLength(
                                    "clamped",
                                    Need.NEVER,
                                    "Between bearing face of the head and first thread"
                                            + " of the seat."),
                            seatLength("threaded", Need.NEVER, "Depth of usable thread."),
                            seatLength(
                                    "depth",
                                    Need.NEVER,
                                    "Depth of the hole from its first thread; left"
                                            + " out: a through hole."),
                            seatLength(
                                    "bossOuter", Need.NEVER, "Outer diameter of boss or insert."),
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
                                                                    seatLength(
                                                                            "gap",
                                                                            Need.ALWAYS,
                                                                            "Distance from the end of the hole.")))),
                                            "What lies behind the end of the hole,"
                                                    + " nearest first.")),
                            seatTorque("torque", "Torque that the maker gives."),
                            List.of(
                                    may(
                                            "torqueSource",
                                            value(ScalarType.TEXT),
                                            "Where that torque is given."),
                                    may(
                                            "pass",
                                            value(ScalarType.COUNT),
                                            "Pass of the maker's tightening order, from 1."),
                                    may(
                                            "formedCycles",
                                            value(ScalarType.COUNT),
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
                                                                                            ScalarType
                                                                                                    .COUNT),
                                                                                    "Number of the edge, from 0.")),
                                                                    length(
                                                                            "depth",
                                                                            Need.ALWAYS,
                                                                            "Depth that may be cut.")))),
                                            "Depths that the maker's document gives."))));

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
                                            value(ScalarType.TEXT),
                                            "Wording of the restore act, in the imperative."),
                                    may(
                                            "strainedBy",
                                            refs(Scope.JOINT),
                                            "Joints that must not be tight; left out: computed."))));

    /** A joint, or several that differ only in their seats. */
    static final Shape.Group JOINT =
            group(
                    "joint",
                    List.of(
                            may("name", value(ScalarType.TEXT), "The name people use."),
                            new FormatKey(
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
                                    value(ScalarType.BOOL),
                                    "Whether its parts can lie apart while connected."),
                            may(
                                    "gives",
                                    value(ScalarType.BOOL),
                                    "Whether it lets go by itself when its parts come apart."),
                            may(
                                    "needs",
                                    refs(Scope.SUPPLY),
                                    "Supplies that must be cut before its release; left out:"
                                            + " computed."),
                            may("cuts", refs(Scope.SUPPLY), "Supplies that its release cuts."),
                            new FormatKey(
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
                                    value(ScalarType.COUNT),
                                    "How often it has been made, factory included.")));

    private FormatJoints() {}

    private static Shape corners(int least) {
        return new Shape.Several(new Shape.Corner(), least, false);
    }
}
