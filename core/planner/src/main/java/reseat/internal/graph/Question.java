package reseat.internal.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.model.State;

/** A question about a device, in numbers: the compiled facts, and what has to hold at the end. */
public final class Question {

    public final Device device;
    public final State start;
    public final Optional<Goal> goal;

    /** The rules, where a required release forbids its joint's other ways. */
    public final Rules rules;

    public final Compiled c;
    public final Need need;

    /** The targets of a goal that frees parts. */
    public final int[] targets;

    private final boolean[][] spare;

    /**
     * Compiles a question.
     *
     * @param start where the unit stands
     * @param goal what to achieve; empty if only the requirements of the rules count
     * @param rules what is forbidden, required and permitted
     */
    public Question(Device device, State start, Optional<Goal> goal, Rules rules) {
        this(device, start, goal, rules, false);
    }

    /**
     * Compiles a question.
     *
     * @param outside whether only acts count that can be done with the device closed
     */
    public Question(Device device, State start, Optional<Goal> goal, Rules rules, boolean outside) {
        this.device = device;
        this.start = start;
        this.goal = goal;
        this.rules = onlyRequiredWays(device, rules);
        Set<String> single = new LinkedHashSet<>(this.rules.requiredJoints());
        goal.ifPresent(
                asked -> {
                    if (asked instanceof Goal.Reach reach) {
                        single.add(reach.joint());
                    }
                });
        // the joint to be reached is not released, so that it may lie inside
        Predicate<Act> may =
                act ->
                        !outside
                                || device.power().isOutside(act)
                                || (act instanceof Act.Release release
                                        && goal.equals(
                                                Optional.of(new Goal.Reach(release.joint()))));
        c = new Compiled(device, start, this.rules, single, may);
        targets =
                goal.orElse(null) instanceof Goal.Free free
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
        need = need();
    }

    /**
     * Returns whether a part may stay on the target with an index: it is a target or part of its
     * spare unit.
     */
    public boolean mayStayOn(int target, int part) {
        return spare[target][part];
    }

    /** Returns the parts of a move by its act id; empty if the act is not a move. */
    public Optional<int[]> moveOf(String actId) {
        return Act.parse(actId) instanceof Act.MoveParts move
                ? Optional.of(move.parts().stream().mapToInt(c::part).sorted().toArray())
                : Optional.empty();
    }

    /** Returns the parts that the rules require to be moved and that are not moved at the start. */
    public int[] toMove() {
        Set<Integer> parts = new LinkedHashSet<>();
        for (String id : rules.requiredParts()) {
            int part = c.part(id);
            if (c.startPlace[part] == c.startPlace[c.base]) {
                parts.add(part);
            }
        }
        for (String id : rules.requiredActs()) {
            moveOf(id).ifPresent(move -> Arrays.stream(move).forEach(parts::add));
        }
        return parts.stream().mapToInt(Integer::intValue).toArray();
    }

    /** A required release leaves its joint only this way, and requires the joint. */
    private static Rules onlyRequiredWays(Device device, Rules rules) {
        Rules narrowed = rules;
        for (String id : rules.requiredActs()) {
            for (Joint joint : device.joints().values()) {
                List<String> acts =
                        joint.ways().keySet().stream()
                                .map(way -> new Act.Release(joint.id(), way).id())
                                .toList();
                if (acts.contains(id)) {
                    narrowed =
                            narrowed.requireJoints(List.of(joint.id()))
                                    .forbidActs(
                                            acts.stream()
                                                    .filter(other -> !other.equals(id))
                                                    .toList());
                }
            }
        }
        return narrowed;
    }

    private Need need() {
        Set<Integer> release = new LinkedHashSet<>();
        List<int[]> apart = new ArrayList<>();
        int reach = -1;
        boolean teardown = goal.orElse(null) instanceof Goal.Teardown;
        if (teardown) {
            IntStream.range(0, c.nodes).forEach(release::add);
            for (int p = 0; p < c.parts; p++) {
                if (p != c.base && c.startPlace[p] == c.startPlace[c.base]) {
                    apart.add(new int[] {p, c.base});
                }
            }
        } else if (goal.orElse(null) instanceof Goal.Reach reached) {
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
        return new Need(
                release.stream().mapToInt(Integer::intValue).toArray(), reach, apart, teardown);
    }

    private boolean leadsOut(int node, int target) {
        for (int p : c.holds[node]) {
            if (!spare[target][p]) {
                return true;
            }
        }
        return false;
    }
}
