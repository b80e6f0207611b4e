package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.fasten.StripPlan;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.PlacedTest;
import reseat.plan.RebuildAct;
import reseat.sheet.Names;
import reseat.sheet.Step;
import reseat.text.TimeText;

/** What a step of the rebuild says. */
final class RebuildWords {

    private static final String NO_METAL =
            "While it is open, no metal tool and no loose screw in it.";

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
        return switch (first.kind()) {
            case MAKE -> make(run, acts);
            case PUT_BACK, FOLD_BACK -> place(first);
            case UNDO_PREPARE -> undo(first);
            case BED ->
                    words.restoreVerb(wayOf(first).kind(), "Lay")
                            + ": "
                            + names.counted(joints(acts));
            case WAIT -> waiting(first);
            case DOCK -> "Set it on the " + place(first.test().orElseThrow()) + ".";
            case SWITCH_ON ->
                    "Switch it on for the tests." + (isOpen(run.first()) ? " " + NO_METAL : "");
            case TEST -> Source.sentence(first.test().orElseThrow().text());
            case SWITCH_OFF -> "Switch it off and wait until it is down.";
            case UNDOCK -> "Take it off the " + place(first.test().orElseThrow()) + ".";
        };
    }

    /** Returns whether something is still to be closed or put back after an act. */
    private boolean isOpen(int at) {
        List<RebuildAct> acts = source.rebuild().acts();
        return acts.subList(at, acts.size()).stream()
                .anyMatch(
                        act ->
                                act.kind() == RebuildAct.Kind.MAKE
                                        || act.kind() == RebuildAct.Kind.PUT_BACK
                                        || act.kind() == RebuildAct.Kind.FOLD_BACK);
    }

    private String make(Run run, List<RebuildAct> acts) {
        RebuildAct first = acts.get(0);
        List<String> ids = joints(acts);
        if (run.fastening().isPresent()) {
            return screws(device.joint(ids.get(0)), ids);
        }
        String verb =
                source.runs().hasBed(ids.get(0))
                        ? "Press home"
                        : words.restoreVerb(wayOf(first).kind(), "Make again");
        return verb + ": " + names.counted(ids);
    }

    private String place(RebuildAct first) {
        List<String> parts = ((Act.MoveParts) first.act().orElseThrow()).parts();
        boolean folded = first.kind() == RebuildAct.Kind.FOLD_BACK;
        return words.restoreVerb(
                        device.move(parts.get(0)).kind(), folded ? "Fold back" : "Set in place")
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts);
    }

    private String undo(RebuildAct first) {
        Prepare prepare = source.prepare((Act.Prepared) first.act().orElseThrow());
        return prepare.restore().isEmpty()
                ? "Undo \"" + prepare.text() + "\"."
                : Source.sentence(prepare.restore());
    }

    private String waiting(RebuildAct wait) {
        String time = "Wait " + TimeText.atLeast(wait.dwellMs()) + ": ";
        return wait.rest().orElseThrow() == RebuildAct.Rest.CURE
                ? time + names.together(wait.joints()) + " must reach full strength."
                : time + "the cleaner must dry.";
    }

    private static String place(FunctionTest test) {
        return test.at().replace('-', ' ');
    }

    private Way wayOf(RebuildAct act) {
        return source.way((Act.Release) act.act().orElseThrow());
    }

    /** Returns the closing that the next test comes before, if it cannot be opened again. */
    Optional<String> closing(Run run) {
        int at = run.first();
        return source.rebuild().tests().stream()
                .filter(test -> test.at() >= at)
                .findFirst()
                .or(() -> lastTest())
                .flatMap(PlacedTest::closing);
    }

    private Optional<PlacedTest> lastTest() {
        List<PlacedTest> tests = source.rebuild().tests();
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
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
                + ")"
                + from(words.screws(ids));
    }

    private static String from(List<Step.Screw> screws) {
        String trays = StepWords.trays(screws);
        return trays.isEmpty() ? "" : " from " + trays;
    }

    /** Returns instructions, without the advice of the plan. */
    List<String> details(Run run, List<RebuildAct> acts, List<ConsumableUse> uses) {
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
        switch (first.kind()) {
            case MAKE -> making(run, acts, details);
            case BED -> {
                how(first, details);
                strips(acts).forEach((bond, plan) -> details.addAll(StripWords.of(plan, uses)));
                if (joints(acts).stream().anyMatch(this::isTestedBeforeItCloses)) {
                    details.add(
                            "Leave its cover film on: tests come before it is pressed home and"
                                    + " closes for good.");
                }
            }
            case PUT_BACK, FOLD_BACK -> given(acts, details);
            case WAIT -> details.add(meanwhile(first));
            case TEST -> now(run, details);
            case UNDO_PREPARE, DOCK, SWITCH_ON, SWITCH_OFF, UNDOCK -> {
                // the text says it
            }
        }
        if (!uses.isEmpty()) {
            details.add("Uses " + String.join(", ", uses.stream().map(names::use).toList()) + ".");
        }
        return details;
    }

    private void making(Run run, List<RebuildAct> acts, List<String> details) {
        RebuildAct first = acts.get(0);
        if (run.fastening().isPresent()) {
            fastenings
                    .of(run.fastening().get(), joints(acts), run.isLastOfFastening())
                    .forEach(words -> details.add(Source.sentence(words)));
            return;
        }
        if (joints(acts).stream().anyMatch(id -> device.joint(id).isIsolator())) {
            details.add("Take the cap or tape off its loose end first.");
        }
        if (source.runs().hasBed(joints(acts).get(0))) {
            if (isTestedBeforeItCloses(joints(acts).get(0))) {
                details.add("Lift the part, take the cover film off and lay the part back.");
            }
            details.add("Press evenly along the whole bed.");
        } else {
            how(first, details);
        }
    }

    /** Returns whether a test comes between the bed of a joint and its irreversible closing. */
    private boolean isTestedBeforeItCloses(String joint) {
        boolean laid = false;
        boolean tested = false;
        for (RebuildAct act : source.rebuild().acts()) {
            boolean its = act.act().isPresent() && act.joints().contains(joint);
            laid |= its && act.kind() == RebuildAct.Kind.BED;
            tested |= laid && act.kind() == RebuildAct.Kind.TEST;
            if (its && act.kind() == RebuildAct.Kind.MAKE) {
                return tested && act.irreversible();
            }
        }
        return false;
    }

    private void how(RebuildAct act, List<String> details) {
        Way way = wayOf(act);
        Joint joint = device.joint(act.joints().get(0));
        String restore = restore(joint, way);
        if (!restore.isEmpty()) {
            details.add(Source.sentence(restore));
        }
    }

    private String restore(Joint joint, Way way) {
        return way.restore().isEmpty() ? device.kindOf(joint).restore() : way.restore();
    }

    private void given(List<RebuildAct> acts, List<String> details) {
        List<String> closed = joints(acts);
        if (!closed.isEmpty()) {
            details.add("Closes with it: " + names.together(closed) + ".");
            closed.stream()
                    .map(device::joint)
                    .filter(device::onlyLetsGo)
                    .map(joint -> restore(joint, joint.firstWay()))
                    .filter(restore -> !restore.isEmpty())
                    .distinct()
                    .forEach(restore -> details.add(Source.sentence(restore)));
        }
    }

    private String meanwhile(RebuildAct wait) {
        if (wait.rest().orElseThrow() == RebuildAct.Rest.DRY) {
            return "Nothing is switched on, plugged in or heated meanwhile.";
        }
        Set<String> parts = new LinkedHashSet<>();
        wait.joints().forEach(id -> parts.addAll(device.joint(id).holds()));
        return "Meanwhile do not turn it, dock it or test it for leaks, and put no load on "
                + names.parts(parts)
                + ".";
    }

    private void now(Run run, List<String> details) {
        PlacedTest test = run.test().orElseThrow();
        List<PlacedTest> all = source.rebuild().tests();
        int place = all.indexOf(test);
        boolean told = place > 0 && all.get(place - 1).closing().equals(test.closing());
        if (!told) {
            test.closing()
                    .ifPresent(
                            joint ->
                                    details.add(
                                            "Now, because "
                                                    + names.joint(joint)
                                                    + (device.kindOf(device.joint(joint))
                                                                    .irreversible()
                                                            ? " closes for good in what follows."
                                                            : " has to rest once it is"
                                                                    + " closed.")));
        }
    }

    /** Returns the ids of joints that acts close or lay. */
    static List<String> joints(List<RebuildAct> acts) {
        return acts.stream()
                .filter(act -> act.kind() != RebuildAct.Kind.WAIT)
                .flatMap(act -> act.joints().stream())
                .toList();
    }

    /** Returns the strips to cut to length where a bond of known geometry is laid. */
    Map<String, StripPlan> strips(List<RebuildAct> acts) {
        Map<String, StripPlan> strips = new LinkedHashMap<>();
        for (RebuildAct act : acts) {
            boolean lays =
                    act.kind() == RebuildAct.Kind.BED
                            || (act.kind() == RebuildAct.Kind.MAKE
                                    && !source.runs().hasBed(act.joints().get(0)));
            if (lays) {
                for (String id : act.joints()) {
                    device.joint(id).bond().ifPresent(bond -> strips.put(id, StripPlan.of(bond)));
                }
            }
        }
        return strips;
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
