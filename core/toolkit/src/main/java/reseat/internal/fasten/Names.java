package reseat.internal.fasten;

import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import reseat.fasten.FastenerInputException;
import reseat.text.ListText;
import reseat.text.Nearest;

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
                        + Nearest.question(wanted, known)
                        + " Known: "
                        + list(known)
                        + ".");
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
        return ListText.first(known, MOST);
    }
}
