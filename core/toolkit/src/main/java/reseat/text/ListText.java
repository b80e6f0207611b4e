package reseat.text;

import java.util.Collection;
import java.util.List;

/** Lists as people read them. */
public final class ListText {

    private ListText() {}

    /** Returns {@code a}, {@code a and b} or {@code a, b and c}; the empty string for no words. */
    public static String and(Collection<String> words) {
        return joined(words, " and ");
    }

    /** Returns {@code a}, {@code a or b} or {@code a, b or c}; the empty string for no words. */
    public static String or(Collection<String> words) {
        return joined(words, " or ");
    }

    /**
     * Returns the first words, separated by commas, and how many more there are: {@code a, b and 7
     * more}; {@code none} for no words.
     *
     * @param most how many words are listed at most
     */
    public static String first(Collection<String> words, int most) {
        if (words.isEmpty()) {
            return "none";
        }
        String listed = String.join(", ", words.stream().limit(most).toList());
        int more = words.size() - most;
        return more > 0 ? listed + " and " + more + " more" : listed;
    }

    private static String joined(Collection<String> words, String beforeLast) {
        List<String> all = List.copyOf(words);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1))
                + beforeLast
                + all.get(all.size() - 1);
    }
}
