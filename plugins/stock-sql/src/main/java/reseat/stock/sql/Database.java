package reseat.stock.sql;

import java.sql.Connection;
import java.sql.Driver;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Properties;
import java.util.ServiceLoader;
import org.jspecify.annotations.Nullable;

/**
 * The address of a database.
 *
 * @param make its make
 * @param url its JDBC address
 * @param user the user; null for the one in the address or of the driver
 * @param password the password; null for none
 * @param patience longest time to wait for it, a restart of it, or others that use it
 */
record Database(
        Make make,
        String url,
        @Nullable String user,
        @Nullable String password,
        Duration patience) {

    private static final String SQLITE = "jdbc:sqlite:";

    /**
     * SQLite retries a lock with longer and longer pauses; after this time {@link Transactions}
     * starts over with short ones.
     */
    private static final long LONGEST_BUSY_MS = 80;

    /** Returns the database in a file. */
    static Database file(java.nio.file.Path file, Duration patience) {
        return new Database(Make.SQLITE, SQLITE + file, null, null, patience);
    }

    /** Returns the address without secrets. */
    String shown() {
        return make == Make.SQLITE
                ? url.substring(SQLITE.length())
                : url.replaceFirst("[?;].*", "");
    }

    /** Opens a connection; transactions are started by {@link Make#begin}. */
    Connection connect() throws SQLException {
        Properties settings = new Properties();
        if (user != null) {
            settings.setProperty("user", user);
        }
        if (password != null) {
            settings.setProperty("password", password);
        }
        if (make == Make.POSTGRESQL) {
            String seconds = String.valueOf(Math.max(1, Math.min(10, patience.toSeconds())));
            settings.setProperty("connectTimeout", seconds);
            settings.setProperty("loginTimeout", seconds);
            settings.setProperty("socketTimeout", "60");
            settings.setProperty("tcpKeepAlive", "true");
            settings.setProperty("ApplicationName", "reseat");
        }
        Connection connection = open(Database.class.getClassLoader(), make.driver(), url, settings);
        try {
            prepare(connection);
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    /**
     * SQLite keeps its usual rollback journal, which leaves one file that can be copied and works
     * wherever locks do, even on a network share. With {@code extra}, each commit and the removal
     * of the journal are on disk before a call returns.
     */
    private void prepare(Connection connection) throws SQLException {
        if (make == Make.POSTGRESQL) {
            connection.setAutoCommit(false);
            connection.setTransactionIsolation(Connection.TRANSACTION_READ_COMMITTED);
            return;
        }
        try (Statement statement = connection.createStatement()) {
            statement.execute(
                    "pragma busy_timeout = " + Math.min(patience.toMillis(), LONGEST_BUSY_MS));
            statement.execute("pragma foreign_keys = on");
            statement.execute("pragma synchronous = extra");
        }
    }

    /**
     * Opens a connection with the driver whose class name starts like this. Others are not even
     * loaded.
     */
    static Connection open(ClassLoader loader, String driver, String url, Properties settings)
            throws SQLException {
        ServiceLoader<Driver> drivers = ServiceLoader.load(Driver.class, loader);
        Driver found =
                drivers.stream()
                        .filter(each -> each.type().getName().startsWith(driver))
                        .findFirst()
                        .map(ServiceLoader.Provider::get)
                        .orElse(null);
        Connection connection = found == null ? null : found.connect(url, settings);
        if (connection == null) {
            throw new SQLException(
                    "there is no driver for " + url.replaceFirst("[?;].*", ""), "IM002");
        }
        return connection;
    }
}
