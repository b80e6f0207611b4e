package reseat.stock.sql;

import java.sql.Connection;
import java.sql.SQLException;
import reseat.stock.StockException;

/**
 * Carries out work in transactions. Work is repeated when others were in the way and when the
 * connection was lost, even if that was while it was being made final: whatever is done here may be
 * done twice, because each reservation has an id and the second time finds it done.
 */
final class Transactions implements AutoCloseable {

    private static final int TRIES = 60;
    private static final long SHORTEST_PAUSE_MS = 2;
    private static final long LONGEST_PAUSE_MS = 250;

    private final Connections connections;

    Transactions(Connections connections) {
        this.connections = connections;
    }

    Database database() {
        return connections.database();
    }

    /** What is done in one transaction; may be called several times. */
    @FunctionalInterface
    interface Work<T> {
        T run(Connection connection) throws SQLException, StockException;
    }

    /**
     * Does work in a transaction, again and again for as long as there is hope and patience.
     *
     * @param repeat what the user has to repeat if it is not known whether it was done
     */
    <T> T run(String repeat, Work<T> work) throws StockException {
        long until = System.nanoTime() + database().patience().toNanos();
        long pause = SHORTEST_PAUSE_MS;
        for (int tries = 1; ; tries++) {
            try {
                return once(work);
            } catch (SQLException e) {
                Trouble trouble = Trouble.of(e);
                boolean over =
                        trouble == Trouble.LASTING
                                || (trouble == Trouble.AGAIN && tries >= TRIES)
                                || (trouble == Trouble.LOST && System.nanoTime() > until);
                if (over) {
                    throw told(trouble, repeat, e);
                }
            } catch (InterruptedException e) {
                throw interrupted(repeat, e);
            }
            pause(pause, repeat);
            pause = Math.min(LONGEST_PAUSE_MS, pause * 2);
        }
    }

    private <T> T once(Work<T> work) throws SQLException, StockException, InterruptedException {
        Connection connection = connections.take();
        boolean sound = false;
        try {
            T result = work.run(connection);
            connection.commit();
            sound = true;
            return result;
        } catch (StockException e) {
            connection.rollback();
            sound = true;
            throw e;
        } catch (SQLException e) {
            sound = Trouble.of(e) != Trouble.LOST && rolledBack(connection);
            throw e;
        } finally {
            if (sound) {
                connections.give(connection);
            } else {
                connections.discard(connection);
            }
        }
    }

    private static boolean rolledBack(Connection connection) {
        try {
            connection.rollback();
            return true;
        } catch (SQLException e) {
            return false;
        }
    }

    private static void pause(long ms, String repeat) throws StockException {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            throw interrupted(repeat, e);
        }
    }

    private static StockException interrupted(String repeat, InterruptedException e) {
        Thread.currentThread().interrupt();
        return new StockException(StockException.Kind.UNREACHABLE, "interrupted; " + repeat, e);
    }

    private StockException told(Trouble trouble, String repeat, SQLException e) {
        String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("no reason given");
        String where = database().shown();
        return switch (trouble) {
            case LOST ->
                    new StockException(
                            StockException.Kind.UNREACHABLE,
                            "the database "
                                    + where
                                    + " could not be reached for "
                                    + database().patience().toSeconds()
                                    + " s ("
                                    + why
                                    + "); "
                                    + repeat,
                            e);
            case AGAIN ->
                    new StockException(
                            StockException.Kind.UNREACHABLE,
                            "others were in the way in the database "
                                    + where
                                    + " "
                                    + TRIES
                                    + " times ("
                                    + why
                                    + "); nothing was done, try again",
                            e);
            case LASTING ->
                    new StockException(
                            StockException.Kind.BAD_INPUT,
                            "the database " + where + " refused: " + why,
                            e);
        };
    }

    @Override
    public void close() {
        connections.close();
    }
}
