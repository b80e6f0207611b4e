package reseat.console.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.fasten.SeatOrder;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Seat;
import reseat.model.Way;
import reseat.plan.Advice;
import reseat.plan.Fastening;
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
    }

    void write(Steps steps) {
        paper.rule("Put back", '═');
        String heading = "";
        String posture =
                rebuild.acts().isEmpty()
                        ? device.usualPosture()
                        : rebuild.acts().get(0).posture();
        for (Step step : steps.rebuild()) {
            String here = heading(step);
            if (!here.equals(heading)) {
                heading = here;
                advice.block();
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
            advice.before(all);
            paper.row(
                    8,
                    TeardownPart.number(step),
                    words(step),
                    TeardownPart.tallyAfter(tally, Tally.Side.IN, step));
            details(step);
            advice.with(all, steps::numberOf);
        }
    }

    private String heading(Step step) {
        if (step.test().isPresent()) {
            return step.test().get().closing().isPresent()
                    ? "Test before closing"
                    : "Test";
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
        test.closing()
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
                ids.forEach(id -> types.merge(seat(id).screw(), 1, Integer::sum));
                List<String> counts = new ArrayList<>();
                types.forEach((type, n) -> counts.add(n + " × " + type));
                boolean stay = device.kindOf(device.joint(release.joint())).captive();
                return (stay ? "Tighten " : "Put in ")
                        + String.join(", ", counts)
                        + " ("
                        + names.together(ids)
                        + ")";
            }
            Way way = Steps.way(device.joint(release.joint()), release);
            String verb = device.manipulation(way.kind()).restoreVerb();
            return (verb.isEmpty() ? "Make again" : verb)
                    + ": "
                    + (ids.size() > 1 ? ids.size() + " × " : "")
                    + names.together(ids);
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

    private void details(Step step) {
        RebuildAct act = act(step);
        if (!act.brings().isEmpty()) {
            advice.bullet("Bring " + names.parts(act.brings()) + " alongside first.");
        }
        for (String part : act.fresh()) {
            advice.bullet("A new " + names.part(part) + " goes in; the old one is scrap.");
        }
        if (step.fastening().isPresent()) {
            fastening(step.fastening().get());
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
                step.acts().stream().mapToLong(at -> rebuild.acts().get(at).dwellMs()).max().orElse(0);
        if (dwell > 0) {
            advice.bullet("Full strength after " + Names.time(dwell) + "; no load until then.");
        }
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
                                ? Objects.requireNonNull(
                                                device.consumables().get(use.consumable()))
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

    private void fastening(Fastening fastening) {
        List<SeatOrder.Pass> passes = fastening.order().passes();
        fastening.joints().stream().map(this::restore).distinct().forEach(advice::bullet);
        if (fastening.joints().size() > 1) {
            advice.bullet("All of them by hand first, two or three turns. Then:");
            String before = "";
            for (SeatOrder.Pass pass : passes) {
                if (pass.stage() == Stage.START_BY_HAND) {
                    continue;
                }
                String order = names.inOrder(pass.joints());
                String where = order.equals(before) ? "the same order" : order;
                before = order;
                advice.bullet(
                        pass.stage() == Stage.GO_ROUND
                                ? "once round at the full torque, nothing should turn: " + where
                                : "to " + share(fastening, pass.torqueShare()) + ": " + where);
            }
        }
        fastening.order().notes().forEach(note -> advice.bullet(note));
        Map<String, List<String>> torques = new LinkedHashMap<>();
        for (String id : fastening.joints()) {
            torques.computeIfAbsent(Names.torque(seat(id)), t -> new ArrayList<>()).add(id);
        }
        torques.forEach(
                (torque, ids) ->
                        advice.bullet(
                                "Torque"
                                        + (torques.size() > 1 ? " of " + names.together(ids) : "")
                                        + ": "
                                        + torque
                                        + "."));
    }

    /** Returns a share of the torque, in newton metres where all seats have the same. */
    private String share(Fastening fastening, double share) {
        List<Double> given =
                fastening.joints().stream()
                        .map(id -> seat(id).torqueNm().orElse(-1))
                        .distinct()
                        .toList();
        String percent = Math.round(share * 100) + " % of the torque";
        if (given.size() == 1 && given.get(0) > 0 && share < 1) {
            return percent + " (" + Names.number(given.get(0) * share) + "\u00a0N·m)";
        }
        return share < 1 ? percent : "the full torque";
    }

    private String restore(String id) {
        Joint joint = device.joint(id);
        String kind = device.kindOf(joint).restore();
        return kind.isEmpty() ? "Start by hand on the old thread, then tighten" : kind;
    }

    private Seat seat(String joint) {
        return device.joint(joint).seat().orElseThrow();
    }
}
