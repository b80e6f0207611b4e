package reseat.euindex;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * The repairability index of a smartphone or slate tablet, in whole numbers throughout: with binary
 * fractions an exact 3.35 would fall into the class below.
 *
 * <p>Source: Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026, Annex IV point
 * 5 for the formula, Annex II C Table 4 for the classes.
 *
 * @param depth score of disassembly depth, in hundredths
 * @param fasteners score of fasteners, in hundredths
 * @param tools score of tools, in hundredths
 * @param product points of the product
 */
public record RepairIndex(int depth, int fasteners, int tools, ProductPoints product) {

    /** Classes, best first, by their lowest index in ten-thousandths. */
    private static final int[] FROM = {40_000, 33_500, 25_500, 17_500, 10_000};

    /**
     * Computes the index.
     *
     * @param parts points of each part that the product has; the others are absent, which gives the
     *     highest points
     * @param product points of the product
     * @param foldable whether it has a hinge or a folding mechanism
     */
    public static RepairIndex of(
            Map<PriorityPart, PartPoints> parts, ProductPoints product, boolean foldable) {
        Map<PriorityPart, PartPoints> all = new EnumMap<>(PriorityPart.class);
        for (PriorityPart part : PriorityPart.values()) {
            all.put(part, parts.getOrDefault(part, PartPoints.ABSENT));
        }
        return new RepairIndex(
                sum(all, foldable, PartPoints::depth),
                sum(all, foldable, PartPoints::fasteners),
                sum(all, foldable, PartPoints::tools),
                product);
    }

    private static int sum(
            Map<PriorityPart, PartPoints> parts,
            boolean foldable,
            ToIntFunction<PartPoints> score) {
        int sum = 0;
        for (Map.Entry<PriorityPart, PartPoints> each : parts.entrySet()) {
            sum += each.getKey().weight(foldable) * score.applyAsInt(each.getValue());
        }
        return sum;
    }

    /** Returns the index in ten-thousandths, exact; from 10,000 to 50,000. */
    public int tenThousandths() {
        return 25 * depth
                + 15 * (fasteners + tools)
                + 1500 * (product.spareParts() + product.updates() + product.information());
    }

    /** Returns the exact index, with four decimals. */
    public BigDecimal exact() {
        return BigDecimal.valueOf(tenThousandths(), 4);
    }

    /** Returns the index with two decimals, half up; the law prescribes no direction. */
    public BigDecimal rounded() {
        return exact().setScale(2, RoundingMode.HALF_UP);
    }

    /** Returns the class, A to E, of the exact index. */
    public char letter() {
        return letter(tenThousandths());
    }

    /** Returns whether rounding would lift it into a better class than the exact index has. */
    public boolean isOnTheLimit() {
        return letter(rounded().unscaledValue().intValueExact() * 100) != letter();
    }

    private static char letter(int tenThousandths) {
        int i = 0;
        while (tenThousandths < FROM[i]) {
            i++;
        }
        return (char) ('A' + i);
    }
}
