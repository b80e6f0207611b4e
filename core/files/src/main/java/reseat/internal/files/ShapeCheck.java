package reseat.internal.files;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Scalars.WrongValue;
import reseat.internal.files.Shape.FormatKey;
import reseat.internal.files.Shape.Scope;
import reseat.model.Ids;
import reseat.model.Origin;
import reseat.text.ListText;
import reseat.text.QuoteText;

/** Checks a tree against the description of the format and reports every difference. */
final class ShapeCheck {

    /** Up to this size, the entries of a list are compared pairwise. */
    private static final int FEW = 8;

    /** What a decimal comma leaves behind it. */
    private static final Pattern AFTER_COMMA = Pattern.compile("[0-9]+(\\s*[^0-9\\s].*)?");

    private final KnownIds known;
    private final boolean resolved;
    private final Problems problems;
    private final Defaults defaults;

    ShapeCheck(KnownIds known, boolean resolved, Problems problems) {
        this(known, resolved, problems, Defaults.NONE);
    }

    /**
     * Creates a check of a tree merged with defaults.
     *
     * @param known the ids that may be named
     * @param resolved whether no default applies
     * @param problems collects the errors
     * @param defaults the defaults, if they are sound with these ids; what the tree has from them
     *     unchanged is not examined again
     */
    ShapeCheck(KnownIds known, boolean resolved, Problems problems, Defaults defaults) {
        this.known = known;
        this.resolved = resolved;
        this.problems = problems;
        this.defaults = defaults;
    }

    /**
     * Checks a value.
     *
     * @param label what the value is, for messages
     * @param node the value
     * @param shape what it should be
     */
    void check(String label, Node node, Shape shape) {
        if (node instanceof Node.Scalar scalar && surely(scalar, shape)) {
            return;
        }
        if (defaults.sound(node)) {
            return;
        }
        if (shape instanceof Shape.Either either) {
            check(label, node, node instanceof Node.Fields ? either.full() : either.brief());
        } else if (shape instanceof Shape.Group group) {
            group(label, node, group);
        } else if (shape instanceof Shape.Table table) {
            table(label, node, table);
        } else if (shape instanceof Shape.Several several) {
            several(label, node, several);
        } else if (shape instanceof Shape.Corner) {
            corner(label, node);
        } else if (!(shape instanceof Shape.Anything)) {
            single(label, node, shape);
        }
    }

    /** A fast test that accepts most valid scalars. */
    private boolean surely(Node.Scalar scalar, Shape shape) {
        if (shape instanceof Shape.Value value) {
            boolean bareTime = resolved && value.type() == ScalarType.TIME;
            return SureScalars.sound(bareTime ? ScalarType.MS : value.type(), scalar);
        }
        return shape instanceof Shape.Ref ref
                && scalar.kind() != Node.ScalarKind.NULL
                && known.surelyAllows(ref.scope(), scalar.text());
    }

    private void wrong(String label, Node node, String expected) {
        problems.error(node.at(), label + ": found " + node.describe() + ", expected " + expected);
    }

    private void group(String label, Node node, Shape.Group group) {
        if (!(node instanceof Node.Fields fields)) {
            wrong(label, node, "a map with the keys " + ListText.and(group.keys().keySet()));
            return;
        }
        EntryMap entries = fields.entries();
        List<FormatKey> fit = entries.keys().fit(group, resolved).keys();
        if (!fit.isEmpty() && !entries.hasNulls()) {
            for (int i = 0; i < fit.size(); i++) {
                check(fit.get(i).name(), entries.value(i), fit.get(i).shape());
            }
            return;
        }
        Set<String> cut = decimalCommas(entries);
        entries.forEach(
                (name, entry) -> {
                    FormatKey key = group.keys().get(name);
                    if (cut.contains(name)) {
                        return; // reported already
                    }
                    if (key == null || (key.need() == Shape.Need.ONLY_RESOLVED && !resolved)) {
                        problems.error(
                                entry.keyAt(),
                                label
                                        + ": unknown key "
                                        + QuoteText.of(name)
                                        + "."
                                        + Words.hint(name, names(group), "keys"));
                    } else if (!entry.value().isNull()) {
                        check(name, entry.value(), key.shape());
                    }
                });
        for (FormatKey key : group.judged()) {
            both(label, fields, key);
            if (key.need().required(resolved)
                    && fields.get(key.name()) == null
                    && fields.get(key.instead()) == null) {
                String or =
                        key.instead().isEmpty() ? "" : " (or " + QuoteText.of(key.instead()) + ")";
                problems.error(
                        fields.at(),
                        label + ": the key " + QuoteText.of(key.name()) + or + " is missing");
            }
        }
    }

    /**
     * Reports values that a decimal comma cut in two: in braces, {@code length: 1,2 mm} is a length
     * of 1 and a key "2 mm" without a value. Returns the keys concerned.
     */
    private Set<String> decimalCommas(EntryMap entries) {
        Set<String> cut = new HashSet<>();
        for (int i = 1; i < entries.size(); i++) {
            if (entries.value(i).isNull()
                    && AFTER_COMMA.matcher(entries.key(i)).matches()
                    && entries.value(i - 1) instanceof Node.Scalar whole
                    && whole.kind() == Node.ScalarKind.NUMBER) {
                problems.error(
                        whole.at(),
                        entries.key(i - 1)
                                + ": found "
                                + whole.text()
                                + ","
                                + entries.key(i)
                                + ", but numbers have a decimal point: write "
                                + whole.text()
                                + "."
                                + entries.key(i));
                cut.add(entries.key(i - 1));
                cut.add(entries.key(i));
            }
        }
        return cut;
    }

    private List<String> names(Shape.Group group) {
        return group.keys().values().stream()
                .filter(key -> resolved || key.need() != Shape.Need.ONLY_RESOLVED)
                .map(FormatKey::name)
                .toList();
    }

    private void both(String label, Node.Fields fields, FormatKey key) {
        Node.Entry here = key.speaksForBoth() ? fields.entries().get(key.name()) : null;
        if (here != null && fields.get(key.instead()) != null) {
            problems.error(
                    here.keyAt(),
                    label
                            + ": give "
                            + QuoteText.of(key.name())
                            + " or "
                            + QuoteText.of(key.instead())
                            + ", not both");
        }
    }

    private void table(String label, Node node, Shape.Table table) {
        if (!(node instanceof Node.Fields fields)) {
            wrong(label, node, "a map from ids, each to " + table.what());
            return;
        }
        EntryMap entries = fields.entries();
        for (int i = 0; i < entries.size(); i++) {
            String id = entries.key(i);
            if (!Ids.valid(id)) {
                single(
                        label,
                        Node.Scalar.text(entries.keyAt(i), id),
                        new Shape.Value(ScalarType.ID));
            } else if (table.keys() != Scope.NEW && !known.allows(table.keys(), id)) {
                unknown(label, entries.keyAt(i), id, table.keys());
            }
            Node value = entries.value(i);
            if (value.isNull()) {
                problems.error(
                        value.at(),
                        id
                                + ": found nothing, expected "
                                + table.what()
                                + "; write {} for one without facts");
            } else {
                check(id, value, table.value());
            }
        }
    }

    private void several(String label, Node node, Shape.Several several) {
        List<Node> items;
        if (node instanceof Node.Items list) {
            items = list.items();
        } else if (several.soleItemWillDo()) {
            items = List.of(node);
        } else {
            wrong(label, node, "a list");
            return;
        }
        if (items.size() < several.least()) {
            problems.error(
                    node.at(),
                    label
                            + ": found "
                            + items.size()
                            + (items.size() == 1 ? " entry" : " entries")
                            + ", expected at least "
                            + several.least());
        }
        int size = items.size();
        Set<String> seen = several.distinct() && size > FEW ? new HashSet<>() : null;
        for (int i = 0; i < size; i++) {
            Node item = items.get(i);
            check(label, item, several.item());
            if (several.distinct()
                    && item instanceof Node.Scalar scalar
                    && (seen == null ? standsBefore(items, i, scalar) : !seen.add(scalar.text()))) {
                problems.error(
                        item.at(), label + ": " + scalar.describe() + " occurs twice in this list");
            }
        }
    }

    private static boolean standsBefore(List<Node> items, int end, Node.Scalar scalar) {
        for (int i = 0; i < end; i++) {
            if (items.get(i) instanceof Node.Scalar before && before.text().equals(scalar.text())) {
                return true;
            }
        }
        return false;
    }

    private void corner(String label, Node node) {
        if (!(node instanceof Node.Items point) || point.items().size() != 2) {
            wrong(label, node, "a point: [x, y] in millimetres");
            return;
        }
        point.items().forEach(item -> check(label, item, new Shape.Value(ScalarType.COORDINATE)));
    }

    private void single(String label, Node node, Shape shape) {
        if (!(node instanceof Node.Scalar scalar) || node.isNull()) {
            wrong(label, node, expected(shape));
            return;
        }
        try {
            if (shape instanceof Shape.Value value) {
                Scalars.check(value.type(), scalar);
                if (!resolved) {
                    Scalars.unit(value.type(), scalar);
                }
            } else if (shape instanceof Shape.Choice choice) {
                Scalars.choice(choice.words(), scalar);
            } else if (shape instanceof Shape.Ref ref) {
                String id = Scalars.id(scalar);
                if (!known.allows(ref.scope(), id)) {
                    unknown(label, node.at(), id, ref.scope());
                }
            }
        } catch (WrongValue e) {
            problems.error(node.at(), label + ": " + e.text());
        }
    }

    private static String expected(Shape shape) {
        if (shape instanceof Shape.Value value) {
            return value.type().expected();
        }
        return shape instanceof Shape.Ref ref
                ? "the id of a " + ref.scope().noun()
                : "one of " + ListText.and(((Shape.Choice) shape).words());
    }

    private void unknown(String label, Origin at, String id, Scope scope) {
        problems.shared(
                scope.noun().split(" ", 2)[0] + " " + id,
                at,
                label
                        + ": there is no "
                        + scope.noun()
                        + " "
                        + QuoteText.of(id)
                        + "."
                        + Words.hint(id, new LinkedHashSet<>(known.of(scope)), scope.plural()));
    }
}
