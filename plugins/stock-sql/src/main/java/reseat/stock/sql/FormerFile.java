package reseat.stock.sql;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import reseat.stock.StockException;

/**
 * An H2 database file of an earlier Reseat. H2 never opens it directly, which would change it, but
 * a copy.
 *
 * @param path the file
 * @param user the user
 * @param password that user's password
 * @param options the options that H2 needs to read it, each with a semicolon before it
 */
record FormerFile(Path path, String user, String password, String options) {

    static final String ENDING = ".mv.db";

    private static final String WORKING_COPY = ".being-copied";

    /** The address options that affect how a file is read. */
    private static final Set<String> NEEDED =
            Set.of(
                    "CIPHER",
                    "USER",
                    "PASSWORD",
                    "DATABASE_TO_UPPER",
                    "DATABASE_TO_LOWER",
                    "CASE_INSENSITIVE_IDENTIFIERS");

    /** A file named by the setting "file". */
    static FormerFile named(Path path) {
        return new FormerFile(path, "reseat", "", "");
    }

    /**
     * A file named by an address.
     *
     * @param path the file
     * @param options the part of the address from its first semicolon
     */
    static FormerFile of(Path path, String user, String password, String options) {
        String kept =
                Arrays.stream(options.split(";", -1))
                        .filter(
                                each ->
                                        NEEDED.contains(
                                                each.replaceFirst("=.*", "")
                                                        .strip()
                                                        .toUpperCase(Locale.ROOT)))
                        .map(each -> ";" + each)
                        .collect(Collectors.joining());
        return new FormerFile(path, user, password, kept);
    }

    /**
     * Reads all its contents.
     *
     * @param locked the locked file; read through it, because closing a second channel of a file
     *     would release the lock
     */
    FormerContents read(FileChannel locked) throws StockException {
        String base = path + WORKING_COPY;
        Path copy = Path.of(base + ENDING);
        try {
            try {
                copy(locked, copy);
                return open(base);
            } finally {
                Files.deleteIfExists(copy);
            }
        } catch (IOException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    path + " could not be copied to read it: " + e.getMessage() + ". " + LEFT,
                    e);
        } catch (SQLException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the database "
                            + path
                            + " of an earlier Reseat cannot be read: "
                            + String.valueOf(e.getMessage()).lines().findFirst().orElse("")
                            + ". "
                            + LEFT
                            + ". If you have a good copy of it, replace it with that",
                    e);
        }
    }

    private static final String LEFT = "It was left unchanged, and nothing was copied";

    private static void copy(FileChannel from, Path to) throws IOException {
        try (FileChannel out =
                FileChannel.open(
                        to,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.TRUNCATE_EXISTING,
                        StandardOpenOption.WRITE)) {
            long done = 0;
            while (done < from.size()) {
                done += from.transferTo(done, from.size() - done, out);
            }
        }
    }

    private FormerContents open(String base) throws IOException, SQLException, StockException {
        Properties settings = new Properties();
        settings.setProperty("user", user);
        settings.setProperty("password", password);
        // no trace file next to it
        String url = "jdbc:h2:file:" + base + ";IFEXISTS=TRUE;TRACE_LEVEL_FILE=0" + options;
        try (URLClassLoader drivers = drivers();
                Connection connection = Database.open(drivers, "org.h2.", url, settings)) {
            return FormerContents.read(path, connection);
        }
    }

    /**
     * In a distribution H2 is kept separately, so that starts that do not need it do not scan it;
     * in tests it is on the class path.
     */
    private static URLClassLoader drivers() throws IOException {
        Path apart = Path.of(System.getProperty("reseat.home", ""), "lib", "former");
        if (!Files.isDirectory(apart)) {
            return new URLClassLoader(new URL[0], FormerFile.class.getClassLoader());
        }
        List<URL> jars = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(apart, "*.jar")) {
            for (Path each : files) {
                jars.add(each.toUri().toURL());
            }
        }
        return new URLClassLoader(jars.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
    }
}
