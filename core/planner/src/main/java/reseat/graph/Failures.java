package reseat.graph;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Compiled;
import reseat.model.Device;
import reseat.model.Joint;

/**
 * Finds for everything that cannot be reached the nearest cause: a rank that grows with the
 * distance from what the rules or the device forbid outright. What has no rank waits for itself, in
 * a cycle.
 */
final class Failures {

    private static final int RING = Integer.MAX_VALUE;

    private final Net net;
    private final StepConditions steps;
    private final Compiled c;
    private final List<Fact> facts;
    private final Map<Fact, Integer> rank = new HashMap<>();
    private final Map<Integer, Integer> partRank = new HashMap<>();
    private final Map<Integer, Condition> partCause = new HashMap<>();

    Failures(StepGraph graph) {
        net = graph.net;
        steps = graph.steps;
        c = net.c;
        facts = new FactList(graph).every().stream().filter(this::fails).toList();
        boolean changed = true;
        while (changed) {
            changed = rankParts(false);
            changed |= rankFacts();
        }
        do {
            changed = rankParts(true);
        } while (changed);
    }

    boolean fails(Fact fact) {
        if (fact instanceof Fact.Released released) {
            int node = c.node(released.joints().get(0));
            return node >= 0 && net.impossible(net.landmarks.needsOfRelease(node));
        }
        if (fact instanceof Fact.Apart apart) {
            return net.impossible(net.needsOfApart(c.part(apart.part()), c.part(apart.other())));
        }
        return net.impossible(net.needsOfCut(steps.isolators(((Fact.Cut) fact).supply())));
    }

    boolean partFails(int part) {
        return net.impossible(net.landmarks.needsOfMove(part));
    }

    int rank(Fact fact) {
        return rank.getOrDefault(fact, RING);
    }

    int partRank(int part) {
        return partRank.getOrDefault(part, RING);
    }

    /** The condition that keeps a part from being moved; empty if it must not be moved at all. */
    Optional<Condition> cause(int part) {
        return Optional.ofNullable(partCause.get(part));
    }

    /** The condition nearest to a cause among those that fail. */
    Optional<Condition> nearest(List<Condition> conditions) {
        Condition best = null;
        for (Condition condition : conditions) {
            if (fails(condition.fact())
                    && (best == null || rank(condition.fact()) < rank(best.fact()))) {
                best = condition;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The unreleased joints without play between two parts that cannot be released. */
    List<Condition> between(int part, int other) {
        return steps.conditionsOfGoing(part, other).stream()
                .filter(
                        condition ->
                                condition.fact() instanceof Fact.Released released
                                        && net.question
                                                .device
                                                .joint(released.joints().get(0))
                                                .holds()
                                                .contains(c.partIds[other])
                                        && fails(released))
                .toList();
    }

    /** The parts beyond a condition of going, which would have to come along. */
    List<Integer> beyond(int part, Condition condition) {
        if (condition.fact() instanceof Fact.Released released) {
            return StepConditions.others(part, c.holds[c.node(released.joints().get(0))]);
        }
        return condition.fact() instanceof Fact.Apart apart
                ? List.of(c.part(apart.part()))
                : List.of();
    }

    /**
     * Returns whether no way of a joint is left, it must not let go where nothing else releases it,
     * or it must stay connected.
     */
    boolean shut(int node) {
        if (node == net.question.need.reach() || onlyLetsGo(node)) {
            return node == net.question.need.reach() || !c.gives[node];
        }
        Device device = net.question.device;
        Joint joint = device.joint(c.members[node][0]);
        return joint.ways().values().stream()
                .noneMatch(way -> Compiled.allowed(device, joint, way, net.question.rules));
    }

    boolean onlyLetsGo(int node) {
        return net.question.device.onlyLetsGo(net.question.device.joint(c.members[node][0]));
    }

    private boolean rankFacts() {
        boolean changed = false;
        for (Fact fact : facts) {
            if (!rank.containsKey(fact)) {
                Integer found = find(fact);
                if (found != null) {
                    rank.put(fact, found + 1);
                    changed = true;
                }
            }
        }
        return changed;
    }

    private @Nullable Integer find(Fact fact) {
        if (fact instanceof Fact.Released released) {
            int node = c.node(released.joints().get(0));
            if (shut(node)) {
                return 0;
            }
            return onlyLetsGo(node) ? leastOfParts(node) : least(steps.conditionsOfWays(node));
        }
        if (fact instanceof Fact.Cut cut) {
            int most = 0;
            for (int node : steps.isolators(cut.supply())) {
                Integer own = rank.get(net.released(node));
                if (own == null) {
                    return null;
                }
                most = Math.max(most, own);
            }
            return most;
        }
        Fact.Apart apart = (Fact.Apart) fact;
        Integer one = side(c.part(apart.part()), c.part(apart.other()));
        Integer two = side(c.part(apart.other()), c.part(apart.part()));
        return one == null || two == null ? null : Integer.valueOf(Math.max(one, two));
    }

    private @Nullable Integer side(int part, int other) {
        if (net.landmarks.isPinned(part) || steps.covers(other, part)) {
            return 0;
        }
        Integer joint = least(between(part, other));
        Integer own = partRank.get(part);
        if (joint == null || own == null) {
            return joint == null ? own : joint;
        }
        return Math.min(joint, own);
    }

    private @Nullable Integer least(List<Condition> conditions) {
        return nearest(conditions).map(condition -> rank.get(condition.fact())).orElse(null);
    }

    private @Nullable Integer leastOfParts(int node) {
        Integer least = null;
        for (int part : c.holds[node]) {
            Integer own = partRank.get(part);
            if (part != c.base && own != null && (least == null || own < least)) {
                least = own;
            }
        }
        return least;
    }

    private boolean rankParts(boolean rings) {
        boolean changed = false;
        for (int p = 0; p < c.parts; p++) {
            if (!partFails(p) || partRank.containsKey(p)) {
                continue;
            }
            if (net.landmarks.isPinned(p)) {
                partRank.put(p, 0);
                changed = true;
                continue;
            }
            for (Condition condition : steps.conditionsOfGoing(p, -1)) {
                boolean ready =
                        rings ? fails(condition.fact()) : rank.containsKey(condition.fact());
                if (ready && noneComes(p, condition)) {
                    partRank.put(p, rings ? RING : rank(condition.fact()) + 1);
                    partCause.put(p, condition);
                    changed = true;
                    break;
                }
            }
        }
        return changed;
    }

    private boolean noneComes(int part, Condition condition) {
        return condition.orAlong().isEmpty()
                && (condition.fact() instanceof Fact.Cut || noneOf(part, condition));
    }

    private boolean noneOf(int part, Condition condition) {
        return beyond(part, condition).stream()
                .anyMatch(
                        other ->
                                net.landmarks.isPinned(other)
                                        || net.landmarks.component(other)
                                                != net.landmarks.component(part)
                                        || partRank.containsKey(other));
    }
}
