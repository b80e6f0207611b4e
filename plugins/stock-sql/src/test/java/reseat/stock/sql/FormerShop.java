package reseat.stock.sql;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Files as an earlier Reseat left them. */
final class FormerShop {

    private FormerShop() {}

    /**
     * Lays down a file that such a Reseat has written: 36 lines, and four reservations of which two
     * are open, one is used and one is released.
     */
    static Path real(Path file) throws Exception {
        try (InputStream in = FormerShop.class.getResourceAsStream("former.mv.db")) {
            Files.copy(in, file);
        }
        return file;
    }

    /** Makes a file by statements of H2; "tables" stands for our tables of then. */
    static Path made(Path file, String... statements) throws Exception {
        String base = file.toString().replaceFirst("\\.mv\\.db$", "");
        try (Connection connection =
                        DriverManager.getConnection("jdbc:h2:file:" + base, "reseat", "");
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                for (String one : each.equals("tables") ? tables() : List.of(each)) {
                    statement.execute(one);
                }
            }
        }
        return file;
    }

    /** Those of then are those of PostgreSQL today. */
    private static List<String> tables() throws Exception {
        List<String> statements = new ArrayList<>();
        statements.add("create schema reseat");
        statements.add("create table reseat.step (name varchar(100) primary key)");
        for (String step : List.of("reservations-1", "items-1")) {
            try (InputStream in =
                    SqlStockSource.class.getResourceAsStream("postgresql/" + step + ".sql")) {
                String script = new String(in.readAllBytes(), UTF_8).replace("${schema}", "reseat");
                statements.addAll(List.of(script.split(";")));
            }
            statements.add("insert into reseat.step values ('" + step + "')");
        }
        return statements;
    }
}
