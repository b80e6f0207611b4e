package reseat.stock.sql;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.stock.StockException;

/**
 * The database file that a stock file names, in the current form or in one of an earlier Reseat.
 *
 * @param file the database
 * @param former the former database of an earlier Reseat, if it still exists
 */
record FileSetting(Path file, Optional<FormerFile> former) {

    private static final String ENDING = ".sqlite";
    private static final Pattern OWN_ENDING = Pattern.compile("\\.(sqlite3?|db)$");
    private static final Pattern FORMER_URL =
            Pattern.compile(
                    "jdbc:h2:(?:file:)?(?!(?:mem|tcp|ssl|nio\\w*|zip|split|classpath):)([^;]+)(.*)");

    /**
     * The setting "file". The name gets the ending .sqlite unless it already has a database ending.
     */
    static FileSetting named(Path named) throws StockException {
        String name = named.toString();
        if (name.endsWith(FormerFile.ENDING)) {
            String base = name.substring(0, name.length() - FormerFile.ENDING.length());
            return of(base + ENDING, List.of(FormerFile.named(named)));
        }
        Matcher ending = OWN_ENDING.matcher(name);
        if (!ending.find()) {
            return of(name + ENDING, List.of(FormerFile.named(Path.of(name + FormerFile.ENDING))));
        }
        // "shop.sqlite" replaces "shop"
        String base = name.substring(0, ending.start());
        return of(
                name,
                List.of(
                        FormerFile.named(Path.of(base + FormerFile.ENDING)),
                        FormerFile.named(Path.of(name + FormerFile.ENDING))));
    }

    /** An address of an earlier Reseat; empty if it is no such address. */
    static Optional<FileSetting> addressed(String url, String user, String password)
            throws StockException {
        Matcher parts = FORMER_URL.matcher(url);
        if (!parts.matches()) {
            return Optional.empty();
        }
        String name = String.valueOf(parts.group(1));
        if (name.startsWith("~/")) {
            name = System.getProperty("user.home", "") + name.substring(1);
        }
        try {
            Path base = Path.of(name).toAbsolutePath().normalize();
            return Optional.of(
                    of(
                            base + ENDING,
                            List.of(
                                    FormerFile.of(
                                            Path.of(base + FormerFile.ENDING),
                                            user,
                                            password,
                                            String.valueOf(parts.group(2))))));
        } catch (InvalidPathException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "\"url\": \"" + name + "\" is an invalid path",
                    e);
        }
    }

    private static FileSetting of(String file, List<FormerFile> candidates) throws StockException {
        if (file.indexOf('?') >= 0) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "\"file\": found \"" + file + "\", expected a name without a question mark");
        }
        List<FormerFile> there =
                candidates.stream().filter(each -> Files.exists(each.path())).toList();
        if (there.size() > 1) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "both "
                            + there.get(0).path()
                            + " and "
                            + there.get(1).path()
                            + " may be the former database of an earlier Reseat for "
                            + file
                            + "; move the one that you do not need to another folder");
        }
        return new FileSetting(Path.of(file), there.stream().findFirst());
    }

    /** Creates the folder of the file. */
    void makeFolder() throws StockException {
        Path folder = file.getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the folder of " + file + " cannot be created: " + e.getMessage(),
                    e);
        }
    }
}
