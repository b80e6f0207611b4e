package reseat.internal.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Need;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.PlanRequest;

/** A request in numbers: the compiled device, the goal, and what the rules require. */
final class Task {

    private static final int[] NONE = {};

    final Compiled c;
    final Need need;
    final long allMet;

    /** Cost of all prepare acts, in milliseconds; paid by every plan that has an act. */
    final long prepareMs;

    private final Goal goal;
    private final long[] mustRelease;
    private final int[] targets;
    private final boolean[][] spare;
    private final List<String> requiredTools;
    private final List<Integer> requiredParts = new ArrayList<>();
    private final List<int[]> requiredMoves = new ArrayList<>();
    private final Set<List<Integer>> forbiddenMoves = new HashSet<>();

    Task(PlanRequest request) {
        Device device = request.device();
        goal = request.goal();
        Rules rules = onlyRequiredWays(device, request.rules());
        Set<String> single = new LinkedHashSet<>(rules.requiredJoints());
        if (goal instanceof Goal.Reach reach) {
            single.add(reach.joint());
        }
        c = new Compiled(device, request.start(), rules, single);
        targets =
                goal instanceof Goal.Free free
                        ? free.targets().stream().mapToInt(c::part).toArray()
                        : new int[0];
        spare = new boolean[targets.length][c.parts];
        for (int t = 0; t < targets.length; t++) {
            Part part = device.part(c.partIds[targets[t]]);
            for (String id : part.spareIncludes()) {
                spare[t][c.part(id)] = true;
            }
            spare[t][targets[t]] = true;
        }
        requiredTools = List.copyOf(rules.requiredTools());
        rules.requiredParts().forEach(id -> requiredParts.add(c.part(id)));
        for (String id : rules.requiredActs()) {
            moveOf(id).ifPresent(requiredMoves::add);
        }
        for (String id : rules.forbiddenActs()) {
            moveOf(id)
                    .ifPresent(parts -> forbiddenMoves.add(Arrays.stream(parts).boxed().toList()));
        }
        int requirements = requiredTools.size() + requiredParts.size() + requiredMoves.size();
        if (requirements > 62) {
            throw new IllegalArgumentException(
                    "at most 62 tools, parts and moves can be required, not " + requirements);
        }
        allMet = (1L << requirements) - 1;
        prepareMs =
                device.prepares().values().stream()
                        .mapToLong(prepare -> prepare.ms() + prepare.restoreMs())
                        .sum();
        mustRelease = new long[Bits.words(c.nodes)];
        need = need(rules, request.start());
    }

    /** A required release leaves its joint only that way, and requires the joint. */
    private static Rules onlyRequiredWays(Device device, Rules rules) {
        Rules narrowed = rules;
        for (String id : rules.requiredActs()) {
            for (var joint : device.joints().values()) {
                if (joint.ways().keySet().stream()
                        .anyMatch(w -> new Act.Release(joint.id(), w).id().equals(id))) {
                    narrowed =
                            narrowed.requireJoints(List.of(joint.id()))
                                    .forbidActs(
                                            joint.ways().keySet().stream()
                                                    .map(w -> new Act.Release(joint.id(), w).id())
                                                    .filter(other -> !other.equals(id))
                                                    .toList());
                }
            }
        }
        return narrowed;
    }

    private Optional<int[]> moveOf(String actId) {
        if (!actId.startsWith("move:")) {
            return Optional.empty();
        }
        return Optional.of(
                Arrays.stream(actId.substring("move:".length()).split("\\+"))
                        .mapToInt(c::part)
                        .sorted()
                        .toArray());
    }

    private Need need(Rules rules, State start) {
        Set<Integer> release = new LinkedHashSet<>();
        List<int[]> apart = new ArrayList<>();
        int reach = -1;
        if (goal instanceof Goal.Teardown) {
            for (int j = 0; j < c.nodes; j++) {
                release.add(j);
            }
            for (int p = 0; p < c.parts; p++) {
                if (p != c.base && c.startPlace[p] == c.startPlace[c.base]) {
                    apart.add(new int[] {p, c.base});
                }
            }
        } else if (goal instanceof Goal.Reach reached) {
            reach = c.node(reached.joint());
        }
        for (int t = 0; t < targets.length; t++) {
            for (int j : c.nodesOf[targets[t]]) {
                if (leadsOut(j, t)) {
                    release.add(j);
                }
            }
            for (int q = 0; q < c.parts; q++) {
                boolean mate = c.startPlace[q] == c.startPlace[targets[t]];
                if (mate
                        && !spare[t][q]
                        && (q == c.base || c.partClass[q] == c.partClass[targets[t]])) {
                    apart.add(new int[] {targets[t], q});
                }
            }
        }
        for (String joint : rules.requiredJoints()) {
            if (!start.released().contains(joint)) {
                release.add(c.node(joint));
            }
        }
        release.forEach(j -> Bits.set(mustRelease, j));
        return new Need(
                release.stream().mapToInt(Integer::intValue).toArray(),
                reach,
                apart,
                goal instanceof Goal.Teardown);
    }

    private boolean leadsOut(int node, int target) {
        for (int p : c.holds[node]) {
            if (!spare[target][p]) {
                return true;
            }
        }
        return false;
    }

    /** Returns the start; a part that lies elsewhere than the base has been moved already. */
    Position start() {
        long met = 0;
        int bit = requiredTools.size();
        for (int part : requiredParts) {
            met |= c.startPlace[part] != c.startPlace[c.base] ? 1L << bit : 0;
            bit++;
        }
        return new Position(new long[Bits.words(c.nodes)], c.startPlace, c.startClass, met);
    }

    /** Tells whether the goal holds and all requirements are met. */
    boolean reached(Position at) {
        if (at.met != allMet || !Bits.subset(mustRelease, at.released)) {
            return false;
        }
        if (need.reach() >= 0) {
            return !Bits.get(at.released, need.reach())
                    && c.options[need.reach()].length > 0
                    && available(at, need.reach());
        }
        if (need.teardown()) {
            for (int p = 0; p < c.parts; p++) {
                if (at.place[p] != p) {
                    return false;
                }
            }
            return true;
        }
        for (int t = 0; t < targets.length; t++) {
            for (int p = 0; p < c.parts; p++) {
                if (!spare[t][p] && at.place[p] == at.place[targets[t]]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Tells whether a node could be released: its covers are away and its supplies cut. */
    boolean available(Position at, int node) {
        char site = at.place[c.site[node]];
        for (int u : c.under[node]) {
            if (at.place[u] == site) {
                return false;
            }
        }
        return c.needs[node] == 0 || (c.needs[node] & ~cut(at)) == 0;
    }

    private long cut(Position at) {
        long cut = c.startCut;
        for (int j = Bits.next(at.released, 0); j >= 0; j = Bits.next(at.released, j + 1)) {
            cut |= c.cuts[j];
        }
        return cut;
    }

    boolean forbidden(int[] parts) {
        return !forbiddenMoves.isEmpty()
                && forbiddenMoves.contains(Arrays.stream(parts).boxed().toList());
    }

    boolean requiresTools() {
        return !requiredTools.isEmpty();
    }

    /** Returns the parts whose required moves are not made yet. */
    int[] toMove(long met) {
        if (met == allMet) {
            return NONE;
        }
        Set<Integer> parts = new LinkedHashSet<>();
        int bit = requiredTools.size();
        for (int part : requiredParts) {
            if ((met & (1L << bit++)) == 0) {
                parts.add(part);
            }
        }
        for (int[] move : requiredMoves) {
            if ((met & (1L << bit++)) == 0) {
                Arrays.stream(move).forEach(parts::add);
            }
        }
        return parts.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * Returns the requirements met after an act of a class that moves parts (none for a release).
     */
    long met(long before, int clazz, int[] moved) {
        if (allMet == 0) {
            return 0;
        }
        long met = before;
        int bit = 0;
        for (String tool : requiredTools) {
            met |= c.classTool[clazz].equals(tool) ? 1L << bit : 0;
            bit++;
        }
        for (int part : requiredParts) {
            met |= Arrays.stream(moved).anyMatch(p -> p == part) ? 1L << bit : 0;
            bit++;
        }
        for (int[] parts : requiredMoves) {
            met |= Arrays.equals(parts, moved) ? 1L << bit : 0;
            bit++;
        }
        return met;
    }
}
