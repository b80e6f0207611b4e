package reseat.internal.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Which facts of a compiled device affect which: the pairs of parts that something wants apart, and
 * for each part and node the facts to visit again when something about it changes. The same for
 * every state.
 */
final class Links {

    /** Pairs of parts; the first has the smaller number, or both are one. */
    final int[] pairA;

    final int[] pairB;

    /** Whether the first part of a pair lies on the second, and the other way round. */
    final boolean[] firstOnSecond;

    final boolean[] secondOnFirst;

    /** For each node, its covers with its site. */
    final int[][] nodePairs;

    /** For each part, its covers with itself. */
    final int[][] partPairs;

    final int[] goalPairs;

    /** For each pair, the rigid nodes that hold both. */
    final int[][] pairRigid;

    /** For each pair, the nodes that hold both and give. */
    final int[][] pairGives;

    /** For each part, the rigid nodes that hold it. */
    final int[][] rigidOf;

    /** For each part, the nodes that hold it and give. */
    final int[][] givesOf;

    /** For each part, both. */
    final int[][] holding;

    /** For each part, the other parts on its rigid nodes. */
    final int[][] neighbours;

    /** For each part, the pairs it is one of. */
    final int[][] pairsOf;

    /** For each pair, the nodes that it covers, and the part that one of it covers, or -1. */
    final int[][] nodesOfPair;

    final int[][] partsOfPair;

    /** For each supply, the nodes that need it cut. */
    final int[][] needers;

    /** For each node, the nodes of which it strains a way. */
    final int[][] strained;

    private final Compiled c;
    private final int[][] @Nullable [] companions;
    private final Map<Long, Integer> index = new HashMap<>();
    private final List<int[]> pairs = new ArrayList<>();

    Links(Compiled c, Need need) {
        this.c = c;
        nodePairs = new int[c.nodes][];
        for (int j = 0; j < c.nodes; j++) {
            int at = c.site[j];
            nodePairs[j] = Arrays.stream(c.under[j]).map(u -> pair(u, at)).toArray();
        }
        partPairs = new int[c.parts][];
        for (int p = 0; p < c.parts; p++) {
            int part = p;
            partPairs[p] = Arrays.stream(c.partUnder[p]).map(u -> pair(u, part)).toArray();
        }
        goalPairs = need.apart().stream().mapToInt(ab -> pair(ab[0], ab[1])).toArray();
        pairA = pairs.stream().mapToInt(ab -> ab[0]).toArray();
        pairB = pairs.stream().mapToInt(ab -> ab[1]).toArray();
        rigidOf = new int[c.parts][];
        givesOf = new int[c.parts][];
        holding = new int[c.parts][];
        neighbours = new int[c.parts][];
        for (int p = 0; p < c.parts; p++) {
            holding[p] = Arrays.stream(c.nodesOf[p]).filter(j -> !c.slack[j]).toArray();
            rigidOf[p] = Arrays.stream(holding[p]).filter(j -> !c.gives[j]).toArray();
            givesOf[p] = Arrays.stream(holding[p]).filter(j -> c.gives[j]).toArray();
            TreeSet<Integer> near = new TreeSet<>();
            for (int j : rigidOf[p]) {
                Arrays.stream(c.holds[j]).forEach(near::add);
            }
            near.remove(p);
            neighbours[p] = near.stream().mapToInt(Integer::intValue).toArray();
        }
        int n = pairA.length;
        firstOnSecond = new boolean[n];
        secondOnFirst = new boolean[n];
        pairRigid = new int[n][];
        pairGives = new int[n][];
        for (int i = 0; i < n; i++) {
            int a = pairA[i];
            int b = pairB[i];
            firstOnSecond[i] = contains(c.partUnder[b], a);
            secondOnFirst[i] = contains(c.partUnder[a], b);
            pairRigid[i] = Arrays.stream(rigidOf[a]).filter(j -> contains(c.holds[j], b)).toArray();
            pairGives[i] = Arrays.stream(givesOf[a]).filter(j -> contains(c.holds[j], b)).toArray();
        }
        companions = new int[2 * n][][];
        pairsOf = turned(c.parts, IntStream.range(0, n).mapToObj(this::ends).toList());
        nodesOfPair = turned(n, Arrays.asList(nodePairs));
        partsOfPair = turned(n, Arrays.asList(partPairs));
        needers = new int[c.device.supplies().size()][];
        for (int s = 0; s < needers.length; s++) {
            long supply = 1L << s;
            needers[s] =
                    IntStream.range(0, c.nodes).filter(j -> (c.needs[j] & supply) != 0).toArray();
        }
        strained =
                turned(
                        c.nodes,
                        Arrays.stream(c.options)
                                .map(
                                        options ->
                                                Arrays.stream(options)
                                                        .flatMapToInt(
                                                                o -> Arrays.stream(o.strain()))
                                                        .distinct()
                                                        .toArray())
                                .toList());
    }

    /**
     * Returns, for one of a pair that goes without the other, a row for each of its rigid nodes
     * that does not hold the other: the node, the number of further parts it holds, those parts,
     * and the rigid nodes that hold one of them and the part that stays.
     */
    int[][] companions(int pair, boolean second) {
        int at = 2 * pair + (second ? 1 : 0);
        int[][] known = companions[at];
        if (known == null) {
            known =
                    second
                            ? companionsOf(pairB[pair], pairA[pair])
                            : companionsOf(pairA[pair], pairB[pair]);
            companions[at] = known;
        }
        return known;
    }

    private int[][] companionsOf(int mover, int stays) {
        List<int[]> rows = new ArrayList<>();
        for (int j : rigidOf[mover]) {
            if (!contains(c.holds[j], stays)) {
                int[] others = Arrays.stream(c.holds[j]).filter(x -> x != mover).toArray();
                IntStream.Builder row = IntStream.builder().add(j).add(others.length);
                Arrays.stream(others).forEach(row);
                for (int x : others) {
                    Arrays.stream(rigidOf[x]).filter(k -> contains(c.holds[k], stays)).forEach(row);
                }
                rows.add(row.build().toArray());
            }
        }
        return rows.toArray(int[][]::new);
    }

    static boolean contains(int[] some, int one) {
        for (int each : some) {
            if (each == one) {
                return true;
            }
        }
        return false;
    }

    private int[] ends(int pair) {
        int a = pairA[pair];
        int b = pairB[pair];
        return a == b ? new int[] {a} : new int[] {a, b};
    }

    private int pair(int a, int b) {
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        return index.computeIfAbsent(
                key,
                k -> {
                    pairs.add(new int[] {Math.min(a, b), Math.max(a, b)});
                    return pairs.size() - 1;
                });
    }

    /** For rows of numbers below a size: for each number the rows that have it. */
    private static int[][] turned(int size, List<int[]> rows) {
        List<List<Integer>> turned = new ArrayList<>();
        for (int k = 0; k < size; k++) {
            turned.add(new ArrayList<>());
        }
        for (int row = 0; row < rows.size(); row++) {
            for (int k : rows.get(row)) {
                turned.get(k).add(row);
            }
        }
        return turned.stream()
                .map(of -> of.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
