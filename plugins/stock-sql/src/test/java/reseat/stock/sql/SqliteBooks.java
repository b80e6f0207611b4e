package reseat.stock.sql;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import reseat.stock.Reservation;

/**
 * What is in a SQLite file, read with nothing of the code under test, compared with what programs
 * have acknowledged.
 */
final class SqliteBooks {

    private final Map<String, Reservation.State> states = new LinkedHashMap<>();
    private final Map<String, Map<String, BigDecimal>> picks = new HashMap<>();
    private final Map<String, BigDecimal> onHand = new TreeMap<>();
    private final Map<String, BigDecimal> reserved = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    private SqliteBooks() {}

    static SqliteBooks read(Path file) throws SQLException {
        SqliteBooks books = new SqliteBooks();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (List<String> row : rows(statement, "pragma integrity_check")) {
                if (!row.get(0).equals("ok")) {
                    books.wrong.add("integrity: " + row);
                }
            }
            rows(statement, "pragma foreign_key_check")
                    .forEach(row -> books.wrong.add("points to nothing: " + row));
            if (rows(statement, "select 1 from sqlite_master where name = 'reseat_item'")
                    .isEmpty()) {
                return books; // killed before it made its tables
            }
            rows(statement, "select id, state from reseat_reservation order by seq")
                    .forEach(
                            row ->
                                    books.states.put(
                                            row.get(0),
                                            Reservation.State.valueOf(
                                                    row.get(1).toUpperCase(Locale.ROOT))));
            rows(statement, "select reservation, item, quantity from reseat_pick")
                    .forEach(
                            row ->
                                    books.picks
                                            .computeIfAbsent(row.get(0), id -> new TreeMap<>())
                                            .put(row.get(1), new BigDecimal(row.get(2))));
            rows(statement, "select id, on_hand from reseat_item")
                    .forEach(row -> books.onHand.put(row.get(0), new BigDecimal(row.get(1))));
            rows(statement, "select item, reserved, used from reseat_held")
                    .forEach(
                            row -> {
                                books.reserved.put(row.get(0), new BigDecimal(row.get(1)));
                                if (new BigDecimal(row.get(2)).signum() != 0) {
                                    books.wrong.add("used twice over: " + row);
                                }
                            });
        }
        return books;
    }

    private static List<List<String>> rows(Statement statement, String question)
            throws SQLException {
        List<List<String>> all = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery(question)) {
            while (rows.next()) {
                List<String> row = new ArrayList<>();
                for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                    row.add(String.valueOf(rows.getString(i)));
                }
                all.add(row);
            }
        }
        return all;
    }

    /** Returns how many reservations there are. */
    int size() {
        return states.size();
    }

    /** Returns acknowledged reservations, uses and releases that are not there. */
    List<String> lost(Map<String, Reservation.State> acknowledged) {
        List<String> lost = new ArrayList<>();
        acknowledged.forEach(
                (id, said) -> {
                    Reservation.State there = states.get(id);
                    boolean kept =
                            there == said
                                    || (said == Reservation.State.RESERVED
                                            && there == Wish.end(id));
                    if (!kept) {
                        lost.add(id + " was " + said + " and is " + there);
                    }
                });
        return lost;
    }

    /** Returns transactions of which a part is missing, and sums that do not agree. */
    List<String> halves() {
        List<String> halves = new ArrayList<>(wrong);
        Map<String, BigDecimal> held = new HashMap<>();
        Map<String, BigDecimal> used = new HashMap<>();
        states.forEach(
                (id, state) -> {
                    Map<String, BigDecimal> there = picks.getOrDefault(id, Map.of());
                    Map<String, BigDecimal> wanted = new TreeMap<>();
                    Wish.of(id).picks().forEach(pick -> wanted.put(pick.item(), pick.quantity()));
                    if (!wanted.equals(there)) {
                        halves.add(id + " has " + there + " in place of " + wanted);
                    }
                    if (state != Reservation.State.RESERVED && state != Wish.end(id)) {
                        halves.add(id + " is " + state + ", which nobody wanted");
                    }
                    if (state != Reservation.State.RELEASED) {
                        Map<String, BigDecimal> sums =
                                state == Reservation.State.USED ? used : held;
                        there.forEach((item, n) -> sums.merge(item, n, BigDecimal::add));
                    }
                });
        if (!onHand.isEmpty() && onHand.size() != 20) {
            halves.add("there are " + onHand.size() + " lines in place of 20");
        }
        onHand.forEach(
                (item, there) ->
                        compare(
                                item + " on hand",
                                BigDecimal.valueOf(KilledProgram.ON_HAND)
                                        .subtract(used.getOrDefault(item, BigDecimal.ZERO)),
                                there,
                                halves));
        reserved.forEach(
                (item, there) ->
                        compare(
                                item + " reserved",
                                held.getOrDefault(item, BigDecimal.ZERO),
                                there,
                                halves));
        held.keySet().stream()
                .filter(item -> !reserved.containsKey(item))
                .forEach(item -> halves.add(item + " is reserved and not held"));
        return halves;
    }

    private static void compare(
            String what, BigDecimal wanted, BigDecimal there, List<String> wrong) {
        if (wanted.compareTo(there) != 0) {
            wrong.add(what + ": " + there + " in place of " + wanted);
        }
    }
}
