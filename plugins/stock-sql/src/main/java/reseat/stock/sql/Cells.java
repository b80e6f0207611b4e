package reseat.stock.sql;

import java.math.BigDecimal;
import java.math.MathContext;
import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/** Reads the values of a row, whatever type the database gives them. */
final class Cells {

    /** Significant digits of a binary fraction: 0.1 + 0.2 reads as 0.3. */
    private static final MathContext SOUND_DIGITS = new MathContext(15);

    private Cells() {}

    /**
     * Returns a number, or null if there is none.
     *
     * @param where what the row is about, for messages
     */
    static @Nullable BigDecimal number(ResultSet row, String column, String where)
            throws SQLException, StockException {
        Object cell = row.getObject(column);
        if (cell instanceof Double fraction) {
            return Double.isFinite(fraction)
                    ? BigDecimal.valueOf(fraction).round(SOUND_DIGITS)
                    : null;
        }
        if (cell instanceof String text) {
            try {
                return new BigDecimal(text);
            } catch (NumberFormatException e) {
                throw bad(where, column, text, "a number", e);
            }
        }
        return row.getBigDecimal(column);
    }

    /** Returns a trimmed text; empty if there is none. */
    static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column))
                .map(String::strip)
                .filter(text -> !text.isEmpty());
    }

    /** Returns a day; empty if there is none. A time of day after it is ignored. */
    static Optional<LocalDate> day(ResultSet row, String column, String where)
            throws SQLException, StockException {
        Object cell = row.getObject(column);
        if (cell == null) {
            return Optional.empty();
        }
        if (cell instanceof Date day) {
            return Optional.of(day.toLocalDate());
        }
        String text = String.valueOf(cell);
        try {
            return Optional.of(LocalDate.parse(text.length() > 10 ? text.substring(0, 10) : text));
        } catch (DateTimeException e) {
            throw bad(where, column, text, "a date such as 2026-06-30", e);
        }
    }

    /** Returns a number without trailing zeros. */
    static BigDecimal plain(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    private static StockException bad(
            String where, String column, String found, String expected, RuntimeException cause) {
        return new StockException(
                StockException.Kind.BAD_INPUT,
                where + ": " + column + " is \"" + found + "\", expected " + expected,
                cause);
    }
}
