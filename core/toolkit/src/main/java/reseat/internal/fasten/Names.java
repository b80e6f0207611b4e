package reseat.internal.fasten;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import reseat.fasten.FastenerInputException;
import reseat.internal.text.Edits;

/** Suggestions for a name that is unknown. */
public final class Names {

    private static final int MOST = 40;
    private static final Pattern COMMA = Pattern.compile(",");

    private Names() {}

    /** Returns the error for an unknown name. */
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
                        .filter(name -> Edits.between(low, name.toLowerCase(Locale.ROOT)) <= limit)
                        .sorted(
                                Comparator.<String>comparingInt(
                                                name ->
                                                        Edits.between(
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

    /** Returns a list of names, shortened if there are very many. */
    public static String list(Collection<String> known) {
        if (known.isEmpty()) {
            return "none";
        }
        String shown = String.join(", ", known.stream().limit(MOST).toList());
        return known.size() > MOST ? shown + " and " + (known.size() - MOST) + " more" : shown;
    }
}
