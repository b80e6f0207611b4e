package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Bond;
import reseat.model.Joint;
import reseat.model.Point;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Finds cuts and strips that are larger than the part. */
final class CutExtentCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "cut-deeper-than-part",
                    "Cut goes deeper than the part",
                    "A depth given for an edge that is more than half of the part, an error where it is all of it; a strip that lies outside the part.",
                    "The blade comes out on the other side, or meets what lies in the middle. Common practice, no source.",
                    Severity.WARNING,
                    List.of("bonds", "safety", "data"),
                    List.of());

    CutExtentCheck() {
        super(INFO);
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
        double[] x = bond.edge().stream().mapToDouble(Point::xMm).sorted().toArray();
        double[] y = bond.edge().stream().mapToDouble(Point::yMm).sorted().toArray();
        if (x.length < 3) {
            return;
        }
        double width = Math.min(x[x.length - 1] - x[0], y[y.length - 1] - y[0]);
        for (Bond.GivenDepth given : bond.givenDepths()) {
            if (given.depthMm() > width / 2) {
                found.add(
                        finding(
                                input,
                                given.depthMm() >= width ? Severity.ERROR : INFO.severity(),
                                joint.id(),
                                "bond/givenDepths",
                                "The depth of "
                                        + NumberText.mm(given.depthMm())
                                        + " given for edge "
                                        + given.edge()
                                        + " of "
                                        + joint.id()
                                        + " is more than half of the "
                                        + NumberText.mm(width)
                                        + " that the part measures.",
                                List.of(),
                                "Compare the depth and its unit with the maker's document."));
            }
        }
        for (Bond.Strip strip : bond.strips()) {
            boolean outside =
                    strip.path().stream()
                            .anyMatch(
                                    p ->
                                            p.xMm() < x[0] - strip.widthMm()
                                                    || p.xMm() > x[x.length - 1] + strip.widthMm()
                                                    || p.yMm() < y[0] - strip.widthMm()
                                                    || p.yMm() > y[y.length - 1] + strip.widthMm());
            if (outside) {
                found.add(
                        finding(
                                input,
                                joint.id(),
                                "bond/strips/" + strip.id(),
                                "Strip "
                                        + strip.id()
                                        + " of "
                                        + joint.id()
                                        + " lies outside the part.",
                                List.of(),
                                "Correct the path of the strip, or the edge."));
            }
        }
    }
}
