package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.plan.RebuildAct;
import reseat.plan.Stand;

/**
 * What the order of a rebuild has to keep besides being a valid teardown backwards: beds while
 * their site can be reached and before what covers it, isolators after everything that needs their
 * supplies cut, nothing flammable after an isolator, and what closes for good or has to rest after
 * everything that can be done before it. All of it is kept as far as the device allows.
 */
public final class RebuildWants {

    private static final String EARLY =
            "Something that closes for good or has to rest closes earlier than it has to.";

    /** No item: before the first placing, or after the last. */
    private static final int NONE = -1;

    private final RebuildItems items;
    private final Device device;
    private final RebuildTests tests;
    private final Stand end;
    private final Precedence known;
    private final List<Want> wants = new ArrayList<>();
    private final Set<String> broken = new LinkedHashSet<>();

    /**
     * Finds what is wanted.
     *
     * @param rules what makes the order a valid teardown backwards
     */
    public RebuildWants(RebuildItems items, RebuildTests tests, List<Rule> rules) {
        this.items = items;
        this.device = items.device();
        this.tests = tests;
        this.end = Stand.of(device, items.end());
        this.known = new Precedence(items.size(), rules);
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind() == RebuildAct.Kind.BED) {
                bed(at);
            }
        }
        isolators();
        late();
    }

    /** Returns what can be kept as far as is known, the most important first. */
    public List<Want> all() {
        return List.copyOf(wants);
    }

    /** Returns what the technician has to know because it cannot be kept in any order. */
    public List<String> broken() {
        return List.copyOf(broken);
    }

    private void bed(int bed) {
        Joint joint = items.get(bed).joints().get(0);
        for (int closing : items.closers(joint)) {
            if (items.get(closing).kind() == RebuildAct.Kind.MAKE) {
                want(
                        List.of(rule(new Pair(bed, closing))),
                        "The bed of " + joint.name() + " is laid after it is made.");
            }
        }
        for (String cover : joint.under()) {
            apart(bed, joint, cover, /* fromTheStart= */ true);
        }
        for (String part : joint.holds()) {
            if (!part.equals(joint.site())) {
                apart(bed, joint, part, /* fromTheStart= */ false);
            }
        }
    }

    /** A part lies in one place from one placing to the next. */
    private record Stretch(int place, int begin, int end) {}

    private List<Stretch> stretches(String part) {
        List<Stretch> stretches = new ArrayList<>();
        int begin = NONE;
        for (int placing : items.placings(part)) {
            stretches.add(new Stretch(placing, begin, placing));
            begin = placing;
        }
        stretches.add(new Stretch(NONE, begin, NONE));
        return stretches;
    }

    /**
     * Keeps a bed out of all stretches in which a part lies with the site.
     *
     * @param fromTheStart whether this goes for a part that lies with it before the rebuild, too
     */
    private void apart(int bed, Joint joint, String part, boolean fromTheStart) {
        String why =
                "The bed of "
                        + joint.name()
                        + " is laid while "
                        + device.part(part).name()
                        + " lies over it.";
        for (Stretch one : stretches(part)) {
            for (Stretch other : stretches(joint.site())) {
                boolean together =
                        one.place == other.place
                                && (one.place != NONE || end.together(part, joint.site()));
                boolean before = one.begin == NONE && other.begin == NONE;
                if (together && (fromTheStart || !before)) {
                    Set<Pair> pairs = new LinkedHashSet<>();
                    if (one.begin != NONE) {
                        pairs.add(new Pair(bed, one.begin));
                    }
                    if (other.begin != NONE) {
                        pairs.add(new Pair(bed, other.begin));
                    }
                    if (one.end != NONE) {
                        pairs.add(new Pair(one.end, bed));
                    }
                    if (pairs.isEmpty()) {
                        broken.add(why);
                    } else {
                        want(List.of(new Rule(List.copyOf(pairs), why)), why);
                    }
                }
            }
        }
    }

    private void isolators() {
        items.closers()
                .forEach(
                        (joint, closers) -> {
                            if (joint.isIsolator()) {
                                isolator(joint, closers);
                            }
                        });
    }

    private void isolator(Joint isolator, List<Integer> closers) {
        for (int at = 0; at < items.size(); at++) {
            List<Rule> rules = beforeLast(at, closers);
            if (rules.isEmpty()) {
                continue;
            }
            Undoing item = items.get(at);
            if (item.kind() == RebuildAct.Kind.BED
                    && item.isFlammable(device)
                    && !isOutside(item.joints().get(0))) {
                want(
                        rules,
                        "The bed of "
                                + item.joints().get(0).name()
                                + " is cleaned after "
                                + isolator.name()
                                + " is connected.");
            } else if (items.needs(at).stream().anyMatch(isolator.cuts()::contains)) {
                wish(rules, isolator.name() + " is connected earlier than it has to.");
            }
        }
    }

    /** Returns whether a bed lies under parts that come off with the device closed. */
    private boolean isOutside(Joint joint) {
        return joint.holds().stream()
                .filter(part -> !part.equals(joint.site()))
                .allMatch(part -> device.power().isOutside(new Act.MoveParts(List.of(part))));
    }

    /** Puts what closes for good, or has to rest, after all that can be done before it. */
    private void late() {
        Map<Joint, List<Integer>> late = new LinkedHashMap<>();
        items.closers()
                .forEach(
                        (joint, closers) -> {
                            if (items.isLate(joint)) {
                                late.put(joint, closers);
                            }
                        });
        for (Joint joint : late.keySet()) {
            if (items.sticksForGood(joint)) {
                testsBefore(joining(joint), /* docked= */ false);
            }
        }
        late.values().forEach(closers -> testsBefore(closers, /* docked= */ true));
        for (List<Integer> closers : late.values()) {
            for (int at = 0; at < items.size(); at++) {
                List<Rule> rules = beforeLast(at, closers);
                boolean work =
                        items.get(at).kind().isUndoing()
                                && !(items.get(at).act() instanceof Act.Prepared);
                if (work && !rules.isEmpty()) {
                    notLate(at, rules.get(0), late);
                }
            }
        }
    }

    /** Returns the placings of which the last brings the parts of a joint together. */
    private List<Integer> joining(Joint joint) {
        Set<Integer> joining = new LinkedHashSet<>();
        for (String part : joint.holds()) {
            List<Integer> placings = items.placings(part);
            if (!placings.isEmpty()) {
                joining.add(placings.get(placings.size() - 1));
            }
        }
        return List.copyOf(joining);
    }

    private void testsBefore(List<Integer> closers, boolean docked) {
        for (FunctionTest test : tests.due()) {
            Set<Integer> needs = tests.needs(test);
            if (!needs.containsAll(closers) && (docked || !test.isDocked())) {
                List<Rule> rules = new ArrayList<>();
                needs.forEach(at -> rules.addAll(beforeLast(at, closers)));
                wish(rules, "A test is made later than it could be: " + test.text() + ".");
            }
        }
    }

    /** Wishes for a rule unless the item itself closes something that has to come late. */
    private void notLate(int at, Rule rule, Map<Joint, List<Integer>> late) {
        List<Pair> oneOf = new ArrayList<>(rule.oneOf());
        for (Joint joint : items.get(at).joints()) {
            if (late.containsKey(joint)) {
                List<Integer> others =
                        items.closers(joint).stream().filter(each -> each != at).toList();
                if (others.size() != 1) {
                    return;
                }
                oneOf.add(new Pair(others.get(0), at));
            }
        }
        wish(List.of(new Rule(oneOf, rule.why())), EARLY);
    }

    /** Returns the rule that an item comes before the last of some; empty if it is all of them. */
    private static List<Rule> beforeLast(int at, List<Integer> closers) {
        List<Pair> pairs =
                closers.stream()
                        .filter(closer -> closer != at)
                        .map(closer -> new Pair(at, closer))
                        .toList();
        return pairs.isEmpty() ? List.of() : List.of(new Rule(pairs, "it closes late"));
    }

    private static Rule rule(Pair pair) {
        return new Rule(List.of(pair), "a bed is laid before");
    }

    /** Wants what the technician must be told about if it cannot be. */
    private void want(List<Rule> rules, String why) {
        if (!wish(rules, why)) {
            broken.add(why);
        }
    }

    /** Wants what need not be if the device does not allow it. */
    private boolean wish(List<Rule> rules, String why) {
        boolean kept = known.add(rules);
        if (kept && !rules.isEmpty()) {
            wants.add(new Want(rules, why));
        }
        return kept;
    }
}
