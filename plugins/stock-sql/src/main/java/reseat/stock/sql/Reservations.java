package reseat.stock.sql;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.stock.Reservation;

/** The rows of reservations and their picks. */
final class Reservations {

    private final Make make;
    private final String tables;
    private final String rows;

    Reservations(Make make, String schema) {
        this.make = make;
        this.tables = make.tables(schema);
        this.rows =
                "select r.id, r.job, r.state, p.item, p.quantity, p.comes_back from "
                        + tables
                        + "reservation r join "
                        + tables
                        + "pick p on p.reservation = r.id where ";
    }

    /**
     * A reservation as it is in the database.
     *
     * @param comeBack lines of which what is used comes back
     */
    record Row(Reservation reservation, Set<String> comeBack) {}

    Optional<Row> find(Connection connection, String id) throws SQLException {
        try (PreparedStatement ask = connection.prepareStatement(rows + "r.id = ? order by p.nr")) {
            ask.setString(1, id);
            return read(ask).stream().findFirst();
        }
    }

    /** Keeps others from changing a reservation until the transaction ends. */
    void lock(Connection connection, String id) throws SQLException {
        if (make == Make.SQLITE) {
            return; // a writing transaction locks the whole file
        }
        try (PreparedStatement ask =
                connection.prepareStatement(
                        "select id from " + tables + "reservation where id = ? for update")) {
            ask.setString(1, id);
            ask.execute();
        }
    }

    List<Reservation> open(Connection connection) throws SQLException {
        try (PreparedStatement ask =
                connection.prepareStatement(rows + "r.state = 'reserved' order by r.seq, p.nr")) {
            return read(ask).stream().map(Row::reservation).toList();
        }
    }

    private static List<Row> read(PreparedStatement ask) throws SQLException {
        Map<String, Gathered> found = new LinkedHashMap<>();
        try (ResultSet rows = ask.executeQuery()) {
            while (rows.next()) {
                String id = rows.getString(1);
                String job = rows.getString(2);
                String state = rows.getString(3).toUpperCase(Locale.ROOT);
                Gathered one =
                        found.computeIfAbsent(
                                id, i -> new Gathered(job, Reservation.State.valueOf(state)));
                one.picks.add(new Reservation.Pick(rows.getString(4), rows.getBigDecimal(5)));
                if (rows.getBoolean(6)) {
                    one.comeBack.add(rows.getString(4));
                }
            }
        }
        List<Row> all = new ArrayList<>();
        found.forEach(
                (id, one) ->
                        all.add(
                                new Row(
                                        new Reservation(
                                                new Reservation.Request(id, one.job, one.picks),
                                                one.state),
                                        one.comeBack)));
        return all;
    }

    private static final class Gathered {
        private final String job;
        private final Reservation.State state;
        private final List<Reservation.Pick> picks = new ArrayList<>();
        private final Set<String> comeBack = new TreeSet<>();

        Gathered(String job, Reservation.State state) {
            this.job = job;
            this.state = state;
        }
    }

    void add(Connection connection, Reservation.Request request) throws SQLException {
        try (PreparedStatement add =
                connection.prepareStatement(
                        "insert into "
                                + tables
                                + "reservation (id, job, state) values (?, ?, 'reserved')")) {
            add.setString(1, request.id());
            add.setString(2, request.job());
            add.executeUpdate();
        }
    }

    void addPick(Connection connection, String id, int nr, Reservation.Pick pick, boolean comesBack)
            throws SQLException {
        try (PreparedStatement add =
                connection.prepareStatement(
                        "insert into "
                                + tables
                                + "pick (reservation, nr, item, quantity, comes_back)"
                                + " values (?, ?, ?, ?, ?)")) {
            add.setString(1, id);
            add.setInt(2, nr);
            add.setString(3, pick.item());
            make.set(add, 4, pick.quantity());
            add.setBoolean(5, comesBack);
            add.executeUpdate();
        }
    }

    void set(Connection connection, String id, Reservation.State state) throws SQLException {
        try (PreparedStatement change =
                connection.prepareStatement(
                        "update " + tables + "reservation set state = ? where id = ?")) {
            change.setString(1, state.name().toLowerCase(Locale.ROOT));
            change.setString(2, id);
            change.executeUpdate();
        }
    }

    /** Returns the open reservations of a line. */
    List<String> holders(Connection connection, String item) throws SQLException {
        List<String> ids = new ArrayList<>();
        for (Reservation each : open(connection)) {
            if (each.request().picks().stream().anyMatch(pick -> pick.item().equals(item))) {
                ids.add(each.id());
            }
        }
        return ids;
    }
}
