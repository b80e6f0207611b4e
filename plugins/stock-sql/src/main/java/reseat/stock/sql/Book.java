package reseat.stock.sql;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import reseat.files.SettingsFile;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/**
 * The source of the lines of a stock: our own table, or a shop's tables with its own statements.
 *
 * @param items a query with the columns id, kind, name, serves, on_hand, unit, lot, expires, place
 * @param lock a statement that locks a line while it is read; empty if none
 * @param take a statement that subtracts the used quantity from a line; empty if none
 * @param kinds meaning of the shop's words for kinds
 * @param units meaning of the shop's words for units
 * @param between what separates several numbers under serves
 */
record Book(
        String items,
        Optional<Query> lock,
        Optional<Query> take,
        Map<String, StockItem.Kind> kinds,
        Map<String, String> units,
        Pattern between) {

    private static final String COLUMNS =
            "cast(q.id as varchar(200)) as id, q.kind, q.name, q.serves, q.on_hand, q.unit, q.lot,"
                    + " q.expires, q.place";

    /** Our own table; {@link OwnStock} subtracts the used quantities, with exact arithmetic. */
    static Book own(Make make, String schema) {
        String table = make.tables(schema) + "item";
        return new Book(
                "select id, kind, name, serves, on_hand, unit, lot, expires, place from " + table,
                lock(make, "select id from " + table + " where id = :item for update"),
                Optional.empty(),
                Map.of(),
                Map.of(),
                Pattern.compile(Pattern.quote("|")));
    }

    /** In SQLite a writing transaction excludes all others; no lock is needed. */
    private static Optional<Query> lock(Make make, String statement) {
        return make == Make.SQLITE ? Optional.empty() : Optional.of(Query.of(statement));
    }

    /** Reads the queries for a shop's own tables; see core/docs/stock.md. */
    static Book read(Make make, Path path) throws BadInputException {
        SettingsFile file = SettingsFile.read(path);
        List<Problem> problems =
                new ArrayList<>(
                        file.unknown(
                                List.of("items", "lock", "take", "between", "kinds/*", "units/*")));
        if (file.text("items").isEmpty()) {
            problems.add(
                    Problem.error(
                            new Origin(file.file(), 0, 0),
                            "\"items\" is missing: a query with the columns id, kind, name, serves,"
                                    + " on_hand, unit, lot, expires, place"));
        }
        for (String name : List.of("lock", "take")) {
            file.first(name)
                    .filter(entry -> !Query.of(entry.text()).names().contains("item"))
                    .ifPresent(
                            entry ->
                                    problems.add(
                                            Problem.error(
                                                    entry.at(),
                                                    "\"" + name + "\" must contain :item")));
        }
        Map<String, StockItem.Kind> kinds = new LinkedHashMap<>();
        file.below("kinds")
                .forEach(
                        (word, entry) ->
                                kind(entry.text())
                                        .ifPresentOrElse(
                                                kind -> kinds.put(word, kind),
                                                () ->
                                                        problems.add(
                                                                Problem.error(
                                                                        entry.at(),
                                                                        "found \""
                                                                                + entry.text()
                                                                                + "\", expected part, screw,"
                                                                                + " consumable or tool"))));
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        Map<String, String> units = new LinkedHashMap<>();
        file.below("units").forEach((word, entry) -> units.put(word, entry.text()));
        return new Book(
                Query.of(file.text("items").orElseThrow()).sql(),
                file.text("lock").flatMap(statement -> lock(make, statement)),
                file.text("take").map(Query::of),
                kinds,
                units,
                Pattern.compile(Pattern.quote(file.text("between").orElse("|"))));
    }

    /** Returns a query for all lines with their held quantities. */
    String all(String held) {
        return "select "
                + COLUMNS
                + ", coalesce(h.reserved, 0) as h_reserved, coalesce(h.used, 0) as h_used from ("
                + items
                + ") q left join "
                + held
                + " h on h.item = cast(q.id as varchar(200))";
    }

    /** Returns a query for one line. */
    String one() {
        return "select "
                + COLUMNS
                + ", 0 as h_reserved, 0 as h_used from ("
                + items
                + ") q where cast(q.id as varchar(200)) = ?";
    }

    /**
     * Converts a row to a line, less the used quantity; the reserved quantity is capped at the
     * rest.
     */
    StockItem line(ResultSet row, Held.Amounts held) throws SQLException, StockException {
        String id = row.getString("id");
        if (id == null || id.isEmpty()) {
            throw bad("a row of the query \"items\" has no id");
        }
        BigDecimal onHand = Cells.number(row, "on_hand", "line " + id);
        if (onHand == null || onHand.signum() < 0) {
            throw bad("line " + id + ": on_hand is " + onHand + ", expected a number from zero");
        }
        String word = Cells.text(row, "kind").orElse("");
        StockItem.Kind kind =
                Optional.ofNullable(kinds.get(word))
                        .or(() -> kind(word))
                        .orElseThrow(
                                () ->
                                        bad(
                                                "line "
                                                        + id
                                                        + ": kind is \""
                                                        + word
                                                        + "\"; \"kinds\" in the mapping defines"
                                                        + " the shop's words"));
        List<String> serves =
                Arrays.stream(between.split(Cells.text(row, "serves").orElse(""), -1))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .distinct()
                        .toList();
        String unit = Cells.text(row, "unit").orElse("piece");
        BigDecimal left = onHand.subtract(held.used()).max(BigDecimal.ZERO);
        return new StockItem(
                id,
                kind,
                Cells.text(row, "name").orElse(id),
                serves.isEmpty() ? List.of(id) : serves,
                left,
                held.reserved().min(left),
                units.getOrDefault(unit, unit),
                Cells.text(row, "lot"),
                Cells.day(row, "expires", "line " + id),
                Cells.text(row, "place"));
    }

    private static Optional<StockItem.Kind> kind(String word) {
        return Arrays.stream(StockItem.Kind.values())
                .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    private static StockException bad(String message) {
        return new StockException(StockException.Kind.BAD_INPUT, message);
    }
}
