package reseat.internal.files;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Part;

/**
 * Finds what is certainly impossible: joints that no plan releases, parts that no plan moves, pairs
 * that no plan separates.
 *
 * <p>It uses a relaxed model, in which more is possible than on the real device. What was possible
 * once stays possible, and each condition of an act counts as met if it can be met at some time,
 * whether or not together with the others:
 *
 * <ul>
 *   <li>joint j can be released if each part of {@code under(j)} can be separated from j's site,
 *       each supply it needs is cut by a joint that can be released, and all joints that strain one
 *       of its ways can be released; a joint that gives, also if two of its parts can be separated
 *       and each supply it needs is cut;
 *   <li>parts u and s can be separated if a group with one of them and without the other can be
 *       moved. Every group with u contains the <em>train</em> of u: the least set with u that takes
 *       along, for each of its members, the other parts of each rigid joint that cannot be released
 *       (one that gives is rigid while a supply that it needs cannot be cut) and each cover that
 *       cannot be separated from it. So no group can be moved if the train contains the base, or
 *       differs in tool or posture, or can never hang together, or if one of its members states that
 *       it needs a supply cut that cannot be.
 * </ul>
 *
 * <p>Starting from nothing, both sets grow until they no longer change. By induction over the acts
 * of any valid plan, whatever the plan does is in them; so what is not in them is in no plan, and a
 * device that can be torn down fully is never refused. The converse does not hold: a ring of covers
 * may pass here and still defeat every plan; only a search, the planner's, decides that.
 *
 * <p>Time O(r · (j · h + p² · w)) for p parts in w machine words, j joints of up to h parts and r
 * rounds; a round adds a joint or a pair, and in practice a few are enough. Deterministic: the end
 * is the least such pair of sets, whatever the order of growing.
 */
final class Reachability {

    private final List<Part> parts;
    private final List<Joint> joints;
    private final int base;
    private final Numbered all;
    private final int[][] holds;
    private final BitRows held;
    private final int[] island;

    /** For each part, those beside the base that hang together with it and leave as it does. */
    private final BitRows like;

    private final boolean[] released;

    /** Joints whose parts stay together, as they are not slack and were not released yet. */
    private final boolean[] rigid;

    private final Set<String> cut = new HashSet<>();
    private final BitRows parted;

    /** For each part, those that it takes along itself, the part included. */
    private final BitRows along;

    /** Trains; of those that cannot be moved only as much as it takes to know that. */
    private final BitRows trains;

    private final boolean[] moves;

    /** Parts that can be moved alone: there is no more to find out about them. */
    private final boolean[] apartFromAll;

    /** Analyses a device. */
    Reachability(Numbered all) {
        this.all = all;
        this.parts = all.parts;
        this.joints = all.joints;
        this.base = all.base;
        this.holds = all.holds;
        int n = parts.size();
        int m = joints.size();
        this.held = new BitRows(m, n);
        this.released = new boolean[m];
        this.rigid = new boolean[m];
        for (int j = 0; j < m; j++) {
            for (int p : holds[j]) {
                held.set(j, p);
            }
            rigid[j] = !joints.get(j).slack();
        }
        this.parted = new BitRows(n, n);
        this.along = new BitRows(n, n);
        this.trains = new BitRows(n, n);
        this.moves = new boolean[n];
        this.apartFromAll = new boolean[n];
        this.island = Islands.of(n, this.base, holds);
        this.like = alike();
        settle();
    }

    private BitRows alike() {
        BitRows rows = new BitRows(parts.size(), parts.size());
        Map<List<Object>, Integer> first = new HashMap<>();
        for (int p = 0; p < parts.size(); p++) {
            if (p != base) {
                Move move = parts.get(p).move().orElseThrow();
                Integer row = first.putIfAbsent(List.of(island[p], move.tool(), move.posture()), p);
                rows.set(row == null ? p : row, p);
            }
        }
        for (int row : first.values()) {
            for (int p = rows.next(row, row + 1); p >= 0; p = rows.next(row, p + 1)) {
                rows.copy(row, p);
            }
        }
        return rows;
    }

    private void settle() {
        boolean grown = true;
        while (grown) {
            takeAlong();
            for (int p = 0; p < parts.size(); p++) {
                if (!apartFromAll[p]) {
                    trains.copyFrom(along, p);
                    moves[p] = trains.close(p, along, like) && live(p) < 0;
                }
            }
            boolean apart = growParted();
            boolean free = growReleased();
            grown = apart || free;
        }
    }

    /** Returns a part of a train that needs a supply cut that is not, or -1. */
    private int live(int train) {
        for (int p = trains.next(train, 0); p >= 0; p = trains.next(train, p + 1)) {
            if (!cut.containsAll(all.needsAlways(p))) {
                return p;
            }
        }
        return -1;
    }

    private void takeAlong() {
        for (int p = 0; p < parts.size(); p++) {
            along.copyWithout(p, all.covers, parted);
            along.set(p, p);
        }
        for (int j = 0; j < holds.length; j++) {
            if (rigid[j]) {
                for (int p : holds[j]) {
                    along.add(p, held, j);
                }
            }
        }
    }

    /** Parts that must come along whenever a part is moved, in the order in which to name them. */
    private List<Integer> taken(int p) {
        List<Integer> with = new ArrayList<>();
        for (int j = 0; j < holds.length; j++) {
            if (rigid[j] && held.get(j, p)) {
                for (int q : holds[j]) {
                    with.add(q);
                }
            }
        }
        for (String cover : parts.get(p).under()) {
            if (!parted.get(p, all.of(cover))) {
                with.add(all.of(cover));
            }
        }
        return with;
    }

    private boolean agree(int p, int q) {
        Move one = parts.get(p).move().orElseThrow();
        Move other = parts.get(q).move().orElseThrow();
        return one.tool().equals(other.tool()) && one.posture().equals(other.posture());
    }

    private boolean growParted() {
        boolean grown = false;
        for (int u = 0; u < parts.size(); u++) {
            if (!moves[u] || apartFromAll[u]) {
                continue;
            }
            int s = parted.nextOutside(u, trains, 0, parts.size());
            while (s >= 0) {
                parted.set(u, s);
                parted.set(s, u);
                grown = true;
                s = parted.nextOutside(u, trains, s + 1, parts.size());
            }
            apartFromAll[u] = trains.count(u) == 1;
        }
        return grown;
    }

    private boolean growReleased() {
        boolean grown = false;
        for (int j = 0; j < holds.length; j++) {
            if (released[j] || !cut.containsAll(all.needs.get(j))) {
                continue;
            }
            boolean gives = joints.get(j).gives();
            boolean byAct =
                    all.hiders.within(j, parted, all.site(j)) && all.relaxed(j, released);
            if (byAct || (gives && comesApart(j))) {
                released[j] = true;
                cut.addAll(joints.get(j).cuts());
                grown = true;
            }
            if (rigid[j] && (released[j] || gives)) {
                rigid[j] = false;
                grown = true;
            }
        }
        return grown;
    }

    /** Returns whether two parts that a joint holds can be separated. */
    private boolean comesApart(int j) {
        for (int p : holds[j]) {
            for (int q : holds[j]) {
                if (parted.get(p, q)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Parts that hide a joint and cannot be separated from its site. */
    private List<String> hiding(Joint joint) {
        int site = all.of(joint.site());
        return joint.under().stream().filter(u -> !parted.get(all.of(u), site)).toList();
    }

    /**
     * Returns whether there is nothing to report: each joint is released, each part moved alone.
     */
    boolean everythingComesApart() {
        boolean apart = true;
        for (boolean each : released) {
            apart &= each;
        }
        for (int p = 0; p < apartFromAll.length; p++) {
            apart &= apartFromAll[p] || p == base;
        }
        return apart;
    }

    /** Returns whether some plan may release a joint. */
    boolean canRelease(String jointId) {
        for (int j = 0; j < released.length; j++) {
            if (joints.get(j).id().equals(jointId)) {
                return released[j];
            }
        }
        throw new IllegalArgumentException("no joint " + jointId);
    }

    /** Returns whether some plan may move a part. */
    boolean canMove(String partId) {
        return moves[all.of(partId)];
    }

    /** Returns whether some plan may bring two parts to different places. */
    boolean canPart(String one, String other) {
        return parted.get(all.of(one), all.of(other));
    }

    /** Returns the first fact that prevents the release of a joint that cannot be released. */
    Obstacle obstacleTo(Joint joint) {
        int number = joints.indexOf(joint);
        Optional<Obstacle> live = live("", all.needs.get(number));
        if (live.isPresent()) {
            return live.get();
        }
        List<String> hiding = hiding(joint);
        if (!hiding.isEmpty()) {
            return new Obstacle("is hidden by", hiding.get(0), false, false);
        }
        for (int[] strains : all.strains.get(number)) {
            for (int other : strains) {
                if (!released[other]) {
                    return new Obstacle("is strained by", joints.get(other).id(), true, false);
                }
            }
        }
        throw new IllegalArgumentException("joint " + joint.id() + " can be released");
    }

    /** Returns the first supply that cannot be cut, with the joint that would cut it. */
    private Optional<Obstacle> live(String who, List<String> needs) {
        return needs.stream()
                .filter(supply -> !cut.contains(supply))
                .findFirst()
                .map(
                        supply ->
                                joints.stream()
                                        .filter(isolator -> isolator.cuts().contains(supply))
                                        .findFirst()
                                        .map(
                                                isolator ->
                                                        new Obstacle(
                                                                who + "needs " + supply + " cut by",
                                                                isolator.id(),
                                                                true,
                                                                false))
                                        .orElse(
                                                new Obstacle(
                                                        who
                                                                + "needs a supply cut that nothing"
                                                                + " cuts:",
                                                        supply,
                                                        false,
                                                        true)));
    }

    /**
     * Returns the first fact that keeps a part from being moved, or from being moved without
     * another part.
     */
    Obstacle obstacleTo(Part part, String without) {
        int p = all.of(part.id());
        trains.copyFrom(along, p);
        trains.close(p, along);
        int goal = trains.get(p, all.of(without)) ? all.of(without) : base;
        if (!trains.get(p, goal)) {
            int hot = live(p);
            if (hot >= 0) {
                String who =
                        hot == p
                                ? ""
                                : "leaves only together with " + parts.get(hot).id() + ", which ";
                return live(who, all.needsAlways(hot)).orElseThrow();
            }
            for (int q = trains.next(p, 0); q >= 0; q = trains.next(p, q + 1)) {
                if (island[q] == island[p] && !agree(p, q)) {
                    return new Obstacle(
                            "leaves only "
                                    + manner(p)
                                    + " and together with "
                                    + parts.get(q).id()
                                    + ", which leaves",
                            manner(q),
                            false,
                            true);
                }
                goal = island[q] == island[p] ? goal : q;
            }
        }
        Map<Integer, Integer> stepTo = new LinkedHashMap<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(p));
        while (!stepTo.containsKey(goal)) {
            int at = open.remove();
            for (int q : taken(at)) {
                if (q != p && stepTo.putIfAbsent(q, at) == null) {
                    open.add(q);
                }
            }
        }
        int step = goal;
        while (Objects.requireNonNull(stepTo.get(step)) != p) {
            step = Objects.requireNonNull(stepTo.get(step));
        }
        String next = parts.get(step).id();
        if (part.under().contains(next) && !parted.get(p, step)) {
            return new Obstacle("lies under", next, false, false);
        }
        for (int j = 0; j < holds.length; j++) {
            Joint joint = joints.get(j);
            if (rigid[j] && held.get(j, p) && joint.holds().contains(next)) {
                return new Obstacle("is held by", joint.id(), true, false);
            }
        }
        throw new IllegalStateException(part.id() + " takes along " + next + " for no reason");
    }

    private String manner(int p) {
        Move move = parts.get(p).move().orElseThrow();
        return "by " + move.tool() + " in " + move.posture();
    }

    /**
     * An obstacle.
     *
     * @param how how, as the middle of a sentence
     * @param id id of the joint or part
     * @param joint whether it is a joint
     * @param last whether it is the last of the chain
     */
    record Obstacle(String how, String id, boolean joint, boolean last) {}
}
