package reseat.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a stock has of what a plan needs: what to take, what is missing, what is about to expire.
 *
 * <p>Of several lines, that which expires first is taken first; what has expired is left aside.
 * Lengths, volumes and masses are converted; of a line in another unit nothing is taken.
 *
 * @param day the day it is asked for
 * @param lines one for each need, in the order of the needs
 * @param toolsJudged whether tools were looked for; they are not in a stock that lists none at all
 */
public record Availability(LocalDate day, List<Line> lines, boolean toolsJudged) {

    public Availability {
        lines = List.copyOf(lines);
    }

    /**
     * What there is for one need.
     *
     * @param taken what to take, in order
     * @param missing how much cannot be had, in the unit of the need; zero or more
     * @param held how much good stock is reserved for other jobs, in the unit of the need
     * @param expired lines that would serve, but have expired
     * @param otherUnit lines that would serve, but are counted in a unit that says nothing here
     * @param alternates good lines that would serve as well and have something left, those that
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

        /** Tells whether all of it can be had. */
        public boolean complete() {
            return missing.signum() == 0;
        }
    }

    /**
     * So much of one line.
     *
     * @param item the line as it was seen
     * @param quantity how much of it, in its own unit
     * @param soon whether it expires within the days that were asked for
     */
    public record Taken(StockItem item, BigDecimal quantity, boolean soon) {}

    /**
     * Compares needs with a stock.
     *
     * @param needs what is needed
     * @param items what there is
     * @param day the day of the work
     * @param warnDays what expires within so many days from then is marked; zero or more
     */
    public static Availability of(
            List<StockNeed> needs, List<StockItem> items, LocalDate day, int warnDays) {
        if (warnDays < 0) {
            throw new IllegalArgumentException("days to warn are zero or more: " + warnDays);
        }
        return new Comparison(needs, items, day, warnDays).compare();
    }

    /** Tells whether everything can be had. */
    public boolean complete() {
        return lines.stream().allMatch(Line::complete);
    }

    /** Returns the lines of what cannot be had. */
    public List<Line> missing() {
        return lines.stream().filter(line -> !line.complete()).toList();
    }

    /** Returns what is taken although it expires soon. */
    public List<Taken> soon() {
        return lines.stream().flatMap(line -> line.taken().stream()).filter(Taken::soon).toList();
    }

    /** Returns what to reserve, each line of the stock once; empty if nothing is there. */
    public List<Reservation.Pick> picks() {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        for (Line line : lines) {
            for (Taken taken : line.taken()) {
                if (line.need().kind() == StockItem.Kind.TOOL) {
                    // one tool does all that it is good for, one after the other
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
