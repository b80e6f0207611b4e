package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntPredicate;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;

/**
 * What lets the parts of a move hang together: of the joints that hold them to each other, enough
 * are released after the move only. Which joints are enough is a choice in general, so rules are
 * made for a given order: where parts fall in two, one of the joints between them is released too
 * early.
 */
final class Hanging {

    private static final String WHY = " leave together, so something still holds them together";

    private final int move;
    private final Set<String> parts;

    /** Joints that hang the parts together and stay. */
    private final List<Joint> lasting = new ArrayList<>();

    /** The others, each with the acts of which the first releases it. */
    private final Map<Joint, List<Integer>> released = new LinkedHashMap<>();

    Hanging(
            Device device,
            State start,
            Function<Joint, List<Integer>> releasers,
            int move,
            List<String> parts) {
        this.move = move;
        this.parts = new LinkedHashSet<>(parts);
        for (Joint joint : device.joints().values()) {
            boolean leadsOut = !this.parts.containsAll(joint.holds());
            if (joint.holds().stream().filter(this.parts::contains).count() < 2
                    || start.released().contains(joint.id())
                    || (leadsOut && !joint.slack() && !joint.gives())) {
                continue;
            }
            // what the move itself makes let go holds its parts until then
            List<Integer> by = new ArrayList<>(releasers.apply(joint));
            by.remove((Integer) move);
            if (by.isEmpty()) {
                lasting.add(joint);
            } else {
                released.put(joint, by);
            }
        }
    }

    /** Tells whether nothing holds the parts together even before any release. */
    boolean never() {
        return reached(released.keySet()).size() < parts.size();
    }

    /** Returns the rules that hold in every order: joints without which the parts fall in two. */
    List<Rule> always() {
        List<Rule> rules = new ArrayList<>();
        released.forEach(
                (joint, by) -> {
                    Set<Joint> others = new LinkedHashSet<>(released.keySet());
                    others.remove(joint);
                    if (reached(others).size() < parts.size()) {
                        by.forEach(release -> rules.add(rule(List.of(new Pair(move, release)))));
                    }
                });
        return rules;
    }

    /** Returns the number of the move. */
    int move() {
        return move;
    }

    /** Returns whether the parts hang together while some joints are not released. */
    boolean hangs(IntPredicate unreleased) {
        List<Joint> still = new ArrayList<>();
        released.forEach(
                (joint, by) -> {
                    if (by.stream().allMatch(unreleased::test)) {
                        still.add(joint);
                    }
                });
        return reached(still).size() == parts.size();
    }

    /** Returns the rule that an order breaks; none if the parts hang together in it. */
    List<Rule> brokenBy(List<Integer> order) {
        Set<Integer> before = new LinkedHashSet<>(order.subList(0, order.indexOf(move)));
        Map<Joint, Integer> gone = new LinkedHashMap<>();
        released.forEach(
                (joint, by) ->
                        by.stream()
                                .filter(before::contains)
                                .findFirst()
                                .ifPresent(release -> gone.put(joint, release)));
        Set<Joint> still = new LinkedHashSet<>(released.keySet());
        still.removeAll(gone.keySet());
        Set<String> reached = reached(still);
        if (reached.size() == parts.size()) {
            return List.of();
        }
        List<Pair> pairs = new ArrayList<>();
        gone.forEach(
                (joint, release) -> {
                    Set<String> held = new LinkedHashSet<>(joint.holds());
                    held.retainAll(parts);
                    if (held.stream().anyMatch(reached::contains) && !reached.containsAll(held)) {
                        pairs.add(new Pair(move, release));
                    }
                });
        return List.of(rule(pairs));
    }

    private Rule rule(List<Pair> pairs) {
        return new Rule(pairs, String.join(" and ", parts) + WHY);
    }

    private Set<String> reached(Collection<Joint> more) {
        List<Joint> joints = new ArrayList<>(lasting);
        joints.addAll(more);
        Set<String> reached = new LinkedHashSet<>(Set.of(parts.iterator().next()));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Joint joint : joints) {
                Set<String> held = new LinkedHashSet<>(joint.holds());
                held.retainAll(parts);
                if (held.stream().anyMatch(reached::contains)) {
                    grown |= reached.addAll(held);
                }
            }
        }
        return reached;
    }
}
