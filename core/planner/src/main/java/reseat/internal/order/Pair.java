package reseat.internal.order;

/**
 * One item comes before another.
 *
 * @param earlier number of an item
 * @param later number of another
 */
public record Pair(int earlier, int later) {

    public Pair {
        if (earlier == later) {
            throw new IllegalArgumentException("item " + earlier + " cannot come before itself");
        }
    }

    /** Returns the pair the other way round. */
    public Pair turned() {
        return new Pair(/* earlier= */ later, /* later= */ earlier);
    }
}
