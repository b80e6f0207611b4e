package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A statement with the parameters {@code :item} and {@code :quantity}.
 *
 * @param sql the statement with question marks for the parameters
 * @param names the parameter of each question mark
 */
record Query(String sql, List<String> names) {

    // not within a cast such as 1::item
    private static final Pattern NAME = Pattern.compile("(?<![:\\w]):(item|quantity)\\b");

    static Query of(String text) {
        List<String> names = new ArrayList<>();
        Matcher name = NAME.matcher(text);
        while (name.find()) {
            names.add(String.valueOf(name.group(1)));
        }
        return new Query(
                NAME.matcher(text).replaceAll("?").strip().replaceFirst(";\\s*$", ""),
                List.copyOf(names));
    }

    /** Runs it; returns the number of changed rows, -1 for a query. */
    int run(Make make, Connection connection, String item, BigDecimal quantity)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < names.size(); i++) {
                if (names.get(i).equals("item")) {
                    statement.setString(i + 1, item);
                } else {
                    make.setForShop(statement, i + 1, quantity);
                }
            }
            return statement.execute() ? -1 : statement.getUpdateCount();
        }
    }
}
