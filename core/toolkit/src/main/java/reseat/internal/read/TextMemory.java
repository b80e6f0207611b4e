package reseat.internal.read;

import java.io.ByteArrayOutputStream;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Makes strings of the texts in a file, each but once where it is short: a device of a hundred
 * joints says "holds" a hundred times. The keys of the format are known from the start, as the very
 * strings that the code asks for, so that most comparisons end before they begin.
 */
final class TextMemory {

    private static final int SLOTS = 1024;
    private static final int LONGEST = 24;
    private static final VarHandle EIGHT =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private final byte[] in;
    private final @Nullable String[] texts;

    /**
     * Where the text of a slot stands in the file; from -1 downwards, in the keys of the format.
     */
    private final int[] places;

    TextMemory(byte[] in) {
        this.in = in;
        this.texts = FormatKeys.TEXTS.clone();
        this.places = FormatKeys.PLACES.clone();
    }

    /** The keys of the format, laid out as this memory lays out its texts. */
    private static final class FormatKeys {
        private static final @Nullable String[] TEXTS = new String[SLOTS];
        private static final int[] PLACES = new int[SLOTS];
        private static final byte[] BYTES = layOut();

        private static byte[] layOut() {
            Set<String> keys = new HashSet<>();
            collect(Format.DEVICE, keys);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            // sorted: which of two keys of one slot is kept must not hang on hash order
            keys.stream()
                    .sorted()
                    .forEach(
                            key -> {
                                byte[] ascii = key.getBytes(StandardCharsets.US_ASCII);
                                int slot = slot(ascii, 0, ascii.length);
                                TEXTS[slot] = key;
                                PLACES[slot] = -1 - bytes.size();
                                bytes.writeBytes(ascii);
                            });
            // no key stands so near the end that eight bytes could not be taken from it
            bytes.writeBytes(new byte[8]);
            return bytes.toByteArray();
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

    /** Eight bytes say enough to find a text; what is found is compared in full. */
    private static int slot(byte[] in, int from, int length) {
        long ends =
                length < 8
                        ? few(in, from, length)
                        : (long) EIGHT.get(in, from)
                                ^ Long.rotateLeft((long) EIGHT.get(in, from + length - 8), 17);
        return (int) (((ends + length) * 0x9E3779B97F4A7C15L) >>> 54);
    }

    /** Returns up to seven bytes as one number. */
    private static long few(byte[] in, int from, int length) {
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

    /**
     * Returns the text of some bytes.
     *
     * @param from the first byte
     * @param to the byte after the last; all are ASCII
     */
    @SuppressWarnings("deprecation") // the constructor for bytes that are characters; quickest
    String text(int from, int to) {
        int length = to - from;
        if (length > LONGEST) {
            return new String(in, 0, from, length);
        }
        int slot = slot(in, from, length);
        String known = texts[slot];
        if (known != null && known.length() == length && same(places[slot], from, length)) {
            return known;
        }
        String made = new String(in, 0, from, length);
        texts[slot] = made;
        places[slot] = from;
        return made;
    }

    private boolean same(int place, int from, int length) {
        byte[] other = place < 0 ? FormatKeys.BYTES : in;
        int begin = place < 0 ? -1 - place : place;
        int done = 0;
        for (; done + 8 <= length; done += 8) {
            if ((long) EIGHT.get(other, begin + done) != (long) EIGHT.get(in, from + done)) {
                return false;
            }
        }
        int rest = length - done;
        return few(other, begin + done, rest) == few(in, from + done, rest);
    }
}
