package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Compiled;

/** A position with the cheapest known way to it. */
final class Node {

    final Position at;
    final @Nullable Node from;
    final @Nullable Step step;
    final long cost;

    /** What is still to be paid at least. Only grows. */
    long rest;

    /** Whether {@link #rest} has been computed for this position, not only inherited. */
    boolean judged;

    Node(Position at, @Nullable Node from, @Nullable Step step, long cost, long rest) {
        this.at = at;
        this.from = from;
        this.step = step;
        this.cost = cost;
        this.rest = rest;
    }

    long bound() {
        return cost + rest;
    }

    /** Returns the steps from the start to here. */
    List<Step> steps() {
        return path().stream().map(node -> Objects.requireNonNull(node.step)).toList();
    }

    /** Returns the nodes from the start, which is left out, to here. */
    List<Node> path() {
        List<Node> path = new ArrayList<>();
        for (Node node = this; node != null && node.step != null; node = node.from) {
            path.add(node);
        }
        Collections.reverse(path);
        return path;
    }

    /** An act in numbers. */
    sealed interface Step {

        /** Returns the works that it does, numbered as the landmarks number them. */
        int[] works(Compiled c);

        /**
         * Releases a node.
         *
         * @param option index of the way among the allowed ones
         */
        record Release(int node, int option) implements Step {
            @Override
            public int[] works(Compiled c) {
                return new int[] {node};
            }
        }

        /**
         * Moves parts.
         *
         * @param parts the parts, rising
         * @param given the nodes that it makes let go, rising
         * @param aside whether the parts are laid aside
         */
        // arrays: created here, passed on, never modified
        @SuppressWarnings("ArrayRecordComponent")
        record Move(int[] parts, int[] given, boolean aside) implements Step {
            @Override
            public int[] works(Compiled c) {
                return IntStream.concat(
                                Arrays.stream(parts).map(p -> c.nodes + p), Arrays.stream(given))
                        .toArray();
            }
        }
    }
}
