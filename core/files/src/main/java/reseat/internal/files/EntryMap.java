package reseat.internal.files;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;

/**
 * Entries in the order of their file; never changes. A device file has hundreds of maps with a
 * handful of keys, for which arrays need a fraction of the memory of a hash map, and less time;
 * entries are created on demand.
 */
final class EntryMap extends AbstractMap<String, Node.Entry> {

    static final EntryMap NONE = new EntryMap(Keys.NONE, new String[0], new long[0], new Node[0]);

    private final Keys keys;

    /** The files that contain the keys; a single one if it is the same for all. */
    private final String[] files;

    private final long[] spots;
    private final Node[] values;
    private final boolean nulls;

    /**
     * Creates a map that takes ownership of the arrays.
     *
     * @param keys the keys, all different
     * @param files the files that they stand in, or the one for all of them
     * @param spots where they stand in these, as {@link Spot}s
     */
    EntryMap(Keys keys, String[] files, long[] spots, Node[] values) {
        this.keys = keys;
        this.files = files;
        this.spots = spots;
        this.values = values;
        boolean empty = false;
        for (Node value : values) {
            empty |= Node.isEmpty(value);
        }
        this.nulls = empty;
    }

    /** Returns the entries of another map. */
    static EntryMap of(Map<String, Node.Entry> map) {
        if (map instanceof EntryMap same) {
            return same;
        }
        int size = map.size();
        String[] names = new String[size];
        String[] files = new String[size];
        long[] spots = new long[size];
        Node[] values = new Node[size];
        int i = 0;
        for (Map.Entry<String, Node.Entry> each : map.entrySet()) {
            Origin at = each.getValue().keyAt();
            names[i] = each.getKey();
            files[i] = at.file();
            spots[i] = Spot.of(at);
            values[i++] = each.getValue().value();
        }
        return new EntryMap(new Keys(names), files, spots, values);
    }

    Keys keys() {
        return keys;
    }

    String key(int i) {
        return keys.get(i);
    }

    Origin keyAt(int i) {
        return Spot.origin(file(i), spots[i]);
    }

    private String file(int i) {
        return files[files.length == 1 ? 0 : i];
    }

    Node value(int i) {
        return values[i];
    }

    /** Returns the value of a key; null if there is none. */
    @Nullable Node value(String key) {
        int i = keys.find(key);
        return i < 0 ? null : values[i];
    }

    /** Returns whether a value is empty. */
    boolean hasNulls() {
        return nulls;
    }

    private Node.Entry entry(int i) {
        return new Node.Entry(keyAt(i), values[i]);
    }

    @Override
    public Node.@Nullable Entry get(Object key) {
        int i = key instanceof String text ? keys.find(text) : -1;
        return i < 0 ? null : entry(i);
    }

    @Override
    public boolean containsKey(Object key) {
        return key instanceof String text && keys.find(text) >= 0;
    }

    @Override
    public int size() {
        return values.length;
    }

    @Override
    public void forEach(BiConsumer<? super String, ? super Node.Entry> action) {
        for (int i = 0; i < values.length; i++) {
            action.accept(keys.get(i), entry(i));
        }
    }

    @Override
    public Set<String> keySet() {
        return new View<>(keys::get) {
            @Override
            public boolean contains(Object key) {
                return containsKey(key);
            }
        };
    }

    @Override
    public Set<Map.Entry<String, Node.Entry>> entrySet() {
        return new View<>(i -> Map.entry(keys.get(i), entry(i)));
    }

    /** Entries of a map while some of them change. */
    static final class Draft {
        private final EntryMap from;
        private final String[] names;
        private final String[] files;
        private final long[] spots;
        private final @Nullable Node[] values;
        private int size;
        private boolean less;

        /**
         * Starts with the entries of a map.
         *
         * @param from the map
         * @param most how many entries will be added at most
         */
        Draft(EntryMap from, int most) {
            this.from = from;
            this.size = from.size();
            this.names = new String[size + most];
            this.files = new String[size + most];
            this.spots = Arrays.copyOf(from.spots, size + most);
            this.values = Arrays.copyOf(from.values, size + most);
            for (int i = 0; i < size; i++) {
                names[i] = from.key(i);
                files[i] = from.file(i);
            }
        }

        void remove(int i) {
            values[i] = null;
            less = true;
        }

        /** Replaces a value; the location of its key is kept. */
        void set(int i, Node value) {
            values[i] = value;
        }

        /** Replaces a value, with the location of its key in another map. */
        void set(int i, EntryMap other, int there, Node value) {
            files[i] = other.file(there);
            spots[i] = other.spots[there];
            values[i] = value;
        }

        /** Adds a value at the end, under a key of another map. */
        void add(EntryMap other, int there, Node value) {
            names[size] = other.key(there);
            set(size++, other, there, value);
        }

        /** Returns the entries as they are now. */
        EntryMap map() {
            int kept = 0;
            for (int i = 0; i < size; i++) {
                if (values[i] != null) {
                    names[kept] = names[i];
                    files[kept] = files[i];
                    spots[kept] = spots[i];
                    values[kept++] = values[i];
                }
            }
            boolean same = !less && kept == from.size();
            return new EntryMap(
                    same ? from.keys : new Keys(Arrays.copyOf(names, kept)),
                    Arrays.copyOf(files, kept),
                    Arrays.copyOf(spots, kept),
                    Arrays.copyOf(values, kept));
        }
    }

    /** A set view of the entries. */
    private class View<T> extends AbstractSet<T> {
        private final IntFunction<T> item;

        View(IntFunction<T> item) {
            this.item = item;
        }

        @Override
        public int size() {
            return values.length;
        }

        @Override
        public Iterator<T> iterator() {
            return new Iterator<>() {
                private int next;

                @Override
                public boolean hasNext() {
                    return next < values.length;
                }

                @Override
                public T next() {
                    if (next == values.length) {
                        throw new NoSuchElementException();
                    }
                    return item.apply(next++);
                }
            };
        }
    }
}
