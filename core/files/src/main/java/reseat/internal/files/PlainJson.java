package reseat.internal.files;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.files.PlainTokens.NotPlain;

/**
 * Builds a tree from well-formed JSON, in one pass over its bytes. It reports no errors: for
 * anything wrong, rare or out of bounds it builds no tree, and {@link JsonEvents}, which reports
 * errors, starts over. So each tree it builds is the one that {@link JsonEvents} would build, in a
 * fraction of the time.
 */
final class PlainJson {

    private static final int LAYOUTS = 256;

    private final String name;
    private final String[] files;
    private final PlainTokens tokens;
    private long values;

    /** Entries of the collections that have begun and not ended, the innermost last. */
    private String[] keys = new String[256];

    private long[] spots = new long[256];
    private Node[] nodes = new Node[256];
    private int top;

    /** Keys that maps had so far, by their hash: most maps have the same as one before. */
    private final @Nullable Keys[] layouts = new Keys[LAYOUTS];

    /** The keys of the last map that was as deep within others. */
    private final @Nullable Keys[] expected = new Keys[TreeBuilder.DEPTH];

    private PlainJson(String name, byte[] in) {
        this.name = name;
        this.files = new String[] {name};
        this.tokens = new PlainTokens(in);
    }

    /** Returns the tree of a text; null if it is not plain JSON. */
    static @Nullable Node parse(String name, byte[] content) {
        PlainJson json = new PlainJson(name, content);
        try {
            int first = json.tokens.next();
            if (first != '{') {
                return null;
            }
            Node root = json.value(first, 0);
            return json.tokens.next() < 0 ? root : null;
        } catch (NotPlain e) {
            return null;
        }
    }

    private Node value(int first, int depth) throws NotPlain {
        count();
        long spot = tokens.spot();
        return switch (first) {
            case '"' -> new Node.Scalar(name, spot, Node.ScalarKind.TEXT, tokens.text());
            case '{' -> map(spot, depth);
            case '[' -> list(spot, depth);
            case 't' -> word(spot, Node.ScalarKind.BOOL, "true");
            case 'f' -> word(spot, Node.ScalarKind.BOOL, "false");
            case 'n' -> word(spot, Node.ScalarKind.NULL, "null");
            default -> new Node.Scalar(name, spot, Node.ScalarKind.NUMBER, tokens.number());
        };
    }

    private Node word(long spot, Node.ScalarKind kind, String word) throws NotPlain {
        tokens.word(word);
        return new Node.Scalar(name, spot, kind, word);
    }

    private void count() throws NotPlain {
        if (++values > TreeBuilder.VALUES) {
            throw new NotPlain();
        }
    }

    private void push(String key, long spot, Node node) {
        if (top == nodes.length) {
            keys = Arrays.copyOf(keys, 2 * top);
            spots = Arrays.copyOf(spots, 2 * top);
            nodes = Arrays.copyOf(nodes, 2 * top);
        }
        keys[top] = key;
        spots[top] = spot;
        nodes[top++] = node;
    }

    private Node map(long spot, int depth) throws NotPlain {
        int from = top;
        int next = enter(depth);
        while (next != '}') {
            if (next != '"') {
                throw new NotPlain();
            }
            count();
            long keyAt = tokens.spot();
            String key = key(expected[depth], top - from);
            if (tokens.next() != ':') {
                throw new NotPlain();
            }
            push(key, keyAt, value(tokens.stepAndNext(), depth + 1));
            next = afterEntry('}');
        }
        tokens.step();
        int to = top;
        top = from;
        if (from == to) {
            return new Node.Fields(name, spot, EntryMap.NONE);
        }
        Keys layout = expected[depth];
        if (layout == null || !layout.are(keys, from, to)) {
            layout = layout(from, to);
            if (layout.different() < to - from) {
                throw new NotPlain();
            }
            expected[depth] = layout;
        }
        EntryMap entries =
                new EntryMap(
                        layout,
                        files,
                        Arrays.copyOfRange(spots, from, to),
                        Arrays.copyOfRange(nodes, from, to));
        return new Node.Fields(name, spot, entries);
    }

    /** Reads a key, most quickly if it is the one that the map before had in the same place. */
    private String key(@Nullable Keys before, int i) throws NotPlain {
        if (before != null && i < before.count()) {
            byte[] plain = before.plain(i);
            if (plain.length > 0 && tokens.skip(plain)) {
                return before.get(i);
            }
        }
        return tokens.text();
    }

    private Keys layout(int from, int to) {
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + keys[i].hashCode();
        }
        int slot = (hash ^ hash >>> 16) & LAYOUTS - 1;
        Keys known = layouts[slot];
        if (known == null || !known.are(keys, from, to)) {
            known = new Keys(Arrays.copyOfRange(keys, from, to));
            layouts[slot] = known;
        }
        return known;
    }

    private Node list(long spot, int depth) throws NotPlain {
        int from = top;
        int next = enter(depth);
        while (next != ']') {
            push("", spot, value(next, depth + 1));
            next = afterEntry(']');
        }
        tokens.step();
        int to = top;
        top = from;
        List<Node> items =
                switch (to - from) {
                    case 0 -> List.of();
                    case 1 -> List.of(nodes[from]);
                    case 2 -> List.of(nodes[from], nodes[from + 1]);
                    default -> List.of(Arrays.copyOfRange(nodes, from, to));
                };
        return new Node.Items(name, spot, items);
    }

    private int enter(int depth) throws NotPlain {
        if (depth >= TreeBuilder.DEPTH) {
            throw new NotPlain();
        }
        return tokens.stepAndNext();
    }

    /** Goes over the comma after an entry; returns what follows: an entry or the end. */
    private int afterEntry(char end) throws NotPlain {
        int next = tokens.next();
        if (next == ',') {
            next = tokens.stepAndNext();
            if (next != end) {
                return next;
            }
        } else if (next == end) {
            return next;
        }
        throw new NotPlain();
    }
}
