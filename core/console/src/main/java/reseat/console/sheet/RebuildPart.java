package reseat.console.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.Advice;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;

/** The rebuild of a sheet, with the tests where they belong. */
final class RebuildPart {

    private final Rebuild rebuild;
    private final PlanNotes notes;
    private final Tally tally;
    private final Device device;
    private final Names names;
    private final Paper paper;
    private final AdvicePart advice;
    private final FasteningPart fastenings;
    private Optional<String> closing = Optional.empty();

    RebuildPart(
            Plan plan,
            Rebuild rebuild,
            PlanNotes notes,
            Tally tally,
            Paper paper,
            AdvicePart advice) {
        this.rebuild = rebuild;
        this.notes = notes;
        this.tally = tally;
        this.device = plan.request().device();
        this.names = new Names(device);
        this.paper = paper;
        this.advice = advice;
        this.fastenings = new FasteningPart(device, names, advice);
    }

    void write(Steps steps) {
        paper.rule("Put back", '═');
        advice.begin();
        String heading = "";
        String posture =
                rebuild.acts().isEmpty() ? device.usualPosture() : rebuild.acts().get(0).posture();
        for (Step step : steps.rebuild()) {
            String here = heading(step);
            if (!here.equals(heading)) {
                heading = here;
                paper.gap();
                String to = step.acts().isEmpty() ? posture : act(step).posture();
                paper.row(0, "", here, TeardownPart.turn(posture, to));
                posture = to;
            }
            if (step.test().isPresent()) {
                test(step, step.test().get());
                continue;
            }
            List<Advice> all = AdvicePart.merge(notes.rebuild(), step.acts());
            advice.before(all, step.number());
            paper.row(
                    8,
                    TeardownPart.number(step),
                    words(step),
                    TeardownPart.tallyAfter(tally, Tally.Side.IN, step));
            details(step);
            adhesive(step, steps);
            advice.with(all, steps::numberOf);
        }
    }

    private String heading(Step step) {
        if (step.test().isPresent()) {
            return step.test().get().closing().isPresent() ? "Test before closing" : "Test";
        }
        RebuildAct act = act(step);
        if (act.kind() == RebuildAct.Kind.UNDO_PREPARE) {
            return "Undo the preparations";
        }
        return Names.posture(act.posture()) + " · " + names.tool(act.tool());
    }

    private RebuildAct act(Step step) {
        return rebuild.acts().get(step.first());
    }

    private void test(Step step, PlacedTest test) {
        paper.row(8, TeardownPart.number(step), test.test().text() + ".", "pass / fail");
        boolean said = test.closing().equals(closing);
        closing = test.closing();
        test.closing()
                .filter(joint -> !said)
                .ifPresent(
                        joint ->
                                advice.bullet(
                                        "Now, because "
                                                + names.joint(joint)
                                                + " closes for good in what follows. The device"
                                                + " is open and under power: no metal tool in it."));
    }

    private String words(Step step) {
        RebuildAct act = act(step);
        if (act.act() instanceof Act.Prepared prepared) {
            Prepare prepare = Objects.requireNonNull(device.prepares().get(prepared.prepare()));
            return prepare.restore().isEmpty()
                    ? "Undo \"" + prepare.text() + "\"."
                    : AdvicePart.stop(prepare.restore());
        }
        if (act.act() instanceof Act.Release release) {
            List<String> ids = joints(step);
            if (step.fastening().isPresent()) {
                Map<String, Integer> types = new LinkedHashMap<>();
                ids.forEach(id -> types.merge(fastenings.seat(id).screw(), 1, Integer::sum));
                List<String> counts = new ArrayList<>();
                types.forEach((type, n) -> counts.add(n + " × " + type));
                boolean stay = device.kindOf(device.joint(release.joint())).captive();
                return (stay ? "Tighten " : "Put in ")
                        + String.join(", ", counts)
                        + " ("
                        + names.together(forwards(ids))
                        + ")";
            }
            Way way = Steps.way(device.joint(release.joint()), release);
            String verb = device.manipulation(way.kind()).restoreVerb();
            return (verb.isEmpty() ? "Make again" : verb) + ": " + names.counted(ids);
        }
        List<String> parts = ((Act.MoveParts) act.act()).parts();
        String verb = device.manipulation(device.move(parts.get(0)).kind()).restoreVerb();
        boolean folded = act.kind() == RebuildAct.Kind.FOLD_BACK;
        return (verb.isEmpty() ? folded ? "Fold back" : "Set in place" : verb)
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts);
    }

    private List<String> joints(Step step) {
        return step.acts().stream()
                .map(at -> ((Act.Release) rebuild.acts().get(at).act()).joint())
                .toList();
    }

    /** The passes tell the order; the head of the step reads best as the device file has it. */
    private static List<String> forwards(List<String> ids) {
        List<String> turned = new ArrayList<>(ids);
        Collections.reverse(turned);
        return turned;
    }

    private void details(Step step) {
        RebuildAct act = act(step);
        if (!act.brings().isEmpty()) {
            advice.bullet("Bring " + names.parts(act.brings()) + " alongside first.");
        }
        for (String part : act.fresh()) {
            advice.bullet("A new " + names.part(part) + " goes in; the old one is scrap.");
        }
        if (step.fastening().isPresent()) {
            fastenings.write(step.fastening().get());
        } else if (act.act() instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            Way way = Steps.way(joint, release);
            String restore =
                    way.restore().isEmpty() ? device.kindOf(joint).restore() : way.restore();
            if (!restore.isEmpty()) {
                advice.bullet(restore + ".");
            }
        }
        consumed(step);
        long dwell =
                step.acts().stream()
                        .mapToLong(at -> rebuild.acts().get(at).dwellMs())
                        .max()
                        .orElse(0);
        if (dwell > 0) {
            advice.bullet("Full strength after " + Names.time(dwell) + "; no load until then.");
        }
    }

    /** A bond is made after its part is in place, but adhesive beneath it is laid before. */
    private void adhesive(Step step, Steps steps) {
        if (!(act(step).act() instanceof Act.MoveParts move)) {
            return;
        }
        Set<Integer> beneath = new TreeSet<>();
        Set<Integer> closing = new TreeSet<>();
        for (int at = step.last() + 1; at < rebuild.acts().size(); at++) {
            RebuildAct later = rebuild.acts().get(at);
            if (later.act() instanceof Act.Release release
                    && holdsDown(device.joint(release.joint()), move.parts())) {
                (later.irreversible() ? closing : beneath).add(steps.numberBack(at));
            }
        }
        if (!beneath.isEmpty()) {
            advice.bullet(
                    "If its adhesive (step "
                            + numbers(beneath)
                            + ") lies beneath it, lay that first");
        }
        if (!closing.isEmpty()) {
            advice.bullet("Not stuck down before step " + numbers(closing));
        }
    }

    private boolean holdsDown(Joint joint, List<String> parts) {
        return parts.contains(joint.holds().get(0))
                && device.kindOf(joint).role().filter(Kind.Role.BOND::equals).isPresent();
    }

    private static String numbers(Set<Integer> steps) {
        return Names.and(steps.stream().map(String::valueOf).toList());
    }

    private void consumed(Step step) {
        Map<String, ConsumableUse> sums = new LinkedHashMap<>();
        for (int at : step.acts()) {
            for (ConsumableUse use : rebuild.acts().get(at).consumes()) {
                sums.merge(
                        use.consumable(),
                        use,
                        (a, b) ->
                                new ConsumableUse(
                                        a.consumable(), a.quantity().add(b.quantity()), a.unit()));
            }
        }
        if (!sums.isEmpty()) {
            List<String> words = new ArrayList<>();
            for (ConsumableUse use : sums.values()) {
                String name =
                        device.consumables().containsKey(use.consumable())
                                ? Objects.requireNonNull(device.consumables().get(use.consumable()))
                                        .name()
                                : use.consumable();
                words.add(
                        use.quantity().stripTrailingZeros().toPlainString()
                                + " "
                                + (use.unit().equals("piece") ? "×" : use.unit())
                                + " "
                                + name);
            }
            advice.bullet("Uses " + String.join(", ", words) + ".");
        }
    }
}
