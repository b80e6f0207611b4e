package reseat.internal.time;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import reseat.model.Duration;

/**
 * A service worksheet: what each task of a teardown takes, in time and labour.
 *
 * <p>A row takes {@code tool + count × (operation + aside)}; its labour is that time at the hourly
 * rate. Form and worked example: Yang and El-Haik, Design for Six Sigma, table 10.5.
 *
 * @param rows rows in the order of the work
 * @param labourPerHour labour rate in currency units an hour; labour of a row is given in
 *     hundredths
 */
public record Worksheet(List<Row> rows, BigDecimal labourPerHour) {

    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);
    private static final BigDecimal CENTS = BigDecimal.valueOf(100);

    public Worksheet {
        rows = List.copyOf(rows);
    }

    /** Returns the time of all rows, in milliseconds. */
    public long totalMs() {
        return rows.stream().mapToLong(Row::ms).reduce(0, Math::addExact);
    }

    /** Returns the number of serviced parts among the rows. */
    public int servicedParts() {
        return rows.stream().mapToInt(Row::servicedParts).sum();
    }

    /**
     * Returns what a time costs in labour.
     *
     * @param ms time in milliseconds
     * @param decimals decimals to round to, half up
     * @return hundredths of the currency unit
     */
    public BigDecimal cents(long ms, int decimals) {
        return BigDecimal.valueOf(ms)
                .multiply(labourPerHour)
                .multiply(CENTS)
                .divide(MS_PER_HOUR, decimals, RoundingMode.HALF_UP);
    }

    /**
     * A task.
     *
     * @param number number of the row
     * @param task what is done
     * @param count how often operation and laying aside are done
     * @param tool time to fetch the tool, once
     * @param operation time of the operation
     * @param aside time to lay aside what came off
     * @param servicedParts how many of the parts that come off are the ones the service is for
     */
    public record Row(
            int number,
            String task,
            int count,
            Duration tool,
            Duration operation,
            Duration aside,
            int servicedParts) {

        public Row {
            if (count < 1) {
                throw new IllegalArgumentException(
                        "row " + number + ": a task is done once or more, not " + count);
            }
        }

        /** Returns the time of the row, in milliseconds. */
        public long ms() {
            return Math.addExact(
                    tool.ms(), Math.multiplyExact((long) count, operation.ms() + aside.ms()));
        }
    }
}
