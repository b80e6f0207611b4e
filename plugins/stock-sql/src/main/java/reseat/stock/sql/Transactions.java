package reseat.stock.sql;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import reseat.stock.StockException;

/**
 * Carries out work in transactions. Work is retried after conflicts and when the connection was
 * lost, even during the commit. Work may therefore run twice; each reservation has an id, so the
 * second run finds it done.
 */
final class Transactions implements AutoCloseable {

    private static final int TRIES = 60;
    private static final long SHORTEST_PAUSE_MS = 2;
    private static final long LONGEST_PAUSE_MS = 250;

    private final Connections connections;

    /** SQLite allows one writer at a time and makes the others poll; here they queue. */
    private final ReentrantLock writing = new ReentrantLock(true);

    Transactions(Connections connections) {
        this.connections = connections;
    }

    Database database() {
        return connections.database();
    }

    /** The work of one transaction; may run several times. */
    @FunctionalInterface
    interface Work<T> {
        T run(Connection connection) throws SQLException, StockException;
    }

    /** Runs read-only work, like {@link #run}. */
    <T> T look(Work<T> work) throws StockException {
        return run(false, "try again", work);
    }

    /**
     * Runs work in a transaction, with retries until the time limit.
     *
     * @param repeat what the user must repeat if the outcome is unknown
     */
    <T> T run(String repeat, Work<T> work) throws StockException {
        return run(true, repeat, work);
    }

    private <T> T run(boolean writes, String repeat, Work<T> work) throws StockException {
        long until = System.nanoTime() + database().patience().toNanos();
        long pause = SHORTEST_PAUSE_MS;
        for (int tries = 1; ; tries++) {
            try {
                return writes && database().make() == Make.SQLITE
                        ? inTurn(work)
                        : once(writes, work);
            } catch (SQLException e) {
                Trouble trouble = Trouble.of(e);
                boolean late = System.nanoTime() > until;
                boolean over =
                        switch (trouble) {
                            case LASTING -> true;
                            case AGAIN -> tries >= TRIES;
                            case LOST, BUSY -> late;
                        };
                if (over) {
                    throw trouble.told(database(), repeat, e);
                }
            } catch (InterruptedException e) {
                throw interrupted(repeat, e);
            }
            pause(pause, repeat);
            // SQLite has already paused
            pause =
                    database().make() == Make.SQLITE
                            ? pause
                            : Math.min(LONGEST_PAUSE_MS, pause * 2);
        }
    }

    private <T> T inTurn(Work<T> work) throws SQLException, StockException, InterruptedException {
        writing.lockInterruptibly();
        try {
            return once(true, work);
        } finally {
            writing.unlock();
        }
    }

    private <T> T once(boolean writes, Work<T> work)
            throws SQLException, StockException, InterruptedException {
        Connection connection = connections.take();
        boolean sound = false;
        boolean begun = false;
        try {
            database().make().begin(connection, writes);
            begun = true;
            T result = work.run(connection);
            database().make().commit(connection);
            sound = true;
            return result;
        } catch (StockException e) {
            sound = rolledBack(connection);
            throw e;
        } catch (SQLException e) {
            sound = Trouble.of(e) != Trouble.LOST && (!begun || rolledBack(connection));
            throw e;
        } finally {
            if (sound) {
                connections.give(connection);
            } else {
                connections.discard(connection);
            }
        }
    }

    private boolean rolledBack(Connection connection) {
        try {
            database().make().rollBack(connection);
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

    @Override
    public void close() {
        connections.close();
    }
}
