package reseat.console.sheet;

import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.Tally;

/** A plan as a sheet of text that a person follows at the bench. */
public final class PlanSheet {

    /** What a sheet shows. */
    public enum Extent {
        WHOLE,
        TEARDOWN,
        REBUILD
    }

    private PlanSheet() {}

    /**
     * Renders a plan.
     *
     * @param plan a plan that the simulator found valid
     * @param extent what to show; safety messages are shown with either
     * @param terminal what it is shown on
     * @return the text, ending with a line feed
     */
    public static String render(Plan plan, Extent extent, Terminal terminal) {
        Rebuild rebuild = Rebuild.of(plan);
        Tally tally = Tally.of(plan, rebuild);
        PlanNotes notes = PlanNotes.of(plan, rebuild);
        Steps steps = new Steps(plan, rebuild);
        Paper paper = new Paper(terminal);
        HeadPart head = new HeadPart(plan, rebuild, paper);
        head.write(steps, notes);
        if (plan.acts().isEmpty()) {
            paper.gap();
            paper.line("Nothing has to be done: the goal holds as the unit stands.");
            return paper.text();
        }
        head.needs(tally);
        AdvicePart advice = new AdvicePart(plan.request().device(), paper);
        if (extent != Extent.REBUILD) {
            new TeardownPart(plan, notes, tally, paper, advice).write(steps);
        }
        if (extent != Extent.TEARDOWN) {
            new RebuildPart(plan, rebuild, notes, tally, paper, advice).write(steps);
            new ClosingPart(plan, rebuild, tally, paper).write();
        }
        return paper.text();
    }

    /** Returns the parts that an act moves by name, or the joint that it releases. */
    static String subject(Names names, Act act) {
        if (act instanceof Act.Release release) {
            return names.joint(release.joint());
        }
        return act instanceof Act.MoveParts move ? names.parts(move.parts()) : "";
    }

    /** Returns the tools of a plan, in the order of first use. */
    static List<String> tools(Plan plan, Device device) {
        Set<String> used = new java.util.LinkedHashSet<>();
        for (CostedAct act : plan.acts()) {
            if (!act.tool().equals(device.hand())) {
                used.add(act.tool());
            }
        }
        return List.copyOf(used);
    }
}
