package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;
import reseat.text.ListText;

/**
 * What must come before what so that fixed acts are allowed in turn.
 *
 * <p>With the acts fixed, and the moves of each part in a fixed order, where a part lies is decided
 * by which of its moves are done. Each condition of the device is then a pair of acts, or a choice
 * among pairs:
 *
 * <ul>
 *   <li>a cover c over a joint with site s: of all stretches in which c and s lie together, the
 *       release is in none: it comes before the stretch begins, or after c or s leaves;
 *   <li>the same for a part in the way of another part's move;
 *   <li>a joint that is neither slack nor gives and leads out of a move is released before it;
 *   <li>a joint that gives is released by its own act, before all moves that it leads out of, or,
 *       without one, by the first of these: it is released before an act if one of them is;
 *   <li>of the isolators of a supply one is released before what needs the supply cut: a release, a
 *       move, and a move that a joint which gives leads out of;
 *   <li>what strains a way is released before it;
 *   <li>parts that move as one still hang together: see {@link Hanging}.
 * </ul>
 *
 * <p>All valid orders of the acts are exactly those that keep all rules, and all of them end in the
 * same state.
 */
final class ActRules {

    /** No move: before the first one, or after the last one. */
    private static final int NONE = -1;

    private final Device device;
    private final State start;
    private final Map<Integer, Act> acts;
    private final Map<String, Integer> releases = new LinkedHashMap<>();
    private final Map<String, List<Integer>> moves = new LinkedHashMap<>();

    /** For each joint that gives, the moves that it leads out of. */
    private final Map<String, List<Integer>> lettingGo = new LinkedHashMap<>();

    private final Map<String, Integer> startPlaces = new LinkedHashMap<>();
    private final List<Rule> rules = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final List<Hanging> hangings = new ArrayList<>();

    /**
     * Finds the rules.
     *
     * @param device the device
     * @param start where the unit stands before the first act
     * @param acts the acts by number; moves of the same part keep this order
     */
    ActRules(Device device, State start, Map<Integer, Act> acts) {
        this.device = device;
        this.start = start;
        this.acts = Collections.unmodifiableMap(new LinkedHashMap<>(acts));
        int place = 1;
        for (Set<String> together : start.places()) {
            if (!together.contains(device.base())) {
                for (String part : together) {
                    startPlaces.put(part, place);
                }
                place++;
            }
        }
        acts.forEach(this::index);
        device.joints().values().stream().filter(Joint::gives).forEach(this::letGo);
        if (faults.isEmpty()) {
            acts.forEach(this::find);
        }
    }

    /** Returns why no order of the acts is allowed, as far as single acts tell. */
    List<String> faults() {
        return faults;
    }

    /** Returns what must come before what. */
    List<Rule> rules() {
        return rules;
    }

    /** Returns what lets parts hang together; rules for it are made as they are broken. */
    List<Hanging> hangings() {
        return hangings;
    }

    private void index(int number, Act act) {
        if (act instanceof Act.Release release) {
            Joint joint = device.joints().get(release.joint());
            if (joint == null || !joint.ways().containsKey(release.way())) {
                faults.add(act.id() + ": the device has no such joint or way");
            } else if (device.onlyLetsGo(joint)) {
                faults.add(
                        act.id()
                                + ": nothing but moving "
                                + ListText.or(device.movedToLetGo(joint))
                                + " away releases "
                                + joint.id());
            } else if (start.released().contains(joint.id())) {
                faults.add(act.id() + ": " + joint.id() + " is released from the start");
            } else if (releases.putIfAbsent(joint.id(), number) != null) {
                faults.add(act.id() + ": " + joint.id() + " is released twice");
            }
        } else if (act instanceof Act.MoveParts move) {
            for (String part : move.parts()) {
                if (!device.parts().containsKey(part) || part.equals(device.base())) {
                    faults.add(act.id() + ": " + part + " is no part that can be moved");
                } else {
                    List<Integer> all = moves.computeIfAbsent(part, p -> new ArrayList<>());
                    if (!all.isEmpty() && all.get(all.size() - 1) == number) {
                        faults.add(act.id() + ": " + part + " is named twice");
                    } else if (!all.isEmpty()) {
                        int last = all.get(all.size() - 1);
                        pair(last, number, "moves of " + part + " keep the order they were given");
                    }
                    all.add(number);
                }
            }
        } else if (!device.prepares().containsKey(((Act.Prepared) act).prepare())) {
            faults.add(act.id() + ": the device has no such prepare act");
        }
    }

    private void letGo(Joint joint) {
        List<Integer> first = new ArrayList<>();
        acts.forEach(
                (number, act) -> {
                    if (act instanceof Act.MoveParts move && joint.leadsOut(move.parts())) {
                        first.add(number);
                    }
                });
        lettingGo.put(joint.id(), first);
    }

    private void find(int number, Act act) {
        if (act instanceof Act.Release release) {
            release(number, device.joint(release.joint()), release.way());
        } else if (act instanceof Act.MoveParts move) {
            move(number, move.parts());
        } else {
            acts.forEach(
                    (other, work) -> {
                        if (!(work instanceof Act.Prepared)) {
                            pair(number, other, act.id() + " comes before all work");
                        } else if (other != number && work.equals(act)) {
                            faults.add(act.id() + " is done twice");
                        }
                    });
        }
    }

    private void release(int number, Joint joint, String way) {
        for (String cover : joint.under()) {
            apart(
                    number,
                    cover,
                    joint.site(),
                    cover + " lies over " + joint.id() + " on " + joint.site());
        }
        for (String supply : device.power().needs(joint)) {
            cut(number, joint.id(), supply);
        }
        for (String by : device.strainedBy(joint, Objects.requireNonNull(joint.ways().get(way)))) {
            if (!start.released().contains(by)) {
                rule(number, releasedBefore(by, number), by + " would strain " + joint.id());
            }
        }
        for (int move : lettingGo.getOrDefault(joint.id(), List.of())) {
            pair(number, move, joint.id() + " would let go with that move");
        }
    }

    /** Returns the pairs of which any one has a joint released before an act. */
    private List<Pair> releasedBefore(String joint, int number) {
        return releasers(device.joint(joint)).stream()
                .filter(act -> act != number)
                .map(act -> new Pair(act, number))
                .toList();
    }

    private void cut(int number, String what, String supply) {
        List<Pair> pairs = new ArrayList<>();
        for (Joint isolator : device.joints().values()) {
            if (isolator.cuts().contains(supply)) {
                if (start.released().contains(isolator.id())) {
                    return;
                }
                pairs.addAll(releasedBefore(isolator.id(), number));
            }
        }
        rule(number, pairs, what + " needs " + supply + " cut");
    }

    private void move(int number, List<String> parts) {
        for (Joint joint : device.joints().values()) {
            if (!joint.leadsOut(parts) || start.released().contains(joint.id())) {
                continue;
            }
            if (joint.gives()) {
                if (!releases.containsKey(joint.id())) {
                    device.power().needs(joint).forEach(s -> cut(number, joint.id(), s));
                }
            } else if (!joint.slack()) {
                Integer release = releases.get(joint.id());
                rule(
                        number,
                        release == null ? List.of() : List.of(new Pair(release, number)),
                        joint.id() + " holds " + String.join(" and ", joint.holds()));
            }
        }
        for (String supply : device.power().needs(parts)) {
            cut(number, String.join(" and ", parts), supply);
        }
        for (String part : parts) {
            for (String cover : device.part(part).under()) {
                if (!parts.contains(cover)) {
                    apart(number, cover, part, cover + " is in the way of " + part);
                }
            }
            if (!device.move(part).tool().equals(device.move(parts.get(0)).tool())
                    || !device.move(part).posture().equals(device.move(parts.get(0)).posture())) {
                faults.add(id(number) + ": the parts are moved with different tools or postures");
            }
        }
        if (parts.size() > 1) {
            Hanging hanging = new Hanging(device, start, this::releasers, number, parts);
            if (hanging.never()) {
                faults.add(id(number) + ": no joint holds these parts together");
            } else {
                rules.addAll(hanging.always());
                hangings.add(hanging);
            }
        }
    }

    /** Returns the acts of which the first releases a joint. */
    private List<Integer> releasers(Joint joint) {
        Integer release = releases.get(joint.id());
        return release == null ? lettingGo.getOrDefault(joint.id(), List.of()) : List.of(release);
    }

    /** Adds what keeps an act out of all stretches in which two parts lie together. */
    private void apart(int number, String one, String other, String why) {
        stretches(
                one,
                from ->
                        stretches(
                                other,
                                with -> {
                                    if (from.begin == with.begin
                                            && (from.begin != NONE || startTogether(one, other))) {
                                        outside(number, from, with, why);
                                    }
                                }));
    }

    /** A part lies where one move brought it until another takes it away. */
    private record Stretch(int begin, int end) {}

    private void stretches(String part, Consumer<Stretch> each) {
        int begin = NONE;
        for (int move : moves.getOrDefault(part, List.of())) {
            each.accept(new Stretch(begin, move));
            begin = move;
        }
        each.accept(new Stretch(begin, NONE));
    }

    private void outside(int number, Stretch one, Stretch other, String why) {
        List<Pair> pairs = new ArrayList<>();
        if (one.begin != NONE && one.begin != number) {
            pairs.add(new Pair(number, one.begin));
        }
        if (one.begin == number) {
            return; // they come together by the act itself
        }
        if (one.end != NONE && one.end != number) {
            pairs.add(new Pair(one.end, number));
        }
        if (other.end != NONE && other.end != number && other.end != one.end) {
            pairs.add(new Pair(other.end, number));
        }
        rule(number, pairs, why);
    }

    private boolean startTogether(String one, String other) {
        return Objects.equals(startPlaces.get(one), startPlaces.get(other));
    }

    private void rule(int number, List<Pair> pairs, String why) {
        if (pairs.isEmpty()) {
            faults.add(id(number) + ": " + why + ", and none of the acts changes that");
        } else {
            rules.add(new Rule(pairs, why));
        }
    }

    private void pair(int earlier, int later, String why) {
        rules.add(new Rule(List.of(new Pair(earlier, later)), why));
    }

    private String id(int number) {
        return Objects.requireNonNull(acts.get(number)).id();
    }
}
