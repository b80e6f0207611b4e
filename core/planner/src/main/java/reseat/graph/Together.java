package reseat.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/** Finds parts that can leave together, and what prevents it. */
final class Together {

    private final Net net;
    private final StepConditions steps;
    private final Compiled c;
    private final Landmarks landmarks;

    Together(Net net, StepConditions steps) {
        this.net = net;
        this.steps = steps;
        c = net.c;
        landmarks = net.landmarks;
    }

    Company company(int part) {
        List<Integer> possible = new ArrayList<>();
        List<Integer> always = new ArrayList<>();
        List<Integer> all = new ArrayList<>();
        for (int q = 0; q < c.parts; q++) {
            if (q == part) {
                all.add(q);
            } else if (!landmarks.isPinned(part) && steps.mayComeAlong(part, q)) {
                all.add(q);
                possible.add(q);
                if (net.share(part, q) && !mayStay(part, q) && !mayLeaveBefore(part, q)) {
                    always.add(q);
                }
            }
        }
        List<Tie> ties =
                ties(all).stream().filter(tie -> tie.parts().contains(c.partIds[part])).toList();
        return new Company(c.partIds[part], names(always), names(possible), ties);
    }

    /** Returns whether another part may stay behind at the first move of a part. */
    private boolean mayStay(int part, int other) {
        if (net.impossible(landmarks.needsOfLeaving(part, other))) {
            return false;
        }
        for (int j : c.nodesOf[part]) {
            if (!c.slack[j]
                    && !c.gives[j]
                    && StepConditions.others(part, c.holds[j]).contains(other)
                    && Bits.get(landmarks.needsOfRelease(j), landmarks.moveBit(part))) {
                return false;
            }
        }
        return true;
    }

    /** Returns whether another part may have left a part before that part is moved at all. */
    private boolean mayLeaveBefore(int part, int other) {
        long[] needs = landmarks.needsOfLeaving(other, part);
        return !net.impossible(needs) && !Bits.get(needs, landmarks.moveBit(part));
    }

    List<Group> groups() {
        Map<Integer, List<Integer>> byComponent = new LinkedHashMap<>();
        for (int p = 0; p < c.parts; p++) {
            if (!landmarks.isPinned(p) && !net.impossible(landmarks.needsOfMove(p))) {
                byComponent
                        .computeIfAbsent(landmarks.component(p), key -> new ArrayList<>())
                        .add(p);
            }
        }
        List<Group> groups = new ArrayList<>();
        for (List<Integer> parts : byComponent.values()) {
            if (parts.size() > 1) {
                int clazz = c.partClass[parts.get(0)];
                groups.add(
                        new Group(
                                names(parts),
                                c.classTool[clazz],
                                c.classPosture[clazz],
                                ties(parts),
                                outside(parts)));
            }
        }
        return groups;
    }

    private List<String> names(List<Integer> parts) {
        return parts.stream().map(p -> c.partIds[p]).toList();
    }

    /** What must be done before parts can move as one. */
    long[] needsOfGroup(List<Integer> parts) {
        long[] needs = new long[landmarks.words()];
        for (int p : parts) {
            if (landmarks.isPinned(p)) {
                Bits.addAll(needs, landmarks.needsOfMove(p));
            }
        }
        int first = parts.get(0);
        for (int p : parts) {
            if (landmarks.component(p) != landmarks.component(first)) {
                Bits.addAll(needs, landmarks.needsOfLeaving(p, p));
            }
        }
        for (Fact fact : outside(parts)) {
            if (fact instanceof Fact.Released released) {
                Bits.addAll(needs, net.needs(c.node(released.joints().get(0))));
            } else if (fact instanceof Fact.Apart apart) {
                Bits.addAll(needs, net.needsOfApart(c.part(apart.part()), c.part(apart.other())));
            } else {
                Bits.addAll(needs, net.needsOfCut(steps.isolators(((Fact.Cut) fact).supply())));
            }
        }
        return needs;
    }

    /** What prevents parts from moving as one: rigid joints that lead out, covers that stay. */
    List<Fact> outside(List<Integer> parts) {
        List<Fact> facts = new ArrayList<>();
        for (int j = 0; j < c.nodes; j++) {
            boolean in = Arrays.stream(c.holds[j]).anyMatch(parts::contains);
            if (!in || c.slack[j] || Arrays.stream(c.holds[j]).allMatch(parts::contains)) {
                continue;
            }
            if (c.gives[j] && !landmarks.isExcluded(j)) {
                steps.live(j).forEach(supply -> facts.add(new Fact.Cut(supply)));
            } else {
                facts.add(net.released(j));
            }
        }
        long needs = c.moving.needs(parts.stream().mapToInt(Integer::intValue).toArray());
        steps.live(needs).forEach(supply -> facts.add(new Fact.Cut(supply)));
        for (int p : parts) {
            for (int u : c.partUnder[p]) {
                if (!parts.contains(u) && net.share(u, p)) {
                    facts.add(net.apart(u, p));
                }
            }
        }
        return facts;
    }

    /** What ties parts to each other. */
    List<Tie> ties(List<Integer> parts) {
        Map<Tie, List<String>> joints = new LinkedHashMap<>();
        for (int j = 0; j < c.nodes; j++) {
            if (Arrays.stream(c.holds[j]).allMatch(parts::contains)) {
                List<String> held = Arrays.stream(c.holds[j]).mapToObj(p -> c.partIds[p]).toList();
                Tie.Kind kind =
                        c.gives[j] ? Tie.Kind.GIVES : c.slack[j] ? Tie.Kind.SLACK : Tie.Kind.RIGID;
                joints.computeIfAbsent(new Tie(held, kind, List.of()), key -> new ArrayList<>())
                        .addAll(List.of(c.members[j]));
            }
        }
        List<Tie> ties = new ArrayList<>();
        joints.forEach((tie, ids) -> ties.add(new Tie(tie.parts(), tie.kind(), ids)));
        for (int p : parts) {
            for (int u : c.partUnder[p]) {
                if (parts.contains(u) && u != p && net.share(u, p)) {
                    ties.add(
                            new Tie(
                                    List.of(c.partIds[u], c.partIds[p]),
                                    Tie.Kind.COVER,
                                    List.of()));
                }
            }
        }
        return ties;
    }
}
