package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.CutPlan;
import reseat.model.Bond;
import reseat.model.Joint;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Looks at depths of cuts. */
final class CutDepthCheck extends JointCheck {

    private static final CheckInfo NONE =
            new CheckInfo(
                    "no-safe-cut-depth",
                    "No safe depth of cut",
                    "A stretch of an edge where the depth that severs the bond comes too near to a keep-out.",
                    "A blade that goes deep enough there cuts a cable, an antenna or a sensor.",
                    Severity.WARNING,
                    List.of("bonds", "safety"),
                    List.of());

    private static final CheckInfo GIVEN =
            new CheckInfo(
                    "given-cut-depth-unsafe",
                    "Given depth of cut is wrong",
                    "A depth given for an edge that comes too near to a keep-out, or does not sever the bond.",
                    "Who follows it cuts something else, or pries a part that still holds.",
                    Severity.ERROR,
                    List.of("bonds", "safety"),
                    List.of());

    private static final CheckInfo SHAPE =
            new CheckInfo(
                    "bond-shape-wrong",
                    "Geometry of a bond makes no sense",
                    "An edge, strip or keep-out that is no sound shape.",
                    "No depth of cut can be computed.",
                    Severity.ERROR,
                    List.of("bonds", "data"),
                    List.of());

    private CutDepthCheck(CheckInfo info) {
        super(info);
    }

    /** Returns the checks. */
    static List<Check> all() {
        return List.of(new CutDepthCheck(SHAPE), new CutDepthCheck(NONE), new CutDepthCheck(GIVEN));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            joint.bond().ifPresent(bond -> look(input, joint, bond, found));
        }
        return found;
    }

    private void look(CheckInput input, Joint joint, Bond bond, List<Finding> found) {
        Computed.Cut cut = Computed.of(input).cut(joint, bond);
        if (cut.plan().isEmpty()) {
            if (is(SHAPE)) {
                found.add(
                        finding(
                                input,
                                joint.id(),
                                "bond",
                                cut.wrong(),
                                List.of(),
                                "Correct the geometry of the bond."));
            }
        } else if (is(NONE)) {
            cut.plan().get().unsafe().forEach(stretch -> found.add(unsafe(input, joint, stretch)));
        } else if (is(GIVEN)) {
            cut.judged().stream()
                    .filter(each -> !each.safe() || !each.severs())
                    .forEach(each -> found.add(given(input, joint, each)));
        }
    }

    private Finding unsafe(CheckInput input, Joint joint, CutPlan.Unsafe stretch) {
        return finding(
                input,
                joint.id(),
                "bond/keepOuts/" + stretch.keepOut(),
                "Edge "
                        + stretch.place().edge()
                        + " of "
                        + joint.id()
                        + " has no safe depth from "
                        + NumberText.mm(stretch.place().fromMm())
                        + " to "
                        + NumberText.mm(stretch.place().toMm())
                        + ": keep-out "
                        + stretch.keepOut()
                        + " forbids it.",
                List.of(
                        "severing needs " + NumberText.mm(stretch.neededMm()),
                        "the margin allows " + NumberText.mm(stretch.allowedMm())),
                "Leave that stretch to heat or solvent, or cut it from another side.");
    }

    private Finding given(CheckInput input, Joint joint, CutPlan.Judged judged) {
        String message =
                judged.safe()
                        ? "The depth of "
                                + NumberText.mm(judged.depthMm())
                                + " given for edge "
                                + judged.edge()
                                + " of "
                                + joint.id()
                                + " does not sever the bond; that needs "
                                + NumberText.mm(judged.leastMm())
                                + "."
                        : "The depth of "
                                + NumberText.mm(judged.depthMm())
                                + " given for edge "
                                + judged.edge()
                                + " of "
                                + joint.id()
                                + " is deeper than the "
                                + NumberText.mm(judged.greatestMm())
                                + " that keep-out "
                                + judged.keepOut()
                                + " allows.";
        return finding(
                input,
                judged.safe() ? Severity.WARNING : GIVEN.severity(),
                joint.id(),
                "bond/givenDepths",
                message,
                List.of(),
                "Follow the computed depths, piece by piece, and correct the document.");
    }
}
