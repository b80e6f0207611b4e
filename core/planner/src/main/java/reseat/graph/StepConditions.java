package reseat.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.model.Joint;
import reseat.model.Way;

/** The steps of a graph: which reach a fact, and what each needs. */
final class StepConditions {

    private final Net net;
    private final Compiled c;
    private final Landmarks landmarks;

    StepConditions(Net net) {
        this.net = net;
        c = net.c;
        landmarks = net.landmarks;
    }

    /** What a node needs to be released by whichever way. */
    List<Condition> conditionsOfRelease(int node) {
        List<Condition> conditions = covers(node);
        Compiled.Option[] options = c.options[node];
        for (int j = 0; j < c.nodes; j++) {
            int by = j;
            if (options.length > 0
                    && Arrays.stream(options).allMatch(option -> strains(by, option))) {
                conditions.add(new Condition(net.released(j), List.of()));
            }
        }
        return conditions;
    }

    /** What some way to release a node needs, all ways together. */
    List<Condition> conditionsOfWays(int node) {
        List<Condition> conditions = covers(node);
        for (int j = 0; j < c.nodes; j++) {
            int by = j;
            if (Arrays.stream(c.options[node]).anyMatch(option -> strains(by, option))) {
                conditions.add(new Condition(net.released(j), List.of()));
            }
        }
        return conditions;
    }

    private static boolean strains(int node, Compiled.Option option) {
        return Arrays.stream(option.strain()).anyMatch(by -> by == node);
    }

    private List<Condition> covers(int node) {
        List<Condition> conditions = new ArrayList<>();
        for (int u : c.under[node]) {
            if (net.share(u, c.site[node])) {
                conditions.add(new Condition(net.apart(u, c.site[node]), List.of()));
            }
        }
        for (String supply : live(node)) {
            conditions.add(new Condition(new Fact.Cut(supply), List.of()));
        }
        return conditions;
    }

    /** The supplies that a node waits for at the start. */
    List<String> live(int node) {
        return live(c.needs[node]);
    }

    /** The supplies that the move of a part waits for at the start, whatever goes along. */
    List<String> liveOfMove(int part) {
        return live(landmarks.supplies(part));
    }

    /** Those of some supplies that are not cut at the start. */
    List<String> live(long mask) {
        List<String> supplies = List.copyOf(net.question.device.supplies().keySet());
        List<String> live = new ArrayList<>();
        for (int s = 0; s < supplies.size(); s++) {
            if (((mask & ~c.startCut) >> s & 1) != 0) {
                live.add(supplies.get(s));
            }
        }
        return live;
    }

    /**
     * What a part needs to go.
     *
     * @param without a part that stays behind, or -1
     */
    List<Condition> conditionsOfGoing(int part, int without) {
        List<Condition> conditions = new ArrayList<>();
        for (int j : c.nodesOf[part]) {
            if (!c.slack[j]) {
                List<String> along = along(part, others(part, c.holds[j]), without);
                if (!c.gives[j] || landmarks.isExcluded(j)) {
                    conditions.add(new Condition(net.released(j), along));
                } else {
                    live(j).forEach(s -> conditions.add(new Condition(new Fact.Cut(s), along)));
                }
            }
        }
        liveOfMove(part).forEach(s -> conditions.add(new Condition(new Fact.Cut(s), List.of())));
        for (int u : c.partUnder[part]) {
            if (u != part && net.share(u, part)) {
                conditions.add(new Condition(net.apart(u, part), along(part, List.of(u), without)));
            }
        }
        return conditions;
    }

    static List<Integer> others(int part, int[] parts) {
        return Arrays.stream(parts).filter(p -> p != part).distinct().boxed().toList();
    }

    boolean covers(int cover, int part) {
        return Arrays.stream(c.partUnder[part]).anyMatch(u -> u == cover);
    }

    /** Returns whether one move may ever take a part along with another. */
    boolean mayComeAlong(int part, int other) {
        return !landmarks.isPinned(other)
                && landmarks.component(other) == landmarks.component(part)
                && !net.impossible(landmarks.needsOfMove(other));
    }

    private List<String> along(int part, List<Integer> others, int without) {
        boolean may =
                !others.contains(without)
                        && others.stream().allMatch(other -> mayComeAlong(part, other));
        return may ? others.stream().map(p -> c.partIds[p]).toList() : List.of();
    }

    /** The steps that reach a fact; none if it holds at the start. */
    List<Step> steps(Fact fact) {
        List<Step> steps = new ArrayList<>();
        if (fact instanceof Fact.Released released) {
            int node = c.node(released.joints().get(0));
            if (node >= 0) {
                steps.addAll(releases(node));
            }
        } else if (fact instanceof Fact.Apart apart) {
            int part = c.part(apart.part());
            int other = c.part(apart.other());
            if (net.share(part, other)) {
                steps.add(going(part, other));
                steps.add(going(other, part));
                steps.removeIf(step -> c.base == c.part(((Step.Going) step).part()));
            }
        } else if (fact instanceof Fact.Cut cut) {
            for (int node : isolators(cut.supply())) {
                steps.addAll(releases(node));
            }
        }
        return steps;
    }

    /** The nodes whose release cuts a supply that is not cut at the start. */
    List<Integer> isolators(String supply) {
        List<Integer> isolators = new ArrayList<>();
        int bit = List.copyOf(net.question.device.supplies().keySet()).indexOf(supply);
        if ((c.startCut >> bit & 1) != 0) {
            return isolators;
        }
        for (int j = 0; j < c.nodes; j++) {
            if ((c.cuts[j] >> bit & 1) != 0) {
                isolators.add(j);
            }
        }
        return isolators;
    }

    /** The ways of a node and, if it gives, the moves that release it. */
    private List<Step> releases(int node) {
        List<Step> steps = ways(node);
        if (c.gives[node] && !landmarks.isExcluded(node)) {
            for (int part : c.holds[node]) {
                for (int other : c.holds[node]) {
                    if (part != other && part != c.base && net.share(part, other)) {
                        steps.add(going(part, other));
                    }
                }
            }
        }
        return steps;
    }

    private List<Step> ways(int node) {
        List<Step> steps = new ArrayList<>();
        Joint joint = net.question.device.joint(c.members[node][0]);
        boolean never = net.impossible(landmarks.needsOfRelease(node));
        for (Way way : joint.ways().values()) {
            if (Compiled.allowed(net.question.device, joint, way, net.question.rules)) {
                steps.add(
                        new Step.ByWay(
                                List.of(c.members[node]),
                                way.id(),
                                way.tool(),
                                way.posture(),
                                c.members[node].length * (way.ms() + way.restoreMs()),
                                conditionsOf(node, way),
                                never ? Step.Standing.NEVER : Step.Standing.OPEN));
            }
        }
        return steps;
    }

    private List<Condition> conditionsOf(int node, Way way) {
        List<Condition> conditions = covers(node);
        Joint joint = net.question.device.joint(c.members[node][0]);
        net.question.device.strainedBy(joint, way).stream()
                .map(c::node)
                .filter(by -> by >= 0)
                .distinct()
                .forEach(by -> conditions.add(new Condition(net.released(by), List.of())));
        return conditions;
    }

    /** The step that takes a part away, whatever it leaves behind. */
    Step.Going going(int part) {
        Step.Standing standing =
                net.impossible(landmarks.needsOfMove(part))
                        ? Step.Standing.NEVER
                        : Step.Standing.OPEN;
        return going(part, Optional.empty(), conditionsOfGoing(part, -1), standing);
    }

    /** The step that takes a part away from another. */
    Step.Going going(int part, int without) {
        long[] needs = landmarks.needsOfLeaving(part, without);
        Step.Standing standing = Step.Standing.OPEN;
        if (net.impossible(needs)) {
            standing = Step.Standing.NEVER;
        } else if (Bits.get(needs, landmarks.moveBit(without))) {
            standing = Step.Standing.POINTLESS;
        }
        return going(
                part, Optional.of(c.partIds[without]), conditionsOfGoing(part, without), standing);
    }

    private Step.Going going(
            int part,
            Optional<String> without,
            List<Condition> conditions,
            Step.Standing standing) {
        int clazz = c.partClass[part];
        return new Step.Going(
                c.partIds[part],
                without,
                c.classTool[clazz],
                c.classPosture[clazz],
                conditions,
                standing);
    }
}
