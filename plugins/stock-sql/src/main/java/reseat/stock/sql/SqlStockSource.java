package reseat.stock.sql;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.model.BadInputException;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockSource;

/** Opens databases. */
final class SqlStockSource implements StockSource {

    private static final String DEFAULT_SCHEMA = "reseat";

    @Override
    public String id() {
        return "sql";
    }

    @Override
    public String title() {
        return "SQL database";
    }

    @Override
    public List<Setting> settings() {
        return List.of(
                new Setting(
                        "file",
                        "A database in one file (SQLite); created if it does not exist. Its name"
                                + " gets"
                                + " the ending .sqlite unless it ends in .sqlite, .sqlite3 or .db.",
                        false),
                new Setting(
                        "url",
                        "The address of a server: jdbc:postgresql://HOST/DATABASE. Either this or"
                                + " \"file\".",
                        false),
                new Setting("user", "The user name.", false),
                new Setting("password", "The password; better, use password-env.", false),
                new Setting(
                        "password-env",
                        "Name of the environment variable with the password.",
                        false),
                new Setting(
                        "mapping",
                        "The file with the queries of a shop that has tables of its own.",
                        false),
                new Setting(
                        "schema",
                        "The schema of Reseat's tables; in a file, the prefix of their names."
                                + " Default: "
                                + DEFAULT_SCHEMA
                                + ".",
                        false),
                new Setting(
                        "wait",
                        "Longest time to wait for the database, in seconds (default: 10).",
                        false),
                new Setting(
                        "connections", "Most connections at once, 1 to 64 (default: 8).", false));
    }

    @Override
    public Stock open(Map<String, String> settings, Path folder) throws StockException {
        String schema = settings.getOrDefault("schema", DEFAULT_SCHEMA);
        if (!schema.matches("[a-z_][a-z0-9_]{0,62}")) {
            throw expected("schema", schema, "lower case letters, digits and underscores");
        }
        Optional<FileSetting> file = file(settings, folder);
        Database database = database(settings, file);
        int most = number(settings, "connections", 8, 1, 64);
        Optional<Book> mapped = mapped(settings, folder, database.make());
        Transactions transactions = new Transactions(new Connections(database, most));
        boolean opened = false;
        try {
            List<String> notes = file.isEmpty() ? List.of() : prepare(file.get(), transactions);
            if (file.isPresent() && mapped.isEmpty()) {
                transactions.look(SqlStockSource::refuseDamage);
            }
            new SchemaSteps(database.make(), schema, mapped.isEmpty()).take(transactions);
            SqlStock stock =
                    mapped.isPresent()
                            ? new SqlStock(transactions, schema, mapped.get(), notes)
                            : new OwnStock(transactions, schema, notes);
            stock.items(); // a wrong mapping is reported now
            opened = true;
            return stock;
        } finally {
            if (!opened) {
                transactions.close();
            }
        }
    }

    private static List<String> prepare(FileSetting file, Transactions transactions)
            throws StockException {
        file.makeFolder();
        return file.former().isEmpty()
                ? List.of()
                : new StepOver(file.former().get(), file.file(), transactions)
                        .take().stream().toList();
    }

    /** SQLite detects damage only in the pages that it reads; this checks all pages. */
    private static boolean refuseDamage(Connection connection) throws SQLException, StockException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("pragma quick_check(1)")) {
            String found = rows.next() ? rows.getString(1) : "ok";
            if (!"ok".equals(found)) {
                throw new SQLException(found, null, Trouble.SQLITE_CORRUPT);
            }
            return true;
        }
    }

    private static Optional<Book> mapped(Map<String, String> settings, Path folder, Make make)
            throws StockException {
        String name = settings.get("mapping");
        if (name == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Book.read(make, path(folder, "mapping", name)));
        } catch (BadInputException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT, String.valueOf(e.getMessage()), e);
        }
    }

    private static Optional<FileSetting> file(Map<String, String> settings, Path folder)
            throws StockException {
        String file = settings.get("file");
        String url = settings.get("url");
        if ((file == null) == (url == null)) {
            throw bad("the database is missing: give either \"file\" or \"url\"");
        }
        if (file != null) {
            return Optional.of(FileSetting.named(path(folder, "file", file)));
        }
        return FileSetting.addressed(
                String.valueOf(url),
                settings.getOrDefault("user", ""),
                Optional.ofNullable(password(settings)).orElse(""));
    }

    private static Database database(Map<String, String> settings, Optional<FileSetting> file)
            throws StockException {
        Duration patience = Duration.ofSeconds(number(settings, "wait", 10, 0, 600));
        if (file.isPresent()) {
            return Database.file(file.get().file(), patience);
        }
        String url = settings.getOrDefault("url", "");
        if (!url.startsWith("jdbc:postgresql:")) {
            throw expected(
                    "url",
                    url,
                    "jdbc:postgresql://HOST/DATABASE; a database in a file is named by \"file\"");
        }
        return new Database(
                Make.POSTGRESQL, url, settings.get("user"), password(settings), patience);
    }

    private static @Nullable String password(Map<String, String> settings) throws StockException {
        String variable = settings.get("password-env");
        if (variable == null) {
            return settings.get("password");
        }
        String password = System.getenv(variable);
        if (password == null) {
            throw bad("\"password-env\": the environment variable " + variable + " is not set");
        }
        return password;
    }

    private static int number(
            Map<String, String> settings, String name, int usual, int least, int most)
            throws StockException {
        String text = settings.getOrDefault(name, String.valueOf(usual));
        if (!text.matches("[0-9]{1,4}")
                || Integer.parseInt(text) < least
                || Integer.parseInt(text) > most) {
            throw expected(name, text, "a whole number from " + least + " to " + most);
        }
        return Integer.parseInt(text);
    }

    private static Path path(Path folder, String name, String text) throws StockException {
        try {
            return folder.resolve(text).toAbsolutePath().normalize();
        } catch (InvalidPathException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "\"" + name + "\": \"" + text + "\" is an invalid path",
                    e);
        }
    }

    private static StockException expected(String name, String found, String what) {
        return bad("\"" + name + "\": found \"" + found + "\", expected " + what);
    }

    private static StockException bad(String message) {
        return new StockException(StockException.Kind.BAD_INPUT, message);
    }
}
