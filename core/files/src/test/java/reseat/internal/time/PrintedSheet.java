package reseat.internal.time;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A worksheet as printed. Recomputes it: each line from its own elements, and the total from the
 * printed lines. All numbers are seconds, with the decimals that were printed.
 *
 * @param title title of the sheet
 * @param lines lines in their order
 * @param total the total that was printed
 */
public record PrintedSheet(String title, List<Line> lines, BigDecimal total) {

    public PrintedSheet {
        lines = List.copyOf(lines);
    }

    /** Returns the sum of the printed lines, in seconds. */
    public BigDecimal addedUp() {
        return lines.stream().map(Line::printed).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * Returns the total of the elements of the lines, regardless of what was printed, in seconds.
     */
    public BigDecimal recomputed() {
        return lines.stream().map(Line::computed).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Returns the error of the total against the printed lines; empty if they add up to it. */
    public Optional<Slip> slipOfTotal() {
        return slip("total", total, addedUp());
    }

    /** Returns the errors of single lines against their own elements, in order. */
    public List<Slip> slipsOfLines() {
        List<Slip> slips = new ArrayList<>();
        lines.forEach(
                line -> slip(line.name(), line.printed(), line.computed()).ifPresent(slips::add));
        return List.copyOf(slips);
    }

    /** Rounds to the decimals that were printed before it compares. */
    private static Optional<Slip> slip(String where, BigDecimal printed, BigDecimal exact) {
        BigDecimal computed = exact.setScale(printed.scale(), RoundingMode.HALF_UP);
        return computed.compareTo(printed) == 0
                ? Optional.empty()
                : Optional.of(new Slip(where, printed, computed));
    }

    /**
     * A printed line: {@code tool + count × (first + second)}.
     *
     * @param name what it is about
     * @param tool time counted once, in seconds
     * @param count how often the other two are counted
     * @param first time of the first element (handling, removal), in seconds
     * @param second time of the second element (insertion, laying aside), in seconds
     * @param printed the printed sum, in seconds
     */
    public record Line(
            String name,
            BigDecimal tool,
            int count,
            BigDecimal first,
            BigDecimal second,
            BigDecimal printed) {

        /** Returns the computed sum of the line, in seconds. */
        public BigDecimal computed() {
            return tool.add(first.add(second).multiply(BigDecimal.valueOf(count)));
        }
    }

    /**
     * A printed number that disagrees with the others.
     *
     * @param where name of the line, or "total"
     * @param printed what is printed, in seconds
     * @param computed what it should be, in seconds
     */
    public record Slip(String where, BigDecimal printed, BigDecimal computed) {

        /** Returns printed minus computed, in seconds. */
        public BigDecimal difference() {
            return printed.subtract(computed);
        }

        /** Returns the error as a sentence. */
        public String sentence() {
            return String.format(
                    Locale.ROOT,
                    "%s: printed %s s, adds up to %s s (%s s too %s).",
                    where,
                    printed.toPlainString(),
                    computed.toPlainString(),
                    difference().abs().toPlainString(),
                    difference().signum() < 0 ? "little" : "much");
        }
    }
}
