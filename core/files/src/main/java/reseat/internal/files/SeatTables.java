package reseat.internal.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.model.Ids;
import reseat.model.Origin;
import reseat.text.CsvException;
import reseat.text.CsvText;
import reseat.text.CsvText.Cell;
import reseat.text.QuoteText;

/** Adds the rows of CSV seat tables to the joints of a device tree. */
final class SeatTables {

    private static final List<String> COLUMNS =
            List.of(
                    "joint",
                    "seat",
                    "screw",
                    "x",
                    "y",
                    "form",
                    "thread",
                    "material",
                    "clamped",
                    "threaded",
                    "depth",
                    "bossOuter",
                    "behind",
                    "torque",
                    "torqueSource",
                    "pass",
                    "formedCycles");
    private static final Set<String> NUMBERS = Set.of("x", "y", "pass", "formedCycles");
    private static final Set<String> LENGTHS = Set.of("clamped", "threaded", "depth", "bossOuter");
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("^([-+]?[0-9]*),([0-9]+)(?![0-9,.])");
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][-+]?[0-9]+)?");

    private final Problems problems;

    /** The table that is read, as messages name it. */
    private String shown = "";

    private SeatTables(Problems problems) {
        this.problems = problems;
    }

    /**
     * Adds the tables that a device names.
     *
     * @param device the device tree
     * @param file the device file; tables are in the same folder
     * @param problems collects the errors
     * @return the tree with every row as a seat of its joint
     */
    static Node.Fields add(Node.Fields device, Path file, Problems problems) {
        Node tables = device.get("seatTable");
        Node.Fields result = device;
        List<Node> names =
                tables instanceof Node.Items list
                        ? list.items()
                        : tables == null ? List.of() : List.of(tables);
        for (Node name : names) {
            if (name instanceof Node.Scalar scalar) {
                result = new SeatTables(problems).addTable(result, scalar, file);
            }
        }
        return result;
    }

    private Node.Fields addTable(Node.Fields device, Node.Scalar name, Path file) {
        String text = name.text();
        if (text.isBlank()
                || text.contains("/")
                || text.contains("\\")
                || text.equals("..")
                || text.indexOf(0) >= 0) {
            problems.error(
                    name.at(),
                    "found " + name.describe() + ", expected the name of a file beside this one");
            return device;
        }
        Path table;
        try {
            table = file.resolveSibling(text);
        } catch (InvalidPathException e) {
            problems.error(
                    name.at(), "found " + name.describe() + ", which is not a valid file name");
            return device;
        }
        if (!Files.exists(table)) {
            problems.error(name.at(), "there is no file " + name.describe() + " beside this one");
            return device;
        }
        shown = table.toString();
        Optional<byte[]> content = Sources.load(table, shown, problems);
        if (content.isEmpty()) {
            return device;
        }
        try {
            String csv = Trees.decode(shown, content.get());
            return addRows(device, CsvText.rows(csv));
        } catch (TreeException e) {
            problems.error(e.at(), e.text());
            return device;
        } catch (CsvException e) {
            problems.error(new Origin(shown, e.line(), e.column()), e.text());
            return device;
        }
    }

    private Node.Fields addRows(Node.Fields device, List<List<Cell>> rows) {
        if (rows.isEmpty()) {
            problems.error(
                    new Origin(shown, 1, 1), "the table is empty; its first row names the columns");
            return device;
        }
        List<String> header = header(rows.get(0));
        if (!header.contains("joint") || !header.contains("seat")) {
            return device;
        }
        Node.Fields joints = device.fields("joints");
        if (joints == null) {
            return device;
        }
        // grouped by joint: a map of seats is copied once per table, not once per row
        Map<String, Map<String, Node.Entry>> added = new LinkedHashMap<>();
        for (List<Cell> row : rows.subList(1, rows.size())) {
            row(header, row, joints, added);
        }
        Node.Fields result = joints;
        for (Map.Entry<String, Map<String, Node.Entry>> each : added.entrySet()) {
            Node.Fields joint = result.fields(each.getKey());
            if (joint != null) {
                Node.Fields seats = joint.fields("seats");
                Map<String, Node.Entry> all = new LinkedHashMap<>();
                if (seats != null) {
                    all.putAll(seats.entries());
                }
                all.putAll(each.getValue());
                Origin at =
                        seats == null
                                ? each.getValue().values().iterator().next().keyAt()
                                : seats.at();
                result = result.with(each.getKey(), joint.with("seats", new Node.Fields(at, all)));
            }
        }
        return device.with("joints", result);
    }

    private List<String> header(List<Cell> cells) {
        List<String> names = new ArrayList<>();
        for (Cell cell : cells) {
            String column =
                    COLUMNS.stream()
                            .filter(each -> each.equalsIgnoreCase(cell.text()))
                            .findFirst()
                            .orElse(cell.text());
            if (!COLUMNS.contains(column) && !column.isEmpty()) {
                problems.error(
                        at(cell),
                        "unknown column "
                                + QuoteText.of(column)
                                + "."
                                + Words.hint(column, COLUMNS, "columns"));
            } else if (!column.isEmpty() && names.contains(column)) {
                problems.error(at(cell), "column " + QuoteText.of(column) + " is repeated");
            }
            names.add(column);
        }
        for (String needed : List.of("joint", "seat")) {
            if (!names.contains(needed)) {
                problems.error(
                        at(cells.get(0)), "the column " + QuoteText.of(needed) + " is missing");
            }
        }
        return names;
    }

    private void row(
            List<String> header,
            List<Cell> row,
            Node.Fields joints,
            Map<String, Map<String, Node.Entry>> added) {
        Origin at = at(row.get(0));
        if (row.size() != header.size()) {
            problems.error(
                    at,
                    "this row has " + row.size() + " cells, but the header has " + header.size());
            return;
        }
        Cell joint = row.get(header.indexOf("joint"));
        Cell seat = row.get(header.indexOf("seat"));
        if (!(joints.get(joint.text()) instanceof Node.Fields entry)) {
            problems.shared(
                    "joint entry " + joint.text(),
                    at(joint),
                    "joint: there is no joint entry "
                            + QuoteText.of(joint.text())
                            + "."
                            + Words.hint(joint.text(), joints.entries().keySet(), "joint entries"));
            return;
        }
        if (!Ids.valid(seat.text())) {
            problems.error(
                    at(seat), "seat: found " + QuoteText.of(seat.text()) + ", expected an id");
            return;
        }
        Node.Fields before = entry.fields("seats");
        Map<String, Node.Entry> seats =
                added.computeIfAbsent(joint.text(), id -> new LinkedHashMap<>());
        Node.Entry first = before == null ? null : before.entries().get(seat.text());
        if (first == null) {
            first = seats.get(seat.text());
        }
        if (first != null) {
            problems.error(
                    at(seat),
                    "seat "
                            + QuoteText.of(seat.text())
                            + " of "
                            + joint.text()
                            + " is already defined at "
                            + first.keyAt());
            return;
        }
        Map<String, Node.Entry> facts = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            String column = header.get(i);
            Cell cell = row.get(i);
            if (!cell.text().isEmpty()
                    && !column.equals("joint")
                    && !column.equals("seat")
                    && COLUMNS.contains(column)) {
                facts.put(column, new Node.Entry(at(cell), value(column, cell)));
            }
        }
        seats.put(seat.text(), new Node.Entry(at, new Node.Fields(at, facts)));
    }

    private Node value(String column, Cell cell) {
        if (NUMBERS.contains(column)) {
            String text = point(cell.text());
            boolean number = NUMBER.matcher(text).matches();
            return new Node.Scalar(
                    at(cell), number ? Node.ScalarKind.NUMBER : Node.ScalarKind.TEXT, text);
        }
        if (LENGTHS.contains(column)) {
            return Node.Scalar.text(at(cell), withUnit(cell.text(), " mm"));
        }
        if (column.equals("torque")) {
            return Node.Scalar.text(at(cell), withUnit(cell.text(), " N·m"));
        }
        return column.equals("behind") ? behind(cell) : Node.Scalar.text(at(cell), cell.text());
    }

    private Node behind(Cell cell) {
        List<Node> all = new ArrayList<>();
        for (String each : cell.text().split(";", -1)) {
            if (each.isBlank()) {
                continue;
            }
            String[] partAndGap = each.strip().split("\\s+", 2);
            if (partAndGap.length < 2) {
                problems.error(
                        at(cell),
                        "behind: found "
                                + QuoteText.of(each.strip())
                                + ", expected a part and a gap, such as cell 0.6 mm");
                continue;
            }
            Map<String, Node.Entry> one = new LinkedHashMap<>();
            one.put("part", new Node.Entry(at(cell), Node.Scalar.text(at(cell), partAndGap[0])));
            one.put(
                    "gap",
                    new Node.Entry(
                            at(cell), Node.Scalar.text(at(cell), withUnit(partAndGap[1], " mm"))));
            all.add(new Node.Fields(at(cell), one));
        }
        return new Node.Items(at(cell), all);
    }

    private Origin at(Cell cell) {
        return new Origin(shown, cell.line(), cell.column());
    }

    private static String withUnit(String text, String unit) {
        String number = point(text.strip());
        return NUMBER.matcher(number).matches() ? number + unit : number;
    }

    /**
     * Replaces a decimal comma by a point; if commas separate cells, it can only occur in a quoted
     * cell.
     */
    private static String point(String text) {
        return DECIMAL_COMMA.matcher(text).replaceFirst("$1.$2");
    }
}
