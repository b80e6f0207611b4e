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
 *       of its ways can be released, unless it only lets go; a joint that gives, also if two of its
 *       parts can be separated and each supply it needs is cut;
 *   <li>parts u and s can be separated if a group with one of them and without the other can be
 *       moved. Every group with u contains the <em>train</em> of u: the least set with u that takes
 *       along, for each of its members, the other parts of each rigid joint that cannot be released
 *       (one that gives is rigid while a supply that it needs cannot be cut) and each cover that
 *       cannot be separated from it. So no group can be moved if the train contains the base, or
 *       differs in tool or posture, or can never hang together, or if one of its members states
 *       that it needs a supply cut that cannot be.
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
            rigid[j] = !joints.get(j).slack() && !all.loose[j];
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
                Integer row = first.putIfAbsent(List.of(island[p], all.manners.get(p)), p);
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
            if (!cut.containsAll(all.partNeeds.get(p))) {
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
            int q = all.of(cover);
            if (all.covers.get(p, q) && !parted.get(p, q)) {
                with.add(q);
            }
        }
        return with;
    }

    private boolean agree(int p, int q) {
        return all.manners.get(p).equals(all.manners.get(q));
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
                    !all.onlyLetsGo[j]
                            && all.hiders.within(j, parted, all.site(j))
                            && all.relaxed(j, released);
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
    private List<String> hiding(int j) {
        return joints.get(j).under().stream()
                .filter(u -> all.hiders.get(j, all.of(u)))
                .filter(u -> !parted.get(all.of(u), all.site(j)))
                .toList();
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

    /**
     * Returns what no plan does, joints first, in the order of the file: joints that it cannot
     * release, parts that it cannot move, and parts that it can move, but never away from another.
     * One other part is enough for each.
     */
    List<Stuck> stuck() {
        List<Stuck> stuck = new ArrayList<>();
        String home = parts.get(base).id();
        for (int j = 0; j < released.length; j++) {
            if (!released[j]) {
                stuck.add(new Stuck(joints.get(j).id(), true, home));
            }
        }
        for (int p = 0; p < moves.length; p++) {
            if (p != base && !moves[p]) {
                stuck.add(new Stuck(parts.get(p).id(), false, home));
            }
        }
        for (int p = 0; p < moves.length; p++) {
            for (int q = 0; q < p; q++) {
                if (p != base && q != base && moves[p] && moves[q] && !parted.get(p, q)) {
                    stuck.add(new Stuck(parts.get(p).id(), false, parts.get(q).id()));
                    break;
                }
            }
        }
        return stuck;
    }

    /** Returns whether some plan may move a part. */
    boolean canMove(String partId) {
        return moves[all.of(partId)];
    }

    /** Returns the first fact that prevents the release of a joint that cannot be released. */
    Obstacle obstacleTo(Joint joint) {
        int j = all.ofJoint(joint.id());
        Optional<Obstacle> live = live("", all.needs.get(j));
        if (live.isPresent()) {
            return live.get();
        }
        if (all.onlyLetsGo[j]) {
            String part = all.movedToLetGo(j).id();
            return new Obstacle(Obstacle.Fact.LETS_GO, "lets go only with", part, part);
        }
        List<String> hiding = hiding(j);
        if (!hiding.isEmpty()) {
            return new Obstacle(Obstacle.Fact.COVER, "is hidden by", hiding.get(0), hiding.get(0));
        }
        for (int[] strains : all.strains.get(j)) {
            for (int other : strains) {
                if (!released[other]) {
                    String id = joints.get(other).id();
                    return new Obstacle(Obstacle.Fact.STRAIN, "is strained by", id, id);
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
                                                                Obstacle.Fact.NEED,
                                                                who + "needs " + supply + " cut by",
                                                                isolator.id(),
                                                                supply))
                                        .orElse(
                                                new Obstacle(
                                                        Obstacle.Fact.NO_ISOLATOR,
                                                        who
                                                                + "needs a supply cut that nothing"
                                                                + " cuts:",
                                                        supply,
                                                        supply)));
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
                return live(who, all.partNeeds.get(hot)).orElseThrow();
            }
            for (int q = trains.next(p, 0); q >= 0; q = trains.next(p, q + 1)) {
                if (island[q] == island[p] && !agree(p, q)) {
                    return new Obstacle(
                            Obstacle.Fact.MANNER,
                            "leaves only "
                                    + all.manners.get(p)
                                    + " and together with "
                                    + parts.get(q).id()
                                    + ", which leaves",
                            all.manners.get(q),
                            parts.get(q).id());
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
        if (all.covers.get(p, step) && !parted.get(p, step)) {
            return new Obstacle(Obstacle.Fact.COVER, "lies under", next, next);
        }
        for (int j = 0; j < holds.length; j++) {
            Joint joint = joints.get(j);
            if (rigid[j] && held.get(j, p) && joint.holds().contains(next)) {
                return new Obstacle(Obstacle.Fact.HOLD, "is held by", joint.id(), joint.id());
            }
        }
        throw new IllegalStateException(part.id() + " takes along " + next + " for no reason");
    }

    /**
     * A joint that cannot be released, or a part that cannot be separated from another.
     *
     * @param id its id
     * @param joint whether it is a joint
     * @param from the part from which it cannot be separated; of a joint the base, which says
     *     nothing
     */
    record Stuck(String id, boolean joint, String from) {}

    /**
     * The fact that is in the way of an act.
     *
     * @param fact its kind
     * @param how how, as the middle of a sentence
     * @param words the end of the sentence
     * @param of id of the part, joint or supply that is in the way
     */
    record Obstacle(Fact fact, String how, String words, String of) {

        /** The kinds of facts, by who is in the way. */
        enum Fact {
            /** A part, of what it covers. */
            COVER,
            /** A part, of a joint that only its move releases. */
            LETS_GO,
            /** A joint, of a part that it holds. */
            HOLD,
            /** The isolator of a supply, of a joint that needs it cut; {@code of} is the supply. */
            NEED,
            /** Nothing cuts the supply {@code of}. */
            NO_ISOLATOR,
            /** A joint, of one that it strains while it is tight. */
            STRAIN,
            /** A part that would have to leave in another manner at the same time. */
            MANNER
        }
    }
}
