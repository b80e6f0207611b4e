package reseat.internal.files;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Creates strings from the texts in a file and deduplicates short ones: a device with a hundred
 * joints contains "holds" a hundred times. The keys of the format are interned in advance, so that
 * most comparisons are identity checks.
 */
final class TextMemory {

    private static final int SLOTS = 1024;

    /** Up to here, the first and the last eight bytes of a text are all of it. */
    private static final int LONGEST = 16;

    private static final VarHandle EIGHT =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private final byte[] in;
    private final @Nullable String[] texts;

    /** Of the text in each slot, its first eight bytes and, from the ninth on, its last eight. */
    private final long[] ends;

    TextMemory(byte[] in) {
        this.in = in;
        this.texts = FormatKeys.LAID_OUT.texts.clone();
        this.ends = FormatKeys.LAID_OUT.ends.clone();
    }

    private TextMemory(byte[] in, @Nullable String[] texts, long[] ends) {
        this.in = in;
        this.texts = texts;
        this.ends = ends;
    }

    /** The keys of the format. */
    private static final class FormatKeys {
        private static final TextMemory LAID_OUT = layOut();

        private static TextMemory layOut() {
            Set<String> keys = new HashSet<>();
            collect(Format.DEVICE, keys);
            @Nullable String[] texts = new String[SLOTS];
            long[] ends = new long[2 * SLOTS];
            // sorted: which of two keys of one slot is kept must not depend on hash order
            keys.stream()
                    .sorted()
                    .forEach(
                            key -> {
                                byte[] ascii = key.getBytes(StandardCharsets.US_ASCII);
                                new TextMemory(ascii, texts, ends).keep(key);
                            });
            return new TextMemory(new byte[0], texts, ends);
        }

        private static void collect(Shape shape, Set<String> keys) {
            if (shape instanceof Shape.Group group) {
                group.keys()
                        .forEach(
                                (name, key) -> {
                                    if (name.length() <= LONGEST) {
                                        keys.add(name);
                                    }
                                    collect(key.shape(), keys);
                                });
            } else if (shape instanceof Shape.Table table) {
                collect(table.value(), keys);
            } else if (shape instanceof Shape.Several several) {
                collect(several.item(), keys);
            } else if (shape instanceof Shape.Either either) {
                collect(either.full(), keys);
            }
        }
    }

    /** Stores a text. */
    private void keep(String key) {
        long first = first(0, in.length);
        long last = last(0, in.length);
        int slot = slot(first, last, in.length);
        texts[slot] = key;
        ends[2 * slot] = first;
        ends[2 * slot + 1] = last;
    }

    private long first(int from, int length) {
        return length < 8 ? few(from, length) : (long) EIGHT.get(in, from);
    }

    private long last(int from, int length) {
        return length <= 8 ? 0 : (long) EIGHT.get(in, from + length - 8);
    }

    /** Returns up to seven bytes as one number. */
    private long few(int from, int length) {
        if (length > 0 && from + 8 <= in.length) {
            // the first byte is the lowest: shift out what comes after the text
            return (long) EIGHT.get(in, from) << (8 * (8 - length));
        }
        long all = 0;
        for (int i = 0; i < length; i++) {
            all |= (in[from + i] & 0xFFL) << (8 * (8 - length + i));
        }
        return all;
    }

    private static int slot(long first, long last, int length) {
        long all = (first ^ Long.rotateLeft(last, 17)) + length;
        return (int) ((all * 0x9E3779B97F4A7C15L) >>> 54);
    }

    /**
     * Returns the text of some bytes.
     *
     * @param from the first byte
     * @param to the byte after the last; all are ASCII
     */
    @SuppressWarnings("deprecation") // the fastest constructor for ASCII bytes
    String text(int from, int to) {
        int length = to - from;
        if (length > LONGEST) {
            return new String(in, 0, from, length);
        }
        long first = first(from, length);
        long last = last(from, length);
        int slot = slot(first, last, length);
        String known = texts[slot];
        if (known != null
                && ends[2 * slot] == first
                && ends[2 * slot + 1] == last
                && known.length() == length) {
            return known;
        }
        String made = new String(in, 0, from, length);
        texts[slot] = made;
        ends[2 * slot] = first;
        ends[2 * slot + 1] = last;
        return made;
    }
}
