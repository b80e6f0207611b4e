package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.RebuildAct;
import reseat.sheet.Names;
import reseat.text.ListText;
import reseat.text.TimeText;

/** What a step of the rebuild says. */
final class RebuildWords {

    private final Source source;
    private final Device device;
    private final Names names;
    private final StepWords words;
    private final FasteningWords fastenings;

    RebuildWords(Source source) {
        this.source = source;
        this.device = source.device();
        this.names = source.names();
        this.words = new StepWords(source);
        this.fastenings = new FasteningWords(device, names);
    }

    String text(Run run, List<RebuildAct> acts) {
        RebuildAct first = acts.get(0);
        Act undone = first.act().orElse(null);
        if (undone == null || first.kind() == RebuildAct.Kind.WAIT) {
            return first.kind() + ".";
        }
        if (undone instanceof Act.Prepared prepared) {
            Prepare prepare = source.prepare(prepared);
            return prepare.restore().isEmpty()
                    ? "Undo \"" + prepare.text() + "\"."
                    : Source.sentence(prepare.restore());
        }
        if (undone instanceof Act.Release release) {
            List<String> ids = RebuildSteps.joints(acts);
            if (run.fastening().isPresent()) {
                return screws(device.joint(release.joint()), ids);
            }
            return words.restoreVerb(source.way(release).kind(), "Make again")
                    + ": "
                    + names.counted(ids);
        }
        List<String> parts = ((Act.MoveParts) undone).parts();
        boolean folded = first.kind() == RebuildAct.Kind.FOLD_BACK;
        return words.restoreVerb(
                        device.move(parts.get(0)).kind(), folded ? "Fold back" : "Set in place")
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts);
    }

    private String screws(Joint first, List<String> ids) {
        Map<String, Integer> types = new LinkedHashMap<>();
        words.screws(ids).forEach(screw -> types.merge(screw.type(), 1, Integer::sum));
        List<String> counts = new ArrayList<>();
        types.forEach((type, n) -> counts.add(n + " × " + type));
        // the passes give the order; here the order of the device file reads best
        List<String> forwards = new ArrayList<>(ids);
        Collections.reverse(forwards);
        return (device.kindOf(first).captive() ? "Tighten " : "Put in ")
                + String.join(", ", counts)
                + " ("
                + names.together(forwards)
                + ")";
    }

    /** Returns instructions, without the advice of the plan. */
    List<String> details(Run run, List<RebuildAct> acts, List<ConsumableUse> uses, long waitMs) {
        List<String> details = new ArrayList<>();
        RebuildAct first = acts.get(0);
        if (!first.brings().isEmpty()) {
            details.add("Bring " + names.parts(first.brings()) + " alongside first.");
        }
        for (RebuildAct act : acts) {
            for (String part : act.fresh()) {
                details.add("A new " + names.part(part) + " goes in; the old one is scrap.");
            }
        }
        if (run.fastening().isPresent()) {
            fastenings.of(run.fastening().get()).stream()
                    .map(Source::sentence)
                    .forEach(details::add);
        } else if (first.act().orElse(null) instanceof Act.Release release) {
            Way way = source.way(release);
            String restore =
                    way.restore().isEmpty()
                            ? device.kindOf(device.joint(release.joint())).restore()
                            : way.restore();
            if (!restore.isEmpty()) {
                details.add(Source.sentence(restore));
            }
        }
        if (!uses.isEmpty()) {
            details.add("Uses " + String.join(", ", uses.stream().map(names::use).toList()) + ".");
        }
        if (waitMs > 0) {
            details.add(
                    "Full strength after " + TimeText.unbroken(waitMs) + "; no load until then.");
        }
        if (first.act().orElse(null) instanceof Act.MoveParts move) {
            adhesive(run, move, details);
        }
        return details;
    }

    /** A bond is made after its part is in place, but adhesive beneath it is laid before. */
    private void adhesive(Run run, Act.MoveParts move, List<String> details) {
        Set<Integer> beneath = new TreeSet<>();
        Set<Integer> closing = new TreeSet<>();
        List<RebuildAct> all = source.rebuild().acts();
        for (int at = run.last() + 1; at < all.size(); at++) {
            RebuildAct later = all.get(at);
            if (later.act().orElse(null) instanceof Act.Release release
                    && holdsDown(device.joint(release.joint()), move.parts())) {
                (later.irreversible() ? closing : beneath).add(source.runs().numberBack(at));
            }
        }
        if (!beneath.isEmpty()) {
            details.add(
                    "If its adhesive (step "
                            + numbers(beneath)
                            + ") lies beneath it, lay that first.");
        }
        if (!closing.isEmpty()) {
            details.add("Not stuck down before step " + numbers(closing) + ".");
        }
    }

    private boolean holdsDown(Joint joint, List<String> parts) {
        return parts.contains(joint.holds().get(0))
                && device.kindOf(joint).role().filter(Kind.Role.BOND::equals).isPresent();
    }

    private static String numbers(Set<Integer> steps) {
        return ListText.and(steps.stream().map(String::valueOf).toList());
    }

    /** Returns what acts use up, added up by consumable and unit. */
    static List<ConsumableUse> uses(List<RebuildAct> acts) {
        Map<String, ConsumableUse> sums = new LinkedHashMap<>();
        for (RebuildAct act : acts) {
            for (ConsumableUse use : act.consumes()) {
                sums.merge(
                        use.consumable() + " " + use.unit(),
                        use,
                        (a, b) ->
                                new ConsumableUse(
                                        a.consumable(), a.quantity().add(b.quantity()), a.unit()));
            }
        }
        return List.copyOf(sums.values());
    }
}
