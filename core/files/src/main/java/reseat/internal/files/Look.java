package reseat.internal.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Scalars.WrongValue;
import reseat.model.Duration;
import reseat.model.Origin;
import reseat.model.Point;

/**
 * Typed access to a map that {@link ShapeCheck} has checked. Invalid values have been reported
 * there and count as missing here, so that later checks can still examine the rest.
 */
final class Look {

    private final Node.Fields fields;

    /** Wraps a node; an empty map if it is not a map. */
    Look(@Nullable Node node, Origin at) {
        this.fields =
                node instanceof Node.Fields map
                        ? map
                        : new Node.Fields(at.file(), Spot.of(at), EntryMap.NONE);
    }

    private Look(Node.Fields fields) {
        this.fields = fields;
    }

    Origin at() {
        return fields.at();
    }

    /** Returns the location of a key, or of the map if the key is missing. */
    Origin at(String key) {
        Node node = fields.get(key);
        return node == null ? fields.at() : node.at();
    }

    boolean has(String key) {
        return fields.get(key) != null;
    }

    Optional<String> text(String key) {
        return Optional.ofNullable(fields.text(key));
    }

    String text(String key, String otherwise) {
        String text = fields.text(key);
        return text == null ? otherwise : text;
    }

    boolean flag(String key, boolean otherwise) {
        boolean given =
                fields.entries().value(key) instanceof Node.Scalar scalar
                        && scalar.kind() == Node.ScalarKind.BOOL;
        return given ? Boolean.parseBoolean(fields.text(key)) : otherwise;
    }

    OptionalInt count(String key) {
        if (fields.entries().value(key) instanceof Node.Scalar scalar
                && SureScalars.sound(ScalarType.COUNT, scalar)) {
            return OptionalInt.of(SureScalars.few(scalar));
        }
        return scalar(key, s -> Scalars.number(ScalarType.COUNT, s))
                .map(value -> OptionalInt.of(value.intValue()))
                .orElse(OptionalInt.empty());
    }

    /** Returns a length under a key, or under the same with {@code Mm}, in millimetres. */
    OptionalDouble mm(String key) {
        return real(key, ScalarType.SEAT_LENGTH, key + "Mm", ScalarType.MM);
    }

    /** Returns a torque under a key, or under the same with {@code Nm}, in newton metres. */
    OptionalDouble nm(String key) {
        return real(key, ScalarType.SEAT_TORQUE, key + "Nm", ScalarType.NM);
    }

    private OptionalDouble real(String key, ScalarType type, String bareKey, ScalarType bareType) {
        return scalar(key, s -> Scalars.number(type, s))
                .or(() -> scalar(bareKey, s -> Scalars.number(bareType, s)))
                .map(value -> OptionalDouble.of(real(value)))
                .orElse(OptionalDouble.empty());
    }

    /** Removes the sign of values too small to differ from zero. */
    static double real(BigDecimal value) {
        return value.doubleValue() + 0.0;
    }

    Optional<BigDecimal> number(String key, ScalarType type) {
        return scalar(key, s -> Scalars.number(type, s));
    }

    /** Returns a time under a key. */
    Optional<Duration> time(String key, Duration.Basis stated) {
        return scalar(key, s -> Scalars.duration(s, stated));
    }

    /** Returns a time in milliseconds under one key, or in bare milliseconds under another. */
    OptionalLong ms(String key, String bareKey) {
        long bare =
                fields.entries().value(bareKey) instanceof Node.Scalar scalar
                        ? SureScalars.few(scalar)
                        : -1;
        if (bare >= 0 && bare <= Duration.MAX_MS && (key.equals(bareKey) || !has(key))) {
            return OptionalLong.of(bare);
        }
        return time(key, Duration.Basis.DEVICE)
                .map(Duration::ms)
                .or(
                        () ->
                                scalar(bareKey, s -> Scalars.number(ScalarType.MS, s))
                                        .map(BigDecimal::longValue))
                .map(OptionalLong::of)
                .orElse(OptionalLong.empty());
    }

    /** Returns the texts of a list, or a single text in place of the list. */
    List<String> texts(String key) {
        List<Node> nodes = nodes(key);
        if (nodes.isEmpty()) {
            return List.of();
        }
        String[] all = new String[nodes.size()];
        int count = 0;
        for (int i = 0; i < all.length; i++) {
            if (nodes.get(i) instanceof Node.Scalar scalar
                    && scalar.kind() != Node.ScalarKind.NULL) {
                all[count++] = scalar.text();
            }
        }
        return List.of(count == all.length ? all : Arrays.copyOf(all, count));
    }

    /** Returns the texts of a list that is there, if only an empty one. */
    Optional<List<String>> statedTexts(String key) {
        return has(key) ? Optional.of(texts(key)) : Optional.empty();
    }

    private List<Node> nodes(String key) {
        Node node = fields.get(key);
        if (node instanceof Node.Items list) {
            return list.items();
        }
        return node == null ? List.of() : List.of(node);
    }

    /** Returns the maps of a list, or a single map in place of the list. */
    List<Look> looks(String key) {
        return nodes(key).stream().map(node -> new Look(node, node.at())).toList();
    }

    /** Returns the points of a list. */
    List<Point> points(String key) {
        List<Point> all = new ArrayList<>();
        for (Node node : nodes(key)) {
            if (node instanceof Node.Items point && point.items().size() == 2) {
                Optional<BigDecimal> x =
                        of(point.items().get(0), s -> Scalars.number(ScalarType.COORDINATE, s));
                Optional<BigDecimal> y =
                        of(point.items().get(1), s -> Scalars.number(ScalarType.COORDINATE, s));
                if (x.isPresent() && y.isPresent()) {
                    all.add(new Point(real(x.get()), real(y.get())));
                }
            }
        }
        return all;
    }

    /** Returns the map under a key, or an empty one. */
    Look look(String key) {
        Node node = fields.get(key);
        return node instanceof Node.Fields map ? new Look(map) : new Look(node, at(key));
    }

    /** Returns the entries of the map under a key; a short form counts as an empty map. */
    Map<String, Look> table(String key) {
        Map<String, Look> all = new LinkedHashMap<>();
        each(key, all::put);
        return all;
    }

    /** Passes the entries of the map under a key to a consumer, as {@link #table} returns them. */
    void each(String key, BiConsumer<String, Look> action) {
        Node.Fields table = fields.fields(key);
        EntryMap entries = table == null ? EntryMap.NONE : table.entries();
        for (int i = 0; i < entries.size(); i++) {
            Node value = entries.value(i);
            if (value instanceof Node.Fields map) {
                action.accept(entries.key(i), new Look(map));
            } else if (!value.isNull()) {
                action.accept(entries.key(i), new Look(value, entries.keyAt(i)));
            }
        }
    }

    /** Returns the entries of this map. */
    Node.Fields fields() {
        return fields;
    }

    private <T> Optional<T> scalar(String key, Reading<T> reading) {
        Node node = fields.get(key);
        return node == null ? Optional.empty() : of(node, reading);
    }

    private static <T> Optional<T> of(Node node, Reading<T> reading) {
        try {
            return node instanceof Node.Scalar scalar && !node.isNull()
                    ? Optional.of(reading.read(scalar))
                    : Optional.empty();
        } catch (WrongValue e) {
            // reported by ShapeCheck
            return Optional.empty();
        }
    }

    /** How a scalar is read. */
    private interface Reading<T> {
        T read(Node.Scalar scalar) throws WrongValue;
    }
}
