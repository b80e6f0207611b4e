package reseat.internal.files;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;
import reseat.text.QuoteText;

/**
 * Builds a tree from the events of a YAML or JSON parser, within limits: otherwise a file of a few
 * bytes could expand to a tree that exhausts the memory.
 */
final class TreeBuilder {

    /** Maximum nesting depth of collections. A device file needs about eight. */
    static final int DEPTH = 64;

    /** How many values a file may have, aliases counted each time they are used. */
    static final long VALUES = 500_000;

    private final Problems problems;
    private final Deque<Open> open = new ArrayDeque<>();

    /** Completed collections are measured: an alias may refer to any of them. */
    private final IdentityHashMap<Node, Measure> measures = new IdentityHashMap<>();

    private @Nullable Node root;
    private long values;

    TreeBuilder(Problems problems) {
        this.problems = problems;
    }

    /**
     * How large a node is.
     *
     * @param size how many values it counts with everything inside, aliases counted each time
     * @param height its maximum nesting depth, itself included
     */
    private record Measure(long size, int height) {
        private static final Measure SCALAR = new Measure(1, 0);
    }

    /** An open collection; a list if {@code keys} is null. */
    private static final class Open {
        private final Origin at;
        private final @Nullable Map<String, Node.Entry> keys;
        private final List<Node> items;
        private @Nullable String key;
        private Origin keyAt;
        private long size = 1;
        private int height = 1;

        Open(Origin at, boolean map) {
            this.at = at;
            this.keys = map ? new LinkedHashMap<>() : null;
            this.items = map ? List.of() : new ArrayList<>();
            this.keyAt = at;
        }
    }

    void begin(Origin at, boolean map) throws TreeException {
        Open parent = open.peek();
        if (parent != null && parent.keys != null && parent.key == null) {
            throw new TreeException(at, "a key must be plain text, not a map or a list");
        }
        if (open.size() >= DEPTH) {
            throw new TreeException(
                    at, "maps and lists are nested more than " + DEPTH + " levels deep");
        }
        count(at, 1);
        open.push(new Open(at, map));
    }

    /** Ends the collection begun last and returns it. */
    Node end() throws TreeException {
        Open done = open.pop();
        Node node =
                done.keys == null
                        ? new Node.Items(done.at, done.items)
                        : new Node.Fields(done.at, done.keys);
        Measure measure = new Measure(done.size, done.height);
        measures.put(node, measure);
        place(node, measure);
        return node;
    }

    /** Adds a scalar: a key if a key is expected, else a value. */
    void scalar(Node.Scalar scalar) throws TreeException {
        count(scalar.at(), 1);
        Open parent = open.peek();
        if (parent != null && parent.keys != null && parent.key == null) {
            parent.key = scalar.text();
            parent.keyAt = scalar.at();
        } else {
            place(scalar, Measure.SCALAR);
        }
    }

    /** Adds a node that was built before, for an alias. */
    void again(Origin at, Node node) throws TreeException {
        Open parent = open.peek();
        if (parent != null && parent.keys != null && parent.key == null) {
            throw new TreeException(at, "a key must be plain text, not an alias");
        }
        Measure measure = measures.getOrDefault(node, Measure.SCALAR);
        if (open.size() + measure.height() > DEPTH) {
            throw new TreeException(
                    at,
                    "with this alias, maps and lists are nested more than "
                            + DEPTH
                            + " levels deep");
        }
        count(at, measure.size());
        place(node, measure);
    }

    private void count(Origin at, long more) throws TreeException {
        values += more;
        if (values > VALUES) {
            throw new TreeException(
                    at, "the file has more than " + VALUES + " values, aliases counted each time");
        }
    }

    private void place(Node node, Measure measure) {
        Open parent = open.peek();
        if (parent == null) {
            root = node;
            return;
        }
        if (parent.keys == null) {
            parent.items.add(node);
        } else {
            String key = parent.key;
            parent.key = null;
            if (key == null) {
                throw new IllegalStateException("a value without a key");
            }
            Node.Entry first = parent.keys.putIfAbsent(key, new Node.Entry(parent.keyAt, node));
            if (first != null) {
                problems.error(
                        parent.keyAt,
                        "key "
                                + QuoteText.of(key)
                                + " is repeated; it first occurs in line "
                                + first.keyAt().line());
                return;
            }
        }
        parent.size += measure.size();
        parent.height = Math.max(parent.height, 1 + measure.height());
    }

    /** Returns the whole tree; null if the file had no value. */
    @Nullable Node root() {
        return root;
    }
}
