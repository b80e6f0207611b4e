package reseat.internal.read;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Entries in the order of their file; never changes. A device file has hundreds of maps with a
 * handful of keys, for which two arrays cost a third of the memory of a hash map, and less time.
 */
final class EntryMap extends AbstractMap<String, Node.Entry> {

    /** Up to here, comparing one key after the other is the quickest. */
    private static final int FEW = 12;

    private final String[] keys;
    private final Node.Entry[] entries;

    /** For more than a few keys, where each is to be found by its hash; else empty. */
    private final int[] slots;

    private final int size;

    /**
     * Makes a map that takes the arrays over.
     *
     * @param keys the keys
     * @param entries their entries; where a key stands twice, the map has fewer than these
     */
    EntryMap(String[] keys, Node.Entry[] entries) {
        this.keys = keys;
        this.entries = entries;
        this.slots = new int[keys.length <= FEW ? 0 : Integer.highestOneBit(keys.length) << 2];
        int different = 0;
        for (int i = 0; i < keys.length; i++) {
            if (slots.length > 0) {
                int slot = slot(keys[i]);
                different += slots[slot] == 0 ? 1 : 0;
                slots[slot] = i + 1;
            } else {
                different += find(keys[i], i) < 0 ? 1 : 0;
            }
        }
        this.size = different;
    }

    /** Returns the slot of a key, or the free one where it would belong. */
    private int slot(String key) {
        int hash = key.hashCode();
        int at = (hash ^ hash >>> 15) & slots.length - 1;
        while (slots[at] != 0 && !keys[slots[at] - 1].equals(key)) {
            at = at + 1 & slots.length - 1;
        }
        return at;
    }

    private int find(Object key) {
        if (slots.length > 0) {
            return key instanceof String text ? slots[slot(text)] - 1 : -1;
        }
        return find(key, keys.length);
    }

    private int find(Object key, int end) {
        int hash = key.hashCode();
        for (int i = 0; i < end; i++) {
            if (keys[i].hashCode() == hash && keys[i].equals(key)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public Node.@Nullable Entry get(Object key) {
        int at = find(key);
        return at < 0 ? null : entries[at];
    }

    @Override
    public boolean containsKey(Object key) {
        return find(key) >= 0;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public void forEach(BiConsumer<? super String, ? super Node.Entry> action) {
        for (int i = 0; i < keys.length; i++) {
            action.accept(keys[i], entries[i]);
        }
    }

    @Override
    public Set<Map.Entry<String, Node.Entry>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return keys.length;
            }

            @Override
            public Iterator<Map.Entry<String, Node.Entry>> iterator() {
                return new Iterator<>() {
                    private int next;

                    @Override
                    public boolean hasNext() {
                        return next < keys.length;
                    }

                    @Override
                    public Map.Entry<String, Node.Entry> next() {
                        if (next == keys.length) {
                            throw new NoSuchElementException();
                        }
                        int at = next++;
                        return Map.entry(keys[at], entries[at]);
                    }
                };
            }
        };
    }
}
