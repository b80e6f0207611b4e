package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.graph.Need;
import reseat.internal.graph.Question;
import reseat.model.Rules;
import reseat.plan.PlanRequest;

/** A request in numbers: the compiled device, the goal, and what the rules require. */
final class Task {

    private static final int[] NONE = {};
    private static final int LARGE = 120;

    final Compiled c;
    final Need need;
    final long allMet;

    private final Question question;
    private final long[] mustRelease;
    private final List<String> requiredTools;
    private final List<Integer> requiredParts = new ArrayList<>();
    private final List<int[]> requiredMoves = new ArrayList<>();
    private final Set<List<Integer>> forbiddenMoves = new HashSet<>();

    Task(PlanRequest request) {
        this(request, false);
    }

    /**
     * Compiles a request.
     *
     * @param outside whether only plans count whose acts can be done with the device closed
     */
    Task(PlanRequest request, boolean outside) {
        Rules rules = request.rules();
        question =
                new Question(
                        request.device(),
                        request.start(),
                        Optional.of(request.goal()),
                        rules,
                        outside);
        c = question.c;
        need = question.need;
        requiredTools = List.copyOf(rules.requiredTools());
        rules.requiredParts().forEach(id -> requiredParts.add(c.part(id)));
        for (String id : rules.requiredActs()) {
            question.moveOf(id).ifPresent(requiredMoves::add);
        }
        for (String id : rules.forbiddenActs()) {
            question.moveOf(id)
                    .ifPresent(parts -> forbiddenMoves.add(Arrays.stream(parts).boxed().toList()));
        }
        int requirements = requiredTools.size() + requiredParts.size() + requiredMoves.size();
        if (requirements > 62) {
            throw new IllegalArgumentException(
                    "at most 62 tools, parts and moves can be required, not " + requirements);
        }
        allMet = (1L << requirements) - 1;
        mustRelease = new long[Bits.words(c.nodes)];
        for (int j : need.released()) {
            Bits.set(mustRelease, j);
        }
    }

    /** Returns whether a beam would take longer than the best of drafts. */
    boolean isLarge() {
        return c.nodes + c.parts > LARGE;
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

    /** Returns whether the goal holds and all requirements are met. */
    boolean reached(Position at) {
        if (at.met != allMet || !Bits.subset(mustRelease, at.released)) {
            return false;
        }
        if (need.reach() >= 0) {
            return !Bits.get(at.released, need.reach())
                    && available(at, need.reach())
                    && Arrays.stream(c.options[need.reach()])
                            .anyMatch(option -> c.unstrained(option, at.released));
        }
        if (need.teardown()) {
            for (int p = 0; p < c.parts; p++) {
                if (at.place[p] != p) {
                    return false;
                }
            }
            return true;
        }
        int[] targets = question.targets;
        for (int t = 0; t < targets.length; t++) {
            for (int p = 0; p < c.parts; p++) {
                if (!question.mayStayOn(t, p) && at.place[p] == at.place[targets[t]]) {
                    return false;
                }
            }
        }
        return true;
    }

    /**
     * Returns whether a node may be released by a way that nothing strains: its covers are away,
     * its supplies cut, and no required move becomes impossible.
     */
    boolean available(Position at, int node) {
        char site = at.place[c.site[node]];
        for (int u : c.under[node]) {
            if (at.place[u] == site) {
                return false;
            }
        }
        return (c.needs[node] == 0 || (c.needs[node] & ~c.cut(at.released)) == 0)
                && !breaks(at, node);
    }

    /**
     * Returns whether parts that nothing else keeps may be moved together as far as power goes: the
     * supplies that the move needs are cut, and those of the nodes that it makes let go.
     */
    boolean unpowered(Position at, int[] parts) {
        long needs = c.moving.needs(parts);
        for (int j : c.moving.given(parts, at.released)) {
            needs |= c.needs[j];
        }
        return needs == 0 || (needs & ~c.cut(at.released)) == 0;
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

    /** Returns the required moves that are not made yet. */
    List<int[]> asOne(long met) {
        if (met == allMet || requiredMoves.isEmpty()) {
            return List.of();
        }
        int bit = requiredTools.size() + requiredParts.size();
        List<int[]> open = new ArrayList<>();
        for (int[] move : requiredMoves) {
            if ((met & (1L << bit++)) == 0) {
                open.add(move);
            }
        }
        return open;
    }

    /** Returns whether the release of a node would make a required move impossible. */
    private boolean breaks(Position at, int node) {
        for (int[] move : asOne(at.met)) {
            if (Landmarks.breaks(c, move, at.released, node)) {
                return true;
            }
        }
        return false;
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
