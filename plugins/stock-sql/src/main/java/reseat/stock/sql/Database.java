package reseat.stock.sql;

import java.sql.Connection;
import java.sql.Driver;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Properties;
import java.util.ServiceLoader;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/**
 * How to get to a database.
 *
 * @param kind which make it is
 * @param url its JDBC address
 * @param user who asks; null for whom the address or the driver names
 * @param password the password; null for none
 * @param patience longest time to wait for it, a restart of it, or others that use it
 */
record Database(
        Kind kind,
        String url,
        @Nullable String user,
        @Nullable String password,
        Duration patience) {

    /** The makes that are known. */
    enum Kind {
        /** Runs inside this program; one file. */
        H2("jdbc:h2:"),
        /** A server. */
        POSTGRESQL("jdbc:postgresql:");

        private final String prefix;

        Kind(String prefix) {
            this.prefix = prefix;
        }

        static Kind of(String url) throws StockException {
            for (Kind kind : values()) {
                if (url.startsWith(kind.prefix)) {
                    return kind;
                }
            }
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "\"url\": found \""
                            + url
                            + "\", expected jdbc:postgresql://HOST/DATABASE or jdbc:h2:...");
        }
    }

    /** Returns the address without what may be secret in it. */
    String shown() {
        return url.replaceFirst("[?;].*", "");
    }

    Connection connect() throws SQLException {
        Properties settings = new Properties();
        if (user != null) {
            settings.setProperty("user", user);
        }
        if (password != null) {
            settings.setProperty("password", password);
        }
        if (kind == Kind.POSTGRESQL) {
            String seconds = String.valueOf(Math.max(1, Math.min(10, patience.toSeconds())));
            settings.setProperty("connectTimeout", seconds);
            settings.setProperty("loginTimeout", seconds);
            settings.setProperty("socketTimeout", "60");
            settings.setProperty("tcpKeepAlive", "true");
            settings.setProperty("ApplicationName", "reseat");
        }
        for (Driver driver : ServiceLoader.load(Driver.class, Database.class.getClassLoader())) {
            if (driver.acceptsURL(url)) {
                Connection connection = driver.connect(url, settings);
                if (connection != null) {
                    return connection;
                }
            }
        }
        throw new SQLException("there is no driver for " + shown(), "IM002");
    }
}
