package reseat.internal.fasten;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import reseat.fasten.FastenerInputException;

/** Names that are known, told to somebody who used another. */
public final class Names {

    private static final int MOST = 40;
    private static final Pattern COMMA = Pattern.compile(",");

    private Names() {}

    /** Returns the error for a name that nothing has. */
    public static FastenerInputException unknown(
            String what, String wanted, Collection<String> known) {
        return new FastenerInputException(
                "There is no "
                        + what
                        + " \""
                        + wanted
                        + "\"."
                        + hint(wanted, known)
                        + " Known: "
                        + list(known)
                        + ".");
    }

    /** Returns " Did you mean ...?" or nothing. */
    public static String hint(String wanted, Collection<String> known) {
        String low = wanted.toLowerCase(Locale.ROOT);
        int limit = wanted.length() < 4 ? 1 : Math.max(2, wanted.length() / 3);
        List<String> near =
                known.stream()
                        .filter(name -> distance(low, name.toLowerCase(Locale.ROOT)) <= limit)
                        .sorted(
                                Comparator.<String>comparingInt(
                                                name ->
                                                        distance(
                                                                low, name.toLowerCase(Locale.ROOT)))
                                        .thenComparing(Comparator.naturalOrder()))
                        .limit(3)
                        .toList();
        return near.isEmpty() ? "" : " Did you mean " + String.join(" or ", near) + "?";
    }

    /** Returns the items of a text with commas between, trimmed; none for an empty text. */
    public static List<String> items(String text) {
        return COMMA.splitAsStream(text)
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
    }

    /** Returns names in a row, cut short where they are very many. */
    public static String list(Collection<String> known) {
        if (known.isEmpty()) {
            return "none";
        }
        String shown = String.join(", ", known.stream().limit(MOST).toList());
        return known.size() > MOST ? shown + " and " + (known.size() - MOST) + " more" : shown;
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j] + 1, row[j - 1] + 1), diagonal + change);
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
