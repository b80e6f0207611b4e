package reseat.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.graph.Question;

/**
 * The graph between numbers and words: what each fact needs from the start, taken from the
 * landmarks once and never modified.
 */
final class Net {

    final Question question;
    final Compiled c;
    final Landmarks landmarks;

    /** What every way to the goal needs. */
    final long[] goalNeeds;

    Net(Question question) {
        this.question = question;
        c = question.c;
        landmarks = new Landmarks(c, question.need);
        goalNeeds =
                landmarks.compute(
                        new long[Bits.words(c.nodes)], c.startPlace, question.toMove(), List.of());
    }

    Fact.Released released(int node) {
        return new Fact.Released(List.of(c.members[node]));
    }

    Fact.Apart apart(int part, int other) {
        return new Fact.Apart(c.partIds[part], c.partIds[other]);
    }

    Work work(int bit) {
        return bit < c.nodes
                ? new Work.Release(List.of(c.members[bit]))
                : new Work.MoveOf(c.partIds[bit - c.nodes]);
    }

    boolean impossible(long[] needs) {
        return landmarks.impossible(needs);
    }

    boolean share(int part, int other) {
        return c.startPlace[part] == c.startPlace[other];
    }

    /** What must be done for a release or a move, itself included. */
    long[] needs(int bit) {
        if (bit < c.nodes) {
            return landmarks.needsOfRelease(bit);
        }
        long[] needs = landmarks.needsOfMove(bit - c.nodes).clone();
        Bits.set(needs, bit);
        return needs;
    }

    /** What must be done for two parts to come apart. */
    long[] needsOfApart(int part, int other) {
        if (!share(part, other)) {
            return new long[landmarks.words()];
        }
        long[] one = landmarks.needsOfLeaving(part, other);
        long[] two = landmarks.needsOfLeaving(other, part);
        for (int w = 0; w < one.length; w++) {
            one[w] &= two[w];
        }
        return one;
    }

    /** What must be done for a supply to be cut. */
    long[] needsOfCut(List<Integer> isolators) {
        long[] needs = landmarks.needsOfLeaving(c.base, c.base);
        for (int node : isolators) {
            for (int w = 0; w < needs.length; w++) {
                needs[w] &= landmarks.needsOfRelease(node)[w];
            }
        }
        return needs;
    }

    Before before(long[] needs, int itself) {
        if (impossible(needs)) {
            return new Before(false, List.of(), List.of());
        }
        List<Integer> all = ordered(needs);
        all.remove((Integer) itself);
        return new Before(
                true,
                all.stream().map(this::work).toList(),
                latest(all).stream().map(this::work).toList());
    }

    /** The members of a set of needs, each after those that it needs. */
    List<Integer> ordered(long[] needs) {
        List<Integer> bits = new ArrayList<>();
        for (int bit = Bits.next(needs, 0); bit >= 0; bit = Bits.next(needs, bit + 1)) {
            bits.add(bit);
        }
        bits.sort(Comparator.comparing((Integer bit) -> Bits.count(needs(bit))));
        return bits;
    }

    /** Those that none of the others needs. */
    List<Integer> latest(List<Integer> bits) {
        return bits.stream()
                .filter(
                        bit ->
                                bits.stream()
                                        .noneMatch(
                                                other ->
                                                        !other.equals(bit)
                                                                && Bits.get(needs(other), bit)))
                .toList();
    }
}
