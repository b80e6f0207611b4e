package reseat.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Question;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.State;

/**
 * The step graph of a device from a start: what must come before what. It is computed from the
 * facts; no order is authored.
 *
 * <p>Facts once reached are assumed to stay reached, and steps are considered one by one, so the
 * graph is a relaxation: what it calls needed is needed by every valid plan, and what it calls
 * impossible is impossible; but not everything that it allows is possible. Acts that the rules
 * forbid are left out, except for moves of certain parts together. Immutable; safe to share between
 * threads.
 */
public final class StepGraph {

    final Net net;
    final StepConditions steps;
    private final Compiled c;

    private StepGraph(Question question) {
        net = new Net(question);
        steps = new StepConditions(net);
        c = net.c;
    }

    /**
     * Computes the graph of everything.
     *
     * @param device the device; at most 64 supplies
     * @param start the state of the unit; names only parts and joints of the device
     * @param rules what is forbidden, required and permitted; names only what the device has
     */
    public static StepGraph of(Device device, State start, Rules rules) {
        return new StepGraph(new Question(device, start, Optional.empty(), rules));
    }

    /** Computes the graph for a goal: the joint to be reached then stays connected. */
    public StepGraph towards(Goal goal) {
        return new StepGraph(
                new Question(device(), net.question.start, Optional.of(goal), net.question.rules));
    }

    public Device device() {
        return net.question.device;
    }

    /** Returns the goal; empty for the graph of everything. */
    public Optional<Goal> goal() {
        return net.question.goal;
    }

    /** Returns the joints that are not released at the start; those that are alike together. */
    public List<List<String>> joints() {
        return Arrays.stream(c.members).map(List::of).toList();
    }

    /** Returns the parts place by place, as they lie at the start. */
    public List<List<String>> places() {
        Map<Character, List<String>> places = new LinkedHashMap<>();
        for (int p = 0; p < c.parts; p++) {
            places.computeIfAbsent(c.startPlace[p], place -> new ArrayList<>()).add(c.partIds[p]);
        }
        return places.values().stream().map(List::copyOf).toList();
    }

    /**
     * Returns the facts that do not hold at the start: those that the goal depends on, or all that
     * anything depends on; joints first, then parts, then supplies.
     */
    public List<Fact> facts() {
        return new FactList(this).all();
    }

    /** Returns what must hold at the end and does not hold at the start. */
    public List<Fact> goalFacts() {
        Set<Fact> facts = new LinkedHashSet<>();
        for (int j : net.question.need.released()) {
            facts.add(net.released(j));
        }
        if (net.question.need.reach() >= 0) {
            steps.conditionsOfRelease(net.question.need.reach())
                    .forEach(condition -> facts.add(condition.fact()));
        }
        for (int[] pair : net.question.need.apart()) {
            facts.add(net.apart(pair[0], pair[1]));
        }
        for (int p : net.question.toMove()) {
            if (net.share(p, c.base)) {
                facts.add(net.apart(p, c.base));
            }
        }
        return List.copyOf(facts);
    }

    /**
     * Returns the steps of which any one reaches a fact.
     *
     * @return none if it holds at the start, or if nothing reaches it
     * @throws IllegalArgumentException if the fact names something that the device does not have
     */
    public List<Step> alternatives(Fact fact) {
        if (fact instanceof Fact.Released released) {
            released.joints().forEach(device()::joint);
        }
        return steps.steps(fact);
    }

    /**
     * Returns the step by which a part goes, whatever it leaves behind.
     *
     * @return empty if it stays whatever happens
     * @throws IllegalArgumentException if there is no such part
     */
    public Optional<Step.Going> going(String part) {
        int p = c.part(part);
        return net.landmarks.isPinned(p) ? Optional.empty() : Optional.of(steps.going(p));
    }

    /** The steps that serve; of the parts that may go, those that do not go too late. */
    List<Step> open(Fact fact) {
        return steps.steps(fact).stream()
                .filter(step -> step.standing() == Step.Standing.OPEN)
                .toList();
    }

    /**
     * Returns what every plan must do before a joint is released or a part is moved.
     *
     * @param jointOrPart id of a joint or of a part
     * @return nothing for a joint that is released at the start
     * @throws IllegalArgumentException if the device has no such joint or part
     */
    public Before mustComeBefore(String jointOrPart) {
        int bit = bit(jointOrPart);
        if (bit < 0) {
            return new Before(true, List.of(), List.of());
        }
        return net.before(net.needs(bit), bit);
    }

    /**
     * Returns what every plan must do before an act: for a release by one of its ways, or for the
     * move of certain parts as one.
     *
     * @throws IllegalArgumentException if it names something that the device does not have
     */
    public Before mustComeBefore(Act act) {
        if (act instanceof Act.Release release) {
            Joint joint = device().joint(release.joint());
            boolean allowed =
                    Optional.ofNullable(joint.ways().get(release.way()))
                            .map(way -> Compiled.allowed(device(), joint, way, net.question.rules))
                            .orElseThrow(
                                    () ->
                                            new IllegalArgumentException(
                                                    release.joint()
                                                            + " has no way "
                                                            + release.way()));
            return allowed
                    ? mustComeBefore(release.joint())
                    : new Before(false, List.of(), List.of());
        }
        if (act instanceof Act.MoveParts move) {
            return net.before(
                    new Together(net, steps)
                            .needsOfGroup(move.parts().stream().map(c::part).toList()),
                    -1);
        }
        return new Before(true, List.of(), List.of());
    }

    /** Returns what every plan must do for a fact to hold, including what makes it hold. */
    public Before mustComeBefore(Fact fact) {
        long[] needs;
        if (fact instanceof Fact.Apart apart) {
            needs = net.needsOfApart(c.part(apart.part()), c.part(apart.other()));
        } else if (fact instanceof Fact.Released released) {
            int node = c.node(released.joints().get(0));
            needs = node < 0 ? new long[net.landmarks.words()] : net.needs(node);
        } else {
            needs = net.needsOfCut(steps.isolators(((Fact.Cut) fact).supply()));
        }
        return net.before(needs, -1);
    }

    /**
     * Returns what every way must have done for a step to be taken, what the step does included.
     *
     * @param step a step of this graph
     */
    public Before mustComeBefore(Step step) {
        if (step instanceof Step.ByWay way) {
            return mustComeBefore(new Fact.Released(way.joints()));
        }
        Step.Going going = (Step.Going) step;
        int part = c.part(going.part());
        long[] needs =
                going.without()
                        .map(stays -> net.landmarks.needsOfLeaving(part, c.part(stays)))
                        .orElseGet(() -> net.needs(net.landmarks.moveBit(part)));
        return net.before(needs, -1);
    }

    /**
     * Returns what the release of a joint or the first move of a part makes possible.
     *
     * @param jointOrPart id of a joint or of a part
     * @throws IllegalArgumentException if the device has no such joint or part
     */
    public Opens frees(String jointOrPart) {
        int bit = bit(jointOrPart);
        if (bit < 0) {
            return new Opens(List.of(), List.of(), List.of(), List.of(), List.of());
        }
        return new Opening(net, steps).of(bit);
    }

    /**
     * Returns the parts with which a part leaves.
     *
     * @throws IllegalArgumentException if there is no such part
     */
    public Company leavesWith(String part) {
        return new Together(net, steps).company(c.part(part));
    }

    /** Returns the largest sets of parts that one move could take, of two parts or more. */
    public List<Group> groups() {
        return new Together(net, steps).groups();
    }

    /** Returns what every way to a goal needs, and in which order it must come. */
    public Needed neededFor(Goal other) {
        return towards(other).needed();
    }

    /** Returns what every way to the goal needs; nothing if there is none. */
    public Needed needed() {
        if (net.impossible(net.goalNeeds)) {
            return new Needed(false, List.of(), Map.of());
        }
        List<Integer> bits = net.ordered(net.goalNeeds);
        Map<Work, List<Work>> justBefore = new LinkedHashMap<>();
        for (int bit : bits) {
            List<Integer> before =
                    bits.stream().filter(b -> b != bit && Bits.get(net.needs(bit), b)).toList();
            justBefore.put(net.work(bit), net.latest(before).stream().map(net::work).toList());
        }
        return new Needed(true, bits.stream().map(net::work).toList(), justBefore);
    }

    /**
     * Explains why a goal cannot be reached.
     *
     * @return empty if no single obstacle exists; the goal may still be impossible
     */
    public Optional<Blocked> blocked(Goal other) {
        return new Obstacles(towards(other)).explain();
    }

    /** The bit of a joint or part; -1 for a joint released at the start. */
    private int bit(String jointOrPart) {
        if (device().joints().containsKey(jointOrPart)) {
            return c.node(jointOrPart);
        }
        if (device().parts().containsKey(jointOrPart)) {
            return net.landmarks.moveBit(c.part(jointOrPart));
        }
        throw new IllegalArgumentException(
                device().id() + " has neither a joint nor a part " + jointOrPart);
    }
}
