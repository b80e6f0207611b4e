package reseat.internal.files;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The keys of a map, in the order of its file; immutable. The joints of a device tend to have the
 * same keys, so their maps share one instance.
 */
final class Keys {

    static final Keys NONE = new Keys(new String[0]);

    /** Up to this number, a key is expected in the next map too. */
    private static final int FEW = 12;

    private final String[] names;

    /** One more than the number of the key, in the slot of its hash or the next that was free. */
    private final int[] slots;

    private final int shift;
    private final int different;
    private byte[][] plain = new byte[0][];

    /** Cached result of a check of these keys, for the next map that has them. */
    private Shape.@Nullable Fit fit;

    /**
     * Creates keys that take ownership of the array.
     *
     * @param names the keys; a repeated one counts once in {@link #different}
     */
    Keys(String[] names) {
        this.names = names;
        this.slots = new int[Math.max(2, Integer.highestOneBit(names.length) << 2)];
        this.shift = Integer.numberOfLeadingZeros(slots.length) + 1;
        int count = 0;
        for (int i = 0; i < names.length; i++) {
            int slot = slot(names[i]);
            if (slots[slot] == 0) {
                slots[slot] = i + 1;
                count++;
            }
        }
        this.different = count;
    }

    /** Returns the slot of a key, or the free slot for it. */
    private int slot(String key) {
        // the golden ratio spreads keys that differ only in the last letter
        int at = (key.hashCode() * 0x9E3779B9) >>> shift;
        // keys of the format are interned: the identity check succeeds
        while (slots[at] != 0 && !names[slots[at] - 1].equals(key)) {
            at = at + 1 & slots.length - 1;
        }
        return at;
    }

    /** Returns the number of a key; -1 if it is not among these. */
    int find(String key) {
        return slots[slot(key)] - 1;
    }

    String get(int i) {
        return names[i];
    }

    /**
     * Returns the usual spelling of a key in a file, with its quotes; empty if it may be spelled
     * differently or is one of many.
     */
    byte[] plain(int i) {
        if (plain.length == 0) {
            byte[][] all = new byte[names.length][];
            for (int k = 0; k < names.length; k++) {
                all[k] = plain(names[k]);
            }
            plain = all;
        }
        return plain[i];
    }

    private byte[] plain(String name) {
        boolean same = names.length <= FEW;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            same &= c >= ' ' && c < 0x7F && c != '"' && c != '\\';
        }
        return same ? ('"' + name + '"').getBytes(StandardCharsets.US_ASCII) : new byte[0];
    }

    int count() {
        return names.length;
    }

    /** Returns how many different keys there are. */
    int different() {
        return different;
    }

    /** Returns whether these are the texts from a place of an array up to another. */
    boolean are(String[] others, int from, int to) {
        if (to - from != names.length) {
            return false;
        }
        for (int i = 0; i < names.length; i++) {
            if (!names[i].equals(others[from + i])) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns how these keys fit a group. Cached for the next map: two threads may both compute it,
     * with the same result.
     */
    @SuppressWarnings("ReferenceEquality") // one instance per group; comparing contents is slow
    Shape.Fit fit(Shape.Group group, boolean resolved) {
        Shape.Fit known = fit;
        if (known == null || known.group() != group || known.resolved() != resolved) {
            known = Shape.Fit.of(group, resolved, this);
            fit = known;
        }
        return known;
    }
}
