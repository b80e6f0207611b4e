package reseat.stock.sql;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** A small connection pool. Safe for use by several threads. */
final class Connections implements AutoCloseable {

    private final Database database;
    private final Semaphore free;
    private final Deque<Connection> idle = new ArrayDeque<>();
    private boolean closed;

    Connections(Database database, int most) {
        this.database = database;
        this.free = new Semaphore(most, true);
    }

    Database database() {
        return database;
    }

    /** Returns a free connection; waits for one if all are taken. */
    Connection take() throws SQLException, InterruptedException {
        if (!free.tryAcquire(60, TimeUnit.SECONDS)) {
            throw new SQLException("all connections have been in use for a minute", "08000");
        }
        Connection made = null;
        try {
            made = idle();
            if (made == null) {
                made = database.connect();
            }
            return made;
        } finally {
            if (made == null) {
                free.release();
            }
        }
    }

    private synchronized @Nullable Connection idle() throws SQLException {
        if (closed) {
            throw new SQLException("this stock was closed", "IM003");
        }
        return idle.poll();
    }

    /** Returns a connection to the pool. */
    void give(Connection connection) {
        free.release();
        synchronized (this) {
            if (!closed) {
                idle.push(connection);
                return;
            }
        }
        close(connection);
    }

    /** Discards a broken connection, and verifies the idle ones. */
    void discard(Connection connection) {
        free.release();
        close(connection);
        closeIdle();
    }

    private void closeIdle() {
        Deque<Connection> doubtful;
        synchronized (this) {
            doubtful = new ArrayDeque<>(idle);
            idle.clear();
        }
        doubtful.forEach(Connections::close);
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException e) {
            return; // it is closed either way
        }
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
        }
        closeIdle();
    }
}
