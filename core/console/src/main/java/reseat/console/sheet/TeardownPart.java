package reseat.console.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Tally;

/** The teardown of a sheet. */
final class TeardownPart {

    private final Plan plan;
    private final PlanNotes notes;
    private final Tally tally;
    private final Device device;
    private final Names names;
    private final Paper paper;
    private final AdvicePart advice;

    TeardownPart(Plan plan, PlanNotes notes, Tally tally, Paper paper, AdvicePart advice) {
        this.plan = plan;
        this.notes = notes;
        this.tally = tally;
        this.device = plan.request().device();
        this.names = new Names(device);
        this.paper = paper;
        this.advice = advice;
    }

    void write(Steps steps) {
        paper.rule("Take apart", '═');
        advice.begin();
        String heading = "";
        String posture = device.usualPosture();
        for (Step step : steps.teardown()) {
            CostedAct first = plan.acts().get(step.first());
            String here = heading(first);
            if (!here.equals(heading)) {
                heading = here;
                paper.gap();
                paper.row(0, "", here, turn(posture, first.posture()));
                posture = first.posture();
            }
            List<Advice> all = AdvicePart.merge(notes.teardown(), step.acts());
            advice.before(all, step.number());
            paper.row(8, number(step), words(step), tallyAfter(tally, Tally.Side.OUT, step));
            advice.with(all, steps::numberOf);
        }
    }

    private String heading(CostedAct act) {
        if (act.act() instanceof Act.Prepared) {
            return "First";
        }
        return Names.posture(act.posture()) + " · " + names.tool(act.tool());
    }

    static String turn(String from, String to) {
        return from.equals(to) ? "" : "turn: " + Names.posture(from) + " → " + Names.posture(to);
    }

    static String number(Step step) {
        return String.format(Locale.ROOT, "%3d [ ]", step.number());
    }

    private String words(Step step) {
        CostedAct first = plan.acts().get(step.first());
        if (first.act() instanceof Act.Prepared prepared) {
            return AdvicePart.stop(
                    Objects.requireNonNull(device.prepares().get(prepared.prepare())).text());
        }
        if (first.act() instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            String verb = verb(Steps.way(joint, release).kind(), "Release");
            List<String> ids =
                    step.acts().stream()
                            .map(at -> ((Act.Release) plan.acts().get(at).act()).joint())
                            .toList();
            if (joint.seat().isPresent()) {
                return verb
                        + (verb.contains(" ") ? ": " : " ")
                        + ids.size()
                        + " × "
                        + joint.seat().get().screw()
                        + " ("
                        + names.together(ids)
                        + ")";
            }
            return verb + ": " + names.counted(ids);
        }
        List<String> parts = ((Act.MoveParts) first.act()).parts();
        boolean tethered =
                notes.teardown().get(step.first()).stream()
                        .anyMatch(each -> each.kind() == Advice.Kind.TETHER);
        return verb(device.move(parts.get(0)).kind(), "Lift off")
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts)
                + (tethered ? " (laid aside, not off)" : "");
    }

    private String verb(String manipulation, String otherwise) {
        String verb = device.manipulation(manipulation).verb();
        return verb.isEmpty() ? otherwise : verb;
    }

    /** Returns the running count after a step, or nothing where no screw went out or in. */
    static String tallyAfter(Tally tally, Tally.Side side, Step step) {
        StringBuilder words = new StringBuilder();
        int all = -1;
        java.util.Map<String, Integer> types = new java.util.LinkedHashMap<>();
        for (Tally.Entry entry : tally.entries()) {
            if (entry.side() == side && step.acts().contains(entry.act())) {
                types.put(entry.type(), entry.outOfType());
                all = entry.outInAll();
            }
        }
        if (all < 0) {
            return "";
        }
        types.forEach(
                (type, out) ->
                        words.append(words.length() == 0 ? "" : ", ").append(type + " " + out));
        return "out: " + words + " | all " + all;
    }
}
