package reseat.stock.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.stock.Reservation;
import reseat.stock.StockItem;

/**
 * The availability of a plan's needs in a stock: what to take, what is missing, what is about to
 * expire.
 *
 * <p>Of several lines, the one that expires first is taken first; expired lines are ignored.
 * Lengths, volumes and masses are converted; nothing is taken from a line in another unit.
 *
 * @param day the day of the work
 * @param lines one for each need, in the order of the needs
 * @param toolsJudged whether tools were checked; they are not if the stock lists none at all
 */
record Availability(LocalDate day, List<Line> lines, boolean toolsJudged) {

    public Availability {
        lines = List.copyOf(lines);
    }

    /**
     * The availability for one need.
     *
     * @param taken what to take, in order
     * @param missing how much is missing, in the unit of the need; zero or more
     * @param held how much usable stock is reserved for other jobs, in the unit of the need
     * @param expired lines that would serve, but have expired
     * @param otherUnit lines that would serve, but whose unit cannot be converted
     * @param alternates usable lines that would also serve and have something left, those that
     *     expire first before others
     */
    public record Line(
            StockNeed need,
            List<Taken> taken,
            BigDecimal missing,
            BigDecimal held,
            List<StockItem> expired,
            List<StockItem> otherUnit,
            List<StockItem> alternates) {

        public Line {
            taken = List.copyOf(taken);
            expired = List.copyOf(expired);
            otherUnit = List.copyOf(otherUnit);
            alternates = List.copyOf(alternates);
        }

        /** Returns whether all of it is available. */
        public boolean complete() {
            return missing.signum() == 0;
        }
    }

    /**
     * A quantity of one line.
     *
     * @param item a snapshot of the line
     * @param quantity how much of it, in its own unit
     * @param soon whether it expires within the warning period
     */
    public record Taken(StockItem item, BigDecimal quantity, boolean soon) {}

    /**
     * Compares needs with a stock.
     *
     * @param needs what is needed
     * @param items the lines of the stock
     * @param day the day of the work
     * @param warnDays what expires within this many days from then is marked; zero or more
     */
    public static Availability of(
            List<StockNeed> needs, List<StockItem> items, LocalDate day, int warnDays) {
        if (warnDays < 0) {
            throw new IllegalArgumentException(
                    "the number of days to warn must not be negative: " + warnDays);
        }
        return new Comparison(needs, items, day, warnDays).compare();
    }

    /** Returns whether everything is available. */
    public boolean complete() {
        return lines.stream().allMatch(Line::complete);
    }

    /** Returns the lines for what is missing. */
    public List<Line> missing() {
        return lines.stream().filter(line -> !line.complete()).toList();
    }

    /** Returns what is taken although it expires soon. */
    public List<Taken> soon() {
        return lines.stream().flatMap(line -> line.taken().stream()).filter(Taken::soon).toList();
    }

    /** Returns what to reserve, each line of the stock once; empty if nothing is available. */
    public List<Reservation.Pick> picks() {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        for (Line line : lines) {
            for (Taken taken : line.taken()) {
                if (line.need().kind() == StockItem.Kind.TOOL) {
                    // one tool serves all needs for it, one after the other
                    sums.merge(taken.item().id(), taken.quantity(), BigDecimal::max);
                } else {
                    sums.merge(taken.item().id(), taken.quantity(), BigDecimal::add);
                }
            }
        }
        return sums.entrySet().stream()
                .map(sum -> new Reservation.Pick(sum.getKey(), sum.getValue()))
                .toList();
    }
}
