package reseat.internal.time;

import java.util.List;
import reseat.model.Duration;

/**
 * A Basic MOST index string with its sum: {@code A1 B0 G1 A1 B0 P3 L16 A1 B0 P1 A0}.
 *
 * <p>The time is ten times the sum of the indices, in TMU. Indices in brackets are multiplied by
 * the number in brackets that follows the group or, for all groups that have none of their own,
 * ends the string: {@code A1 B0 G3 (A1 B0 P1) A0 (6)} adds up to 4 + 6 × 2 = 16. The letters follow
 * one of the {@link SequenceModel}s; a last A may be left out and counts as A0. Each index is one
 * that the {@link Card} knows for its letter. Spaces and case do not matter.
 *
 * @param text the string, with normalized spaces
 * @param model the sequence model that it follows
 * @param elements its indices in order
 * @param sum the sum of the indices, including repeats
 */
public record IndexString(String text, SequenceModel model, List<Element> elements, long sum) {

    /** TMU in one index. */
    public static final long TMU_PER_INDEX = 10;

    /** Milliseconds in one TMU (0.00001 h). */
    public static final long MS_PER_TMU = 36;

    /** Greatest number of repeats of a group. */
    public static final int MAX_REPEATS = 9_999;

    public IndexString {
        elements = List.copyOf(elements);
    }

    /**
     * Reads an index string.
     *
     * @throws IndexStringException if a token does not fit; the message names it and, for an index
     *     that is not on the card, the nearest one that is
     */
    public static IndexString parse(String text) {
        return new IndexStringParser(text).parse();
    }

    /** Returns the time in TMU. */
    public long tmu() {
        return sum * TMU_PER_INDEX;
    }

    /** Returns the time in milliseconds. */
    public long ms() {
        return msOf(tmu());
    }

    /** Returns the time as a duration, with its string. */
    public Duration duration() {
        return new Duration(ms(), Duration.Basis.ELEMENTS, text);
    }

    /** Returns a number of TMU in milliseconds. */
    public static long msOf(long tmu) {
        return Math.multiplyExact(tmu, MS_PER_TMU);
    }

    /**
     * A letter with its index.
     *
     * @param repeats how often it counts; 1 outside of brackets
     */
    public record Element(char letter, int index, int repeats) {}
}
