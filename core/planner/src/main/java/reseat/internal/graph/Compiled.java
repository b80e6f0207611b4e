package reseat.internal.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.model.State;
import reseat.model.Way;

/**
 * A device, a start and the rules of a request as arrays. Parts and tools have numbers; joints that
 * are alike in everything that matters to the order of work form one <em>node</em>. What the rules
 * forbid is left out: a node without ways cannot be released, a part that is {@link #stuck} cannot
 * be moved.
 */
public final class Compiled {

    /**
     * One allowed way to release a node.
     *
     * @param clazz class of set-up: tool and posture
     * @param costMs time and restore time of all joints of the node, in milliseconds
     * @param id id of the way
     * @param strain nodes that must be released before
     */
    // an array: created here, passed on, never modified
    @SuppressWarnings("ArrayRecordComponent")
    public record Option(int clazz, long costMs, String id, int[] strain) {}

    /** The most supplies a device may have: they are kept as the bits of a word. */
    public static final int MAX_SUPPLIES = 64;

    public final Device device;
    public final int parts;
    public final int nodes;
    public final int base;
    public final String[] partIds;
    public final String[][] members;
    public final int[][] holds;
    public final int[] site;
    public final int[][] under;

    /** Whether the parts of a node may lie apart while it is unreleased. */
    public final boolean[] slack;

    /** Whether a move that takes some of its parts and not all releases a node. */
    public final boolean[] gives;

    public final long[] needs;
    public final long[] cuts;
    public final Option[][] options;

    /** What the release of a node costs at least, in milliseconds. */
    public final long[] minCost;

    /** Time and restore time that a node which gives adds to a move, in milliseconds. */
    public final long[] giveMs;

    public final long[] giveRestoreMs;
    public final int[][] partUnder;
    public final int[][] nodesOf;
    public final int[] partClass;
    public final long[] partMs;
    public final long[] partRestoreMs;
    public final boolean[] stuck;

    public final int classes;
    public final int startClass;
    public final String[] classTool;
    public final String[] classPosture;
    public final long[][] setup;

    /** What moves need and bring about besides new places. */
    public final Moving moving;

    /** Place of every part at the start, named after its first part. */
    public final char[] startPlace;

    /**
     * Supplies that joints released before the start have cut, where those joints are in no node.
     */
    public final long startCut;

    private final Map<String, Integer> partIndex = new LinkedHashMap<>();
    private final Map<String, Integer> nodeIndex = new LinkedHashMap<>();

    /**
     * Compiles a request.
     *
     * @param device the device; has at most {@link #MAX_SUPPLIES} supplies
     * @param start the state of the unit; names only parts and joints of the device
     * @param rules what is forbidden
     * @param single joints that must stay nodes of their own
     * @param may which acts may be done besides what the rules say
     */
    Compiled(Device device, State start, Rules rules, Set<String> single, Predicate<Act> may) {
        this.device = device;
        List<Part> partList = List.copyOf(device.parts().values());
        parts = partList.size();
        partIds = partList.stream().map(Part::id).toArray(String[]::new);
        for (int p = 0; p < parts; p++) {
            partIndex.put(partIds[p], p);
        }
        base = part(device.base());

        Map<String, Integer> supplies = new LinkedHashMap<>();
        device.supplies().keySet().forEach(supply -> supplies.put(supply, supplies.size()));
        Strains strains = new Strains(device, start.released());
        List<List<Joint>> groups = new Alike(device, start, rules, single, strains, may).groups();
        nodes = groups.size();
        members = new String[nodes][];
        holds = new int[nodes][];
        site = new int[nodes];
        under = new int[nodes][];
        slack = new boolean[nodes];
        gives = new boolean[nodes];
        giveMs = new long[nodes];
        giveRestoreMs = new long[nodes];
        needs = new long[nodes];
        cuts = new long[nodes];
        options = new Option[nodes][];
        minCost = new long[nodes];
        SetupClasses inHand = new SetupClasses(device);
        startClass = inHand.of(device.hand(), device.usualPosture());
        for (int j = 0; j < nodes; j++) {
            compileNode(j, groups.get(j), rules, supplies);
        }
        for (int j = 0; j < nodes; j++) {
            compileOptions(j, groups.get(j).get(0), rules, strains, may, inHand);
        }

        partUnder = new int[parts][];
        partClass = new int[parts];
        partMs = new long[parts];
        partRestoreMs = new long[parts];
        stuck = new boolean[parts];
        nodesOf = new int[parts][];
        for (int p = 0; p < parts; p++) {
            compilePart(p, partList.get(p), rules, may, inHand);
        }

        classes = inHand.size();
        classTool = inHand.tools();
        classPosture = inHand.postures();
        setup = inHand.changes();

        long cut = 0;
        for (String released : start.released()) {
            cut |= mask(device.joint(released).cuts(), supplies);
        }
        startCut = cut;
        startPlace = place(start);
        moving = new Moving(this, supplies);
    }

    private void compileNode(int j, List<Joint> group, Rules rules, Map<String, Integer> supplies) {
        Joint joint = group.get(0);
        members[j] = group.stream().map(Joint::id).toArray(String[]::new);
        for (String member : members[j]) {
            nodeIndex.put(member, j);
        }
        holds[j] = joint.holds().stream().mapToInt(this::part).toArray();
        site[j] = part(joint.site());
        under[j] = joint.under().stream().mapToInt(this::part).toArray();
        gives[j] = mayGive(joint, rules);
        slack[j] = joint.slack() && !joint.gives();
        needs[j] = mask(device.power().needs(joint), supplies);
        cuts[j] = mask(joint.cuts(), supplies);
        giveMs[j] = members[j].length * joint.firstWay().ms();
        giveRestoreMs[j] = members[j].length * joint.firstWay().restoreMs();
    }

    private void compileOptions(
            int j,
            Joint joint,
            Rules rules,
            Strains strains,
            Predicate<Act> may,
            SetupClasses inHand) {
        List<Option> allowed = new ArrayList<>();
        for (Way way : joint.ways().values()) {
            if (allowed(device, joint, way, rules)
                    && may.test(new Act.Release(joint.id(), way.id()))) {
                long costMs = members[j].length * (way.ms() + way.restoreMs());
                int[] strain =
                        strains.of(joint, way).stream()
                                .mapToInt(this::node)
                                .distinct()
                                .sorted()
                                .toArray();
                allowed.add(
                        new Option(inHand.of(way.tool(), way.posture()), costMs, way.id(), strain));
            }
        }
        options[j] = withoutDominated(allowed, rules).toArray(Option[]::new);
        minCost[j] =
                gives[j]
                        ? giveMs[j] + giveRestoreMs[j]
                        : Arrays.stream(options[j]).mapToLong(Option::costMs).min().orElse(0);
    }

    /**
     * Returns whether a move may release a joint that gives: not where the rules forbid the joint,
     * and not where they require its release as an act of its own.
     */
    private static boolean mayGive(Joint joint, Rules rules) {
        return joint.gives()
                && !rules.forbiddenJoints().contains(joint.id())
                && !rules.requiredActs()
                        .contains(new Act.Release(joint.id(), joint.firstWay().id()).id());
    }

    private void compilePart(
            int p, Part part, Rules rules, Predicate<Act> may, SetupClasses inHand) {
        partUnder[p] = part.under().stream().mapToInt(this::part).toArray();
        stuck[p] =
                part.move().isEmpty()
                        || rules.forbiddenParts().contains(part.id())
                        || !may.test(new Act.MoveParts(List.of(part.id())))
                        || rules.forbiddenTools().contains(part.move().get().tool());
        if (part.move().isPresent()) {
            Move move = part.move().get();
            partClass[p] = inHand.of(move.tool(), move.posture());
            partMs[p] = move.ms();
            partRestoreMs[p] = move.restoreMs();
        }
        nodesOf[p] =
                IntStream.range(0, nodes)
                        .filter(j -> Arrays.stream(holds[j]).anyMatch(held -> held == p))
                        .toArray();
    }

    /** Returns the number of a part. */
    public int part(String id) {
        Integer index = partIndex.get(id);
        if (index == null) {
            throw new IllegalArgumentException("no part " + id);
        }
        return index;
    }

    /** Returns the node of an unreleased joint, or -1 if it was released before the start. */
    public int node(String joint) {
        return nodeIndex.getOrDefault(joint, -1);
    }

    /** Returns time and restore time of moving a part alone, in milliseconds. */
    public long moveCost(int part) {
        return partMs[part] + partRestoreMs[part];
    }

    /**
     * Returns what moving parts together costs at least, with its restore time, in milliseconds.
     */
    public long moveCost(int[] together) {
        long ms = 0;
        long restoreMs = 0;
        for (int part : together) {
            ms = Math.max(ms, partMs[part]);
            restoreMs = Math.max(restoreMs, partRestoreMs[part]);
        }
        return ms + restoreMs;
    }

    static long mask(Collection<String> ids, Map<String, Integer> supplies) {
        long mask = 0;
        for (String id : ids) {
            Integer bit = supplies.get(id);
            if (bit == null || bit >= MAX_SUPPLIES) {
                throw new IllegalArgumentException(
                        "no supply " + id + " among the first " + MAX_SUPPLIES);
            }
            mask |= 1L << bit;
        }
        return mask;
    }

    /** Returns the supplies that are cut where nodes are released. */
    public long cut(long[] released) {
        long cut = startCut;
        for (int j = Bits.next(released, 0); j >= 0; j = Bits.next(released, j + 1)) {
            cut |= cuts[j];
        }
        return cut;
    }

    /** Returns whether nothing tight strains a way to release a node. */
    public boolean unstrained(Option option, long[] released) {
        for (int j : option.strain) {
            if (!Bits.get(released, j)) {
                return false;
            }
        }
        return true;
    }

    /** Returns whether device and rules allow an act that releases a joint by a way. */
    public static boolean allowed(Device device, Joint joint, Way way, Rules rules) {
        return !device.onlyLetsGo(joint)
                && !rules.forbiddenJoints().contains(joint.id())
                && !rules.forbiddenTools().contains(way.tool())
                && !rules.forbiddenActs().contains(new Act.Release(joint.id(), way.id()).id())
                && rules.permittedRuin().containsAll(way.ruins());
    }

    /**
     * Drops a way that another way of the same class dominates; drops none if a tool is required,
     * to stay exact.
     */
    private static List<Option> withoutDominated(List<Option> options, Rules rules) {
        if (!rules.requiredTools().isEmpty()) {
            return options;
        }
        List<Option> kept = new ArrayList<>();
        for (Option option : options) {
            Predicate<Option> beats =
                    other ->
                            other.clazz() == option.clazz()
                                    && within(other.strain(), option.strain())
                                    && (other.costMs() < option.costMs()
                                            || (other.costMs() == option.costMs()
                                                    && (!within(option.strain(), other.strain())
                                                            || options.indexOf(other)
                                                                    < options.indexOf(option))));
            if (options.stream().noneMatch(beats)) {
                kept.add(option);
            }
        }
        return kept;
    }

    private static boolean within(int[] some, int[] all) {
        return Arrays.stream(some).allMatch(one -> Links.contains(all, one));
    }

    private char[] place(State start) {
        char[] place = new char[parts];
        Arrays.fill(place, (char) 0xFFFF);
        for (Set<String> together : start.places()) {
            int first = together.stream().mapToInt(this::part).min().orElse(0);
            for (String id : together) {
                place[part(id)] = (char) first;
            }
        }
        if (place[base] == 0xFFFF) {
            place[base] = (char) base;
        }
        char home = place[base];
        for (int p = 0; p < parts; p++) {
            if (place[p] == 0xFFFF) {
                place[p] = home;
            }
        }
        canonical(place);
        return place;
    }

    /**
     * Renames places so that each is named after its first part.
     *
     * @param place place of every part, with names from 0 to the number of parts
     */
    public static void canonical(char[] place) {
        char[] first = new char[place.length + 1];
        Arrays.fill(first, (char) 0xFFFF);
        for (int p = 0; p < place.length; p++) {
            int old = place[p];
            if (first[old] == 0xFFFF) {
                first[old] = (char) p;
            }
            place[p] = first[old];
        }
    }
}
