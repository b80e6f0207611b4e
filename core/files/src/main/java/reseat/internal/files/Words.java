package reseat.internal.files;

import java.util.Collection;
import java.util.List;
import reseat.text.Nearest;

/** Wording shared by the messages of the reader. */
final class Words {

    /** How many known names a message lists. */
    private static final int LISTED = 40;

    private Words() {}

    /** Returns " Did you mean ...?" or, where nothing is near, a list of what is known. */
    static String hint(String found, Collection<String> known, String plural) {
        String near = Nearest.question(found, known);
        if (!near.isEmpty()) {
            return near;
        }
        if (known.isEmpty()) {
            return " There are no " + plural + ".";
        }
        List<String> some = known.stream().limit(LISTED).toList();
        return " Known "
                + plural
                + ": "
                + String.join(", ", some)
                + (known.size() > LISTED ? ", …" : "")
                + ".";
    }
}
