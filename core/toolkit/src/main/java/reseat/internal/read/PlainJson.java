package reseat.internal.read;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;

/**
 * Makes a tree of JSON that is as it should be, in one go over its bytes. It judges nothing: of
 * whatever is wrong, rare or out of bounds it makes no tree at all, and {@link JsonEvents}, which
 * has the words for what is wrong, begins anew. So each tree it makes is the one that {@link
 * JsonEvents} would make; only in a tenth of the time.
 */
final class PlainJson {

    private static final int LONGEST_NUMBER = 40;
    private static final VarHandle EIGHT =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long EIGHT_BLANKS = 0x2020202020202020L;

    private final String name;
    private final byte[] in;
    private final TextMemory texts;
    private int at;
    private int line = 1;

    /** Where the line begins; moved on where a character takes more bytes than places. */
    private int lineStart;

    private long values;

    /** Entries of the collections that have begun and not ended, the innermost last. */
    private String[] keys = new String[64];

    private Origin[] keysAt = new Origin[64];
    private Node[] nodes = new Node[64];
    private int top;

    private PlainJson(String name, byte[] in) {
        this.name = name;
        this.in = in;
        this.texts = new TextMemory(in);
    }

    /** Thrown where the text is not plain; nobody looks into it. */
    private static final class NotPlain extends Exception {
        private static final long serialVersionUID = 1L;

        NotPlain() {
            super(null, null, false, false);
        }
    }

    /** Returns the tree of a text; null if it is not plain JSON. */
    static @Nullable Node parse(String name, byte[] content) {
        PlainJson json = new PlainJson(name, content);
        try {
            int first = json.blank();
            if (first != '{') {
                return null;
            }
            Node root = json.value(first, 0);
            return json.blank() < 0 ? root : null;
        } catch (NotPlain e) {
            return null;
        }
    }

    /** Goes over blanks and line ends; returns the byte that follows, or -1 at the end. */
    private int blank() throws NotPlain {
        int i = at;
        while (i < in.length) {
            byte b = in[i];
            if (b == '\n') {
                line++;
                lineStart = i + 1;
                // most bytes of a file are the blanks before its lines
                while (i + 9 <= in.length) {
                    long other = (long) EIGHT.get(in, i + 1) ^ EIGHT_BLANKS;
                    i += Long.numberOfTrailingZeros(other) >>> 3;
                    if (other != 0) {
                        break;
                    }
                }
            } else if (b != ' ' && b != '\t') {
                if (b != '\r') {
                    at = i;
                    return b < 0 ? 0 : b;
                }
                if (i + 1 == in.length || in[i + 1] != '\n') {
                    throw new NotPlain();
                }
            }
            i++;
        }
        at = i;
        return -1;
    }

    private Origin here() {
        return new Origin(name, line, at - lineStart + 1);
    }

    private Node value(int first, int depth) throws NotPlain {
        if (++values > TreeBuilder.VALUES) {
            throw new NotPlain();
        }
        Origin origin = here();
        return switch (first) {
            case '"' -> new Node.Scalar(origin, Node.ScalarKind.TEXT, text());
            case '{' -> map(origin, depth);
            case '[' -> list(origin, depth);
            case 't' -> word(origin, Node.ScalarKind.BOOL, "true");
            case 'f' -> word(origin, Node.ScalarKind.BOOL, "false");
            case 'n' -> word(origin, Node.ScalarKind.NULL, "null");
            default -> number(origin);
        };
    }

    private void push(String key, Origin keyAt, Node node) {
        if (top == nodes.length) {
            keys = Arrays.copyOf(keys, 2 * top);
            keysAt = Arrays.copyOf(keysAt, 2 * top);
            nodes = Arrays.copyOf(nodes, 2 * top);
        }
        keys[top] = key;
        keysAt[top] = keyAt;
        nodes[top++] = node;
    }

    private Node map(Origin origin, int depth) throws NotPlain {
        int from = top;
        int next = enter(depth);
        while (next != '}') {
            if (next != '"' || ++values > TreeBuilder.VALUES) {
                throw new NotPlain();
            }
            Origin keyAt = here();
            String key = text();
            if (blank() != ':') {
                throw new NotPlain();
            }
            at++;
            push(key, keyAt, value(blank(), depth + 1));
            next = afterEntry('}');
        }
        at++;
        int count = top - from;
        Node.Entry[] entries = new Node.Entry[count];
        long size = 1;
        int height = 0;
        for (int i = 0; i < count; i++) {
            Node node = nodes[from + i];
            entries[i] = new Node.Entry(keysAt[from + i], node);
            size += node.size();
            height = Math.max(height, node.height());
        }
        EntryMap map = new EntryMap(Arrays.copyOfRange(keys, from, top), entries);
        if (map.size() < count) {
            throw new NotPlain();
        }
        top = from;
        return new Node.Fields(origin, map, size, 1 + height);
    }

    private Node list(Origin origin, int depth) throws NotPlain {
        int from = top;
        int next = enter(depth);
        while (next != ']') {
            push("", origin, value(next, depth + 1));
            next = afterEntry(']');
        }
        at++;
        long size = 1;
        int height = 0;
        for (int i = from; i < top; i++) {
            size += nodes[i].size();
            height = Math.max(height, nodes[i].height());
        }
        List<Node> items = List.of(Arrays.copyOfRange(nodes, from, top));
        Node list = new Node.Items(origin, items, size, 1 + height);
        top = from;
        return list;
    }

    private int enter(int depth) throws NotPlain {
        if (depth >= TreeBuilder.DEPTH) {
            throw new NotPlain();
        }
        at++;
        return blank();
    }

    /** Goes over the comma after an entry; returns what follows: an entry or the end. */
    private int afterEntry(char end) throws NotPlain {
        int next = blank();
        if (next == ',') {
            at++;
            next = blank();
            if (next != end) {
                return next;
            }
        } else if (next == end) {
            return next;
        }
        throw new NotPlain();
    }

    private Node word(Origin origin, Node.ScalarKind kind, String word) throws NotPlain {
        for (int i = 0; i < word.length(); i++) {
            if (at == in.length || in[at++] != word.charAt(i)) {
                throw new NotPlain();
            }
        }
        endOfValue();
        return new Node.Scalar(origin, kind, word);
    }

    private void endOfValue() throws NotPlain {
        if (at == in.length || " \t\r\n,]}".indexOf(in[at]) < 0) {
            throw new NotPlain();
        }
    }

    private Node number(Origin origin) throws NotPlain {
        int from = at;
        if (at < in.length && in[at] == '-') {
            at++;
        }
        int first = at;
        digits();
        if (in[first] == '0' && at - first > 1) {
            throw new NotPlain();
        }
        if (at < in.length && in[at] == '.') {
            at++;
            digits();
        }
        if (at < in.length && (in[at] | 0x20) == 'e') {
            at++;
            if (at < in.length && (in[at] == '-' || in[at] == '+')) {
                at++;
            }
            digits();
        }
        endOfValue();
        if (at - from > LONGEST_NUMBER) {
            throw new NotPlain();
        }
        return new Node.Scalar(origin, Node.ScalarKind.NUMBER, texts.text(from, at));
    }

    private void digits() throws NotPlain {
        int from = at;
        while (at < in.length && in[at] >= '0' && in[at] <= '9') {
            at++;
        }
        if (at == from) {
            throw new NotPlain();
        }
    }

    private String text() throws NotPlain {
        int from = at + 1;
        int i = from;
        while (i + 8 <= in.length) {
            long special = special((long) EIGHT.get(in, i));
            i += Long.numberOfTrailingZeros(special) >>> 3;
            if (special != 0) {
                break;
            }
        }
        while (i < in.length && in[i] >= ' ' && in[i] != '"' && in[i] != '\\' && in[i] != 0x7F) {
            i++;
        }
        if (i < in.length && in[i] == '"') {
            at = i + 1;
            return texts.text(from, i);
        }
        return rareText(from);
    }

    /**
     * Finds the first of eight bytes that may not just be taken into a text: a quote, a backslash,
     * or what is no printable ASCII. The lowest bit set in the result lies in that byte; bits above
     * it mean nothing.
     */
    private static long special(long eight) {
        long quote = eight ^ 0x2222222222222222L;
        long escape = eight ^ 0x5C5C5C5C5C5C5C5CL;
        long delete = eight ^ 0x7F7F7F7F7F7F7F7FL;
        long ones = 0x0101010101010101L;
        // a byte of a difference goes below zero here if it was zero, and a byte of text if it was
        // below a blank
        long below =
                ((quote - ones) & ~quote)
                        | ((escape - ones) & ~escape)
                        | ((delete - ones) & ~delete)
                        | (eight - EIGHT_BLANKS)
                        | eight;
        return below & 0x8080808080808080L;
    }

    /** Reads a text with characters beyond ASCII, or with the usual escapes. */
    private String rareText(int from) throws NotPlain {
        at = from;
        StringBuilder out = new StringBuilder();
        while (at < in.length && in[at] != '"') {
            if (in[at] == '\\') {
                int which = at + 1 < in.length ? "\"\\/bfnrt".indexOf(in[at + 1]) : -1;
                if (which < 0) {
                    throw new NotPlain();
                }
                out.append("\"\\/\b\f\n\r\t".charAt(which));
                at += 2;
            } else {
                int begin = at;
                while (at < in.length && in[at] != '"' && in[at] != '\\') {
                    at++;
                }
                String run = new String(in, begin, at - begin, StandardCharsets.UTF_8);
                if (Trees.strange(run)) {
                    throw new NotPlain();
                }
                out.append(run);
                lineStart += at - begin - run.length();
            }
        }
        if (at == in.length) {
            throw new NotPlain();
        }
        at++;
        return out.toString();
    }
}
