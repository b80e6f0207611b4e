package reseat.text;

import java.util.Collection;
import java.util.List;

/** Formats lists for people. */
public final class ListText {

    private ListText() {}

    /** Returns {@code a}, {@code a and b} or {@code a, b and c}; the empty string for no words. */
    public static String and(Collection<String> words) {
        List<String> all = List.copyOf(words);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1))
                + " and "
                + all.get(all.size() - 1);
    }
}
