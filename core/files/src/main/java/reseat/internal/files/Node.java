package reseat.internal.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;
import reseat.text.QuoteText;

/**
 * A value of a YAML or JSON file with its location. Immutable; an alias shares the node of its
 * anchor.
 */
sealed interface Node {

    /** Returns the file that contains the value. */
    String file();

    /** Returns where the value begins, as a {@link Spot}. */
    long spot();

    /** Returns where the value begins. */
    Origin at();

    /** Returns whether it is the empty value. */
    default boolean isNull() {
        return isEmpty(this);
    }

    /** Returns whether any node is the empty value; faster where it is called often. */
    static boolean isEmpty(@Nullable Node node) {
        return node instanceof Scalar scalar && scalar.kind() == ScalarKind.NULL;
    }

    /** Returns a description for messages. */
    String describe();

    /** The resolved type of a scalar. */
    enum ScalarKind {
        TEXT,
        NUMBER,
        BOOL,
        NULL
    }

    /**
     * A single value.
     *
     * @param file the file that contains it
     * @param spot where it begins, as a {@link Spot}
     * @param kind its resolved type
     * @param text its text as written, without quotes
     */
    record Scalar(String file, long spot, ScalarKind kind, String text) implements Node {

        Scalar(Origin at, ScalarKind kind, String text) {
            this(at.file(), Spot.of(at), kind, text);
        }

        static Scalar text(Origin at, String text) {
            return new Scalar(at, ScalarKind.TEXT, text);
        }

        @Override
        public Origin at() {
            return Spot.origin(file, spot);
        }

        @Override
        public String describe() {
            return kind == ScalarKind.NULL ? "nothing" : QuoteText.of(text);
        }
    }

    /**
     * A list.
     *
     * @param file the file that contains it
     * @param spot where it begins, as a {@link Spot}
     * @param items its entries
     */
    record Items(String file, long spot, List<Node> items) implements Node {

        Items(Origin at, List<Node> items) {
            this(at.file(), Spot.of(at), List.copyOf(items));
        }

        @Override
        public Origin at() {
            return Spot.origin(file, spot);
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
     */
    record Entry(Origin keyAt, Node value) {}

    /**
     * A map from keys to values, in the order of the file.
     *
     * @param file the file that contains it
     * @param spot where it begins, as a {@link Spot}
     * @param entries its entries by key
     */
    record Fields(String file, long spot, EntryMap entries) implements Node {

        /** Creates fields from a copy of entries. */
        Fields(Origin at, Map<String, Entry> entries) {
            this(at.file(), Spot.of(at), EntryMap.of(entries));
        }

        @Override
        public Origin at() {
            return Spot.origin(file, spot);
        }

        /** Returns the value of a key; null if the key is missing or its value empty. */
        @Nullable Node get(String key) {
            Node value = entries.value(key);
            return Node.isEmpty(value) ? null : value;
        }

        /** Returns the fields under a key; null if it is missing or of another type. */
        @Nullable Fields fields(String key) {
            return entries.value(key) instanceof Fields fields ? fields : null;
        }

        /** Returns the text of a scalar under a key; null if it is missing or of another type. */
        @Nullable String text(String key) {
            return entries.value(key) instanceof Scalar scalar && scalar.kind() != ScalarKind.NULL
                    ? scalar.text()
                    : null;
        }

        /** Returns these fields with one of them replaced or, at the end, added. */
        Fields with(String key, Node value) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            Entry old = changed.get(key);
            changed.put(key, new Entry(old == null ? value.at() : old.keyAt(), value));
            return new Fields(at(), changed);
        }

        /** Returns these fields without some of them. */
        Fields without(String... keys) {
            if (Stream.of(keys).noneMatch(entries::containsKey)) {
                return this;
            }
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            for (String key : keys) {
                changed.remove(key);
            }
            return new Fields(at(), changed);
        }

        @Override
        public String describe() {
            return entries.isEmpty() ? "an empty map" : "a map";
        }
    }
}
