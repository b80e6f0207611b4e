package reseat.stock.sql;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
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
                        "A database in one file, for one bench at a time; made if it is not"
                                + " there. Its name gets the ending .mv.db.",
                        false),
                new Setting(
                        "url",
                        "The address of a server: jdbc:postgresql://HOST/DATABASE. Either this or"
                                + " \"file\".",
                        false),
                new Setting("user", "Who asks.", false),
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
                        "Where the tables of Reseat are; " + DEFAULT_SCHEMA + " if left out.",
                        false),
                new Setting(
                        "wait",
                        "Longest time to wait for the database, in seconds; 10 if left out.",
                        false),
                new Setting(
                        "connections", "Most connections at once, 1 to 64; 8 if left out.", false));
    }

    @Override
    public Stock open(Map<String, String> settings, Path folder) throws StockException {
        String schema = settings.getOrDefault("schema", DEFAULT_SCHEMA);
        if (!schema.matches("[a-z_][a-z0-9_]{0,62}")) {
            throw expected("schema", schema, "lower case letters, digits and underscores");
        }
        Database database = database(settings, folder);
        int most = number(settings, "connections", 8, 1, 64);
        Optional<Book> mapped = mapped(settings, folder);
        Transactions transactions = new Transactions(new Connections(database, most));
        boolean opened = false;
        try {
            new Steps(schema, mapped.isEmpty()).take(transactions);
            SqlStock stock =
                    mapped.isPresent()
                            ? new SqlStock(transactions, schema, mapped.get())
                            : new OwnStock(transactions, schema);
            stock.items(); // what is wrong with a mapping is told now
            opened = true;
            return stock;
        } finally {
            if (!opened) {
                transactions.close();
            }
        }
    }

    private static Optional<Book> mapped(Map<String, String> settings, Path folder)
            throws StockException {
        String name = settings.get("mapping");
        if (name == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Book.read(path(folder, "mapping", name)));
        } catch (BadInputException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT, String.valueOf(e.getMessage()), e);
        }
    }

    private static Database database(Map<String, String> settings, Path folder)
            throws StockException {
        String file = settings.get("file");
        String url = settings.get("url");
        if ((file == null) == (url == null)) {
            throw bad("say where the database is: either \"file\" or \"url\"");
        }
        String address = url != null ? url : fileUrl(path(folder, "file", String.valueOf(file)));
        return new Database(
                Database.Kind.of(address),
                address,
                url == null ? "reseat" : settings.get("user"),
                url == null ? "" : password(settings),
                Duration.ofSeconds(number(settings, "wait", 10, 0, 600)));
    }

    /** WRITE_DELAY=0: what was promised is in the file before the promise is given. */
    private static String fileUrl(Path file) throws StockException {
        Path parent = file.getParent();
        String name = file.toString().replaceFirst("\\.mv\\.db$", "");
        if (name.indexOf(';') >= 0) {
            throw expected("file", name, "a name without a semicolon");
        }
        try {
            if (parent != null) {
                Files.createDirectories(parent);
            }
        } catch (IOException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the folder of " + file + " cannot be made: " + e.getMessage(),
                    e);
        }
        return "jdbc:h2:file:" + name + ";WRITE_DELAY=0;LOCK_TIMEOUT=5000";
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
                    "\"" + name + "\": \"" + text + "\" is no path of a file",
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
