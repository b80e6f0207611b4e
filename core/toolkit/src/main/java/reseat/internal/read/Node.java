package reseat.internal.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;

/**
 * A value of a YAML or JSON file that knows where it stands. Immutable; an alias shares the node of
 * its anchor.
 */
sealed interface Node {

    /** Returns where the value begins. */
    Origin at();

    /** Returns how many values it counts with everything inside, aliases counted each time. */
    long size();

    /** Returns how many collections lie within each other at most, itself included. */
    int height();

    /** Tells whether it is the empty value. */
    default boolean isNull() {
        return this instanceof Scalar scalar && scalar.kind() == ScalarKind.NULL;
    }

    /** Returns what it is, for a message. */
    String describe();

    /** What a scalar was resolved to. */
    enum ScalarKind {
        TEXT,
        NUMBER,
        BOOL,
        NULL
    }

    /**
     * A single value.
     *
     * @param at where it begins
     * @param kind what it is
     * @param text its text as written, without quotes
     */
    record Scalar(Origin at, ScalarKind kind, String text) implements Node {

        static Scalar text(Origin at, String text) {
            return new Scalar(at, ScalarKind.TEXT, text);
        }

        @Override
        public long size() {
            return 1;
        }

        @Override
        public int height() {
            return 0;
        }

        @Override
        public String describe() {
            return kind == ScalarKind.NULL ? "nothing" : Words.quote(text);
        }
    }

    /**
     * A list.
     *
     * @param at where it begins
     * @param items its entries
     * @param size as {@link Node#size()}
     * @param height as {@link Node#height()}
     */
    record Items(Origin at, List<Node> items, long size, int height) implements Node {

        Items(Origin at, List<Node> items) {
            this(at, List.copyOf(items), sizeOf(items), heightOf(items));
        }

        private static long sizeOf(List<Node> items) {
            long size = 1;
            for (Node item : items) {
                size += item.size();
            }
            return size;
        }

        private static int heightOf(List<Node> items) {
            int height = 0;
            for (Node item : items) {
                height = Math.max(height, item.height());
            }
            return 1 + height;
        }

        @Override
        public String describe() {
            return items.isEmpty() ? "an empty list" : "a list";
        }
    }

    /**
     * One entry of a {@link Fields}.
     *
     * @param keyAt where the key stands
     * @param value the value
     */
    record Entry(Origin keyAt, Node value) {}

    /**
     * A map from keys to values, in the order of the file.
     *
     * @param at where it begins
     * @param entries its entries by key
     * @param size as {@link Node#size()}
     * @param height as {@link Node#height()}
     */
    record Fields(Origin at, Map<String, Entry> entries, long size, int height) implements Node {

        /** Makes fields of entries that nobody changes any more. */
        Fields(Origin at, Map<String, Entry> entries) {
            this(
                    at,
                    entries instanceof EntryMap ? entries : Collections.unmodifiableMap(entries),
                    sizeOf(entries),
                    heightOf(entries));
        }

        private static long sizeOf(Map<String, Entry> entries) {
            long size = 1;
            for (Entry entry : entries.values()) {
                size += entry.value().size();
            }
            return size;
        }

        private static int heightOf(Map<String, Entry> entries) {
            int height = 0;
            for (Entry entry : entries.values()) {
                height = Math.max(height, entry.value().height());
            }
            return 1 + height;
        }

        /** Returns the value of a key; null if the key is missing or its value empty. */
        @Nullable Node get(String key) {
            Entry entry = entries.get(key);
            return entry == null || entry.value().isNull() ? null : entry.value();
        }

        /** Returns the fields under a key; null if there is something else or nothing. */
        @Nullable Fields fields(String key) {
            return get(key) instanceof Fields fields ? fields : null;
        }

        /** Returns the text of a scalar under a key; null if there is something else or nothing. */
        @Nullable String text(String key) {
            return get(key) instanceof Scalar scalar ? scalar.text() : null;
        }

        /** Returns these fields with one of them replaced or, at the end, added. */
        Fields with(String key, Node value) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            Entry old = changed.get(key);
            changed.put(key, new Entry(old == null ? value.at() : old.keyAt(), value));
            return new Fields(at, changed);
        }

        /** Returns these fields without some of them. */
        Fields without(String... keys) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            for (String key : keys) {
                changed.remove(key);
            }
            return new Fields(at, changed);
        }

        @Override
        public String describe() {
            return entries.isEmpty() ? "an empty map" : "a map";
        }
    }
}
