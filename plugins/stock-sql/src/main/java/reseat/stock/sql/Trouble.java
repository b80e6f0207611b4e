package reseat.stock.sql;

import java.sql.SQLException;
import java.util.Set;

/** What it means that a database refused. */
enum Trouble {
    /** The connection is gone, or was never there; what was asked last may be done or not. */
    LOST,
    /** Others were in the way; nothing was done, and it is worth to try again. */
    AGAIN,
    /** It will not go better a second time. */
    LASTING;

    // 40001, 40P01, 55P03: PostgreSQL could not serialise, found a deadlock, did not get a lock.
    // 23505: two clients added the same row at once, and the second now finds it.
    // HYT00, 90131: H2 waited too long for a lock, or saw the row change.
    private static final Set<String> IN_THE_WAY =
            Set.of("40001", "40P01", "55P03", "23505", "HYT00", "90131");

    // 53300: too many connections. 90020: another program has the file open. 90007, 90067,
    // 90098, 90121: H2 has closed the connection or the database.
    private static final Set<String> AWAY =
            Set.of("53300", "90020", "90007", "90067", "90098", "90121");

    static Trouble of(SQLException thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            String state = each instanceof SQLException e ? e.getSQLState() : null;
            if (state == null) {
                continue;
            }
            if (IN_THE_WAY.contains(state)) {
                return AGAIN;
            }
            // class 08: connection; class 57P: the server was shut down, crashed or is starting
            if (state.startsWith("08") || state.startsWith("57P") || AWAY.contains(state)) {
                return LOST;
            }
        }
        return LASTING;
    }
}
