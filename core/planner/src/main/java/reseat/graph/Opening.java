package reseat.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;

/** Finds what a release or a move makes possible. */
final class Opening {

    private final Net net;
    private final Steps steps;
    private final Compiled c;

    Opening(Net net, Steps steps) {
        this.net = net;
        this.steps = steps;
        c = net.c;
    }

    Opens of(int bit) {
        List<String> uncovers = new ArrayList<>();
        List<String> unpowers = new ArrayList<>();
        List<String> loosens = new ArrayList<>();
        if (bit < c.nodes) {
            for (int p : c.holds[bit]) {
                if (p != c.base) {
                    loosens.add(c.partIds[p]);
                }
            }
            List<String> cuts = net.question.device.joint(c.members[bit][0]).cuts();
            for (int j = 0; j < c.nodes; j++) {
                if (steps.live(j).stream().anyMatch(cuts::contains)) {
                    unpowers.addAll(List.of(c.members[j]));
                }
            }
        } else {
            int part = bit - c.nodes;
            for (int j = 0; j < c.nodes; j++) {
                boolean covers = Arrays.stream(c.under[j]).anyMatch(u -> u == part);
                if (covers && net.share(part, c.site[j])) {
                    uncovers.addAll(List.of(c.members[j]));
                }
            }
            for (int p = 0; p < c.parts; p++) {
                boolean covers = Arrays.stream(c.partUnder[p]).anyMatch(u -> u == part);
                if (covers && net.share(part, p)) {
                    loosens.add(c.partIds[p]);
                }
            }
        }
        return new Opens(uncovers, unpowers, loosens, nowPossible(bit), neededBy(bit));
    }

    private List<Work> nowPossible(int bit) {
        long[] done = net.needs(bit).clone();
        List<Work> works = new ArrayList<>();
        for (int other = 0; other < c.nodes + c.parts; other++) {
            if (other != bit && serves(bit, other)) {
                long[] with = done.clone();
                Bits.set(with, other);
                if (Bits.subset(net.needs(other), with)) {
                    works.add(net.work(other));
                }
            }
        }
        return works;
    }

    private List<Work> neededBy(int bit) {
        List<Work> works = new ArrayList<>();
        for (int other = 0; other < c.nodes + c.parts; other++) {
            if (other != bit && serves(bit, other)) {
                works.add(net.work(other));
            }
        }
        return works;
    }

    private boolean serves(int bit, int other) {
        long[] needs = net.needs(other);
        return !net.impossible(needs) && Bits.get(needs, bit);
    }
}
