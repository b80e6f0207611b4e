package reseat.internal.planner;

import java.util.Arrays;
import java.util.function.IntFunction;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * Turns needs into work to be ordered: as it is, or with changes of tool or of posture alone. Extra
 * costs count with the tools, so that both may be added.
 */
final class Works {

    private static final long[] NOTHING = {0};
    private static final int MOST_PASSES = 8;

    private final Compiled c;
    private final Landmarks landmarks;
    private final View whole;
    private final View tools;
    private final View postures;

    Works(Compiled c, Landmarks landmarks, Visits visits) {
        this.c = c;
        this.landmarks = landmarks;
        int[] own = new int[c.classes];
        Arrays.setAll(own, k -> k);
        whole = new View(visits, own, true);
        tools = new View(visits.toolsAlone(), visits.toolOf, true);
        postures = new View(visits.posturesAlone(), visits.postureOf, false);
    }

    OrderWork of(long[] needs) {
        return whole.work(needs, this::before);
    }

    /**
     * The same where each part is moved alone if its joints are released at all: it waits for all
     * those joints. How a plan is best put in order, if it moves no parts together.
     */
    OrderWork eachByItself(long[] needs) {
        long[][] before = new long[c.nodes + c.parts][];
        for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
            before[work] = before(work).clone();
        }
        for (int p = 0; p < c.parts; p++) {
            int move = c.nodes + p;
            if (before[move] != null) {
                for (int j : c.nodesOf[p]) {
                    if (!c.slack[j]
                            && !c.gives[j]
                            && before[j] != null
                            && !Bits.get(before[j], move)) {
                        Bits.addAll(before[move], before[j]);
                    }
                }
            }
        }
        boolean more = true;
        for (int pass = 0; more && pass < MOST_PASSES; pass++) {
            more = false;
            for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
                more |= follow(before, work, needs);
            }
        }
        return whole.work(needs, work -> before[work]);
    }

    /** Adds what must come before that which comes before a work. */
    private static boolean follow(long[][] before, int work, long[] needs) {
        int size = Bits.count(before[work]);
        for (int k = Bits.next(before[work], 0); k >= 0; k = Bits.next(before[work], k + 1)) {
            if (k != work && Bits.get(needs, k)) {
                Bits.addAll(before[work], before[k]);
            }
        }
        return Bits.count(before[work]) > size;
    }

    private long[] before(int work) {
        return work < c.nodes
                ? landmarks.needsOfRelease(work)
                : landmarks.needsOfMove(work - c.nodes);
    }

    OrderWork byTool(long[] needs) {
        return tools.work(needs, this::before);
    }

    OrderWork byPosture(long[] needs) {
        return postures.work(needs, this::before);
    }

    /** A node that gives may be released by a move, at no set-up of its own. */
    private long[] withoutGiving(long[] needs) {
        long[] others = needs;
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            if (c.gives[j]) {
                if (others == needs) {
                    others = needs.clone();
                }
                Bits.clear(others, j);
            }
        }
        return others;
    }

    private final class View {
        private final Visits visits;
        private final int[][] classes;
        private final long[][] extra;

        View(Visits visits, int[] of, boolean withExtra) {
            this.visits = visits;
            classes = new int[c.nodes + c.parts][];
            extra = new long[c.nodes + c.parts][];
            for (int j = 0; j < c.nodes; j++) {
                Compiled.Option[] options = c.options[j];
                classes[j] = new int[options.length];
                extra[j] = new long[options.length];
                for (int o = 0; o < options.length; o++) {
                    classes[j][o] = of[options[o].clazz()];
                    extra[j][o] = withExtra ? options[o].costMs() - c.minCost[j] : 0;
                }
            }
            for (int p = 0; p < c.parts; p++) {
                classes[c.nodes + p] = new int[] {of[c.partClass[p]]};
                extra[c.nodes + p] = NOTHING;
            }
        }

        OrderWork work(long[] all, IntFunction<long[]> rows) {
            long[] needs = withoutGiving(all);
            int n = Bits.count(needs);
            int[] names = new int[n];
            int[][] itemClasses = new int[n][];
            long[][] itemExtra = new long[n][];
            long[][] before = new long[n][];
            int k = 0;
            for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
                names[k] = work;
                itemClasses[k] = classes[work];
                itemExtra[k] = extra[work];
                before[k] = rows.apply(work);
                k++;
            }
            return new OrderWork(names, itemClasses, itemExtra, before, needs, visits);
        }
    }
}
