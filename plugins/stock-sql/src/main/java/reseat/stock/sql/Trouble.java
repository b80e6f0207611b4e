package reseat.stock.sql;

import java.sql.SQLException;
import java.util.Set;
import reseat.stock.StockException;

/** Classifies the errors of a database. */
enum Trouble {
    /** The connection failed; the last request may have been carried out or not. */
    LOST,
    /** A conflict with others; nothing was done, and a retry may succeed. */
    AGAIN,
    /** SQLite has waited for others up to its limit; nothing was done. */
    BUSY,
    /** A retry would fail as well. */
    LASTING;

    // 40001, 40P01, 55P03: PostgreSQL serialization failure, deadlock, lock not available.
    // 23505: two clients added the same row at once; a retry finds it.
    private static final Set<String> IN_THE_WAY = Set.of("40001", "40P01", "55P03", "23505");

    private static final String TOO_MANY_CONNECTIONS = "53300";

    // SQLite gives error codes instead of states
    private static final int SQLITE_BUSY = 5;
    private static final int SQLITE_LOCKED = 6;
    private static final int SQLITE_READONLY = 8;
    static final int SQLITE_CORRUPT = 11;
    private static final int SQLITE_FULL = 13;
    private static final int SQLITE_CANTOPEN = 14;
    private static final int SQLITE_NOTADB = 26;

    static Trouble of(SQLException thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            if (!(each instanceof SQLException e)) {
                continue;
            }
            String state = e.getSQLState();
            if (state == null) {
                int code = e.getErrorCode();
                if (code == SQLITE_BUSY || code == SQLITE_LOCKED) {
                    return BUSY;
                }
                continue;
            }
            if (IN_THE_WAY.contains(state)) {
                return AGAIN;
            }
            // class 08: connection; class 57P: the server was shut down, crashed or is starting
            if (state.startsWith("08")
                    || state.startsWith("57P")
                    || state.equals(TOO_MANY_CONNECTIONS)) {
                return LOST;
            }
        }
        return LASTING;
    }

    /**
     * Describes a database error for users.
     *
     * @param repeat what the user must repeat if the outcome is unknown
     */
    StockException told(Database database, String repeat, SQLException e) {
        String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("no reason given");
        String where = database.shown();
        long seconds = database.patience().toSeconds();
        return switch (this) {
            case LOST ->
                    unreachable(
                            "the database "
                                    + where
                                    + " could not be reached for "
                                    + seconds
                                    + " s ("
                                    + why
                                    + "); "
                                    + repeat,
                            e);
            case AGAIN ->
                    unreachable(
                            "other programs kept interfering in the database "
                                    + where
                                    + " ("
                                    + why
                                    + "); nothing was done, try again",
                            e);
            case BUSY ->
                    unreachable(
                            "other programs have kept the database "
                                    + where
                                    + " busy for "
                                    + seconds
                                    + " s; nothing was done, try again",
                            e);
            case LASTING ->
                    new StockException(
                            StockException.Kind.BAD_INPUT, lasting(database, where, why, e), e);
        };
    }

    private static StockException unreachable(String message, SQLException e) {
        return new StockException(StockException.Kind.UNREACHABLE, message, e);
    }

    private static String lasting(Database database, String where, String why, SQLException e) {
        int code = database.make() == Make.SQLITE ? e.getErrorCode() : 0;
        return switch (code) {
            case SQLITE_NOTADB -> where + " is not a SQLite database; it was left unchanged";
            case SQLITE_CORRUPT -> where + " is damaged (" + why + "); replace it with a good copy";
            case SQLITE_READONLY -> where + " cannot be written; nothing was done";
            case SQLITE_CANTOPEN -> where + " cannot be opened as a database";
            case SQLITE_FULL -> "the disk of " + where + " is full; nothing was done";
            default -> "the database " + where + " refused: " + why;
        };
    }
}
