package reseat.console.sheet;

import java.util.ArrayList;
import java.util.List;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.Tally;

/** The closing checks of a sheet. */
final class ClosingPart {

    private final Plan plan;
    private final Rebuild rebuild;
    private final Tally tally;
    private final Device device;
    private final Names names;
    private final Paper paper;

    ClosingPart(Plan plan, Rebuild rebuild, Tally tally, Paper paper) {
        this.plan = plan;
        this.rebuild = rebuild;
        this.tally = tally;
        this.device = plan.request().device();
        this.names = new Names(device);
        this.paper = paper;
    }

    void write() {
        paper.rule("Before it leaves the bench", '═');
        if (tally.screwsOut() > 0) {
            List<String> types = new ArrayList<>();
            for (Tally.Total total : tally.totals()) {
                types.add(
                        total.type()
                                + " "
                                + total.out().size()
                                + " out, "
                                + total.in().size()
                                + " in");
            }
            check(
                    "Screws: "
                            + String.join("; ", types)
                            + ". "
                            + (tally.left() == 0
                                    ? "All trays are empty."
                                    : tally.left() + " are left over."));
        }
        if (!plan.movedParts().isEmpty()) {
            check(
                    Names.count(plan.movedParts().size(), "part is", "parts are")
                            + " back in: "
                            + names.parts(plan.movedParts())
                            + ".");
        }
        List<String> isolators = new ArrayList<>();
        for (CostedAct act : plan.acts()) {
            if (act.act() instanceof Act.Release release
                    && device.joint(release.joint()).isIsolator()) {
                isolators.add(names.joint(release.joint()));
            }
        }
        if (!isolators.isEmpty()) {
            check("The supply is connected again: " + Names.and(isolators) + ".");
        }
        if (!rebuild.tests().isEmpty()) {
            check(
                    Names.count(rebuild.tests().size(), "test", "tests")
                            + " passed and written down.");
        }
        if (!rebuild.leftOpen().isEmpty()) {
            check(
                    "Open when the unit arrived and not closed by this sheet: "
                            + names.together(rebuild.leftOpen())
                            + ".");
        }
        if (!rebuild.leftApart().isEmpty()) {
            check(
                    "Apart when the unit arrived and not put back by this sheet: "
                            + names.parts(rebuild.leftApart())
                            + ".");
        }
        check("Nothing rattles, no gap is wider than before, no cable is caught.");
    }

    private void check(String words) {
        paper.row(8, "    [ ]", words, "");
    }
}
