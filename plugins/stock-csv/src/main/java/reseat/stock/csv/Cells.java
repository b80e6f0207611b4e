package reseat.stock.csv;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Optional;
import java.util.regex.Pattern;

/** Parses cells as people write them. */
final class Cells {

    // spaces of all widths and apostrophes, used as thousands separators
    private static final String GAP = "[ \\u00a0\\u2009\\u202f'\\u2019]";

    private static final Pattern WITH_POINT =
            Pattern.compile("[0-9]{1,3}((" + GAP + "|,)[0-9]{3})+(\\.[0-9]{1,9})?");
    private static final Pattern WITH_COMMA =
            Pattern.compile("[0-9]{1,3}((" + GAP + "|\\.)[0-9]{3})+(,[0-9]{1,9})?");
    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,12}([.,][0-9]{1,9})?");

    private Cells() {}

    /** Returns a number of zero or more; empty if the cell is invalid. A blank cell is zero. */
    static Optional<BigDecimal> number(String text, char decimal) {
        if (text.isEmpty()) {
            return Optional.of(BigDecimal.ZERO);
        }
        char other = decimal == ',' ? '.' : ',';
        boolean grouped =
                (decimal == ',' ? WITH_COMMA : WITH_POINT).matcher(text).matches()
                        && text.length() < 20;
        boolean plain = PLAIN.matcher(text).matches() && text.indexOf(other) < 0;
        if (!grouped && !plain) {
            return Optional.empty();
        }
        String bare = text.replaceAll(GAP, "").replace(String.valueOf(other), "");
        return Optional.of(new BigDecimal(bare.replace(decimal, '.')));
    }

    /** Returns a day; for a month, its last day. Empty if the cell is invalid. */
    static Optional<LocalDate> date(String text, Iterable<DateTimeFormatter> formats) {
        for (DateTimeFormatter format : formats) {
            Optional<LocalDate> read = date(text, format);
            if (read.isPresent()) {
                return read;
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> date(String text, DateTimeFormatter format) {
        try {
            TemporalAccessor read = format.parseBest(text, LocalDate::from, YearMonth::from);
            return Optional.of(
                    read instanceof YearMonth month ? month.atEndOfMonth() : LocalDate.from(read));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
