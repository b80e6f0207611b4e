package reseat.internal.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.internal.text.Edits;

/** Wording shared by the messages of the reader. */
final class Words {

    /** How much of a user's text a message repeats. */
    private static final int QUOTED = 60;

    /** How many known names a message lists. */
    private static final int LISTED = 40;

    /** Longer names are never compared: an id has at most 64 characters. */
    private static final int COMPARED = 100;

    private Words() {}

    /** Returns the text in quotes, shortened, with control characters made visible. */
    static String quote(String text) {
        StringBuilder out = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (shown++ == QUOTED) {
                return out.append("…\"").toString();
            }
            if (Character.isISOControl(c)
                    || Character.getType(c) == Character.FORMAT
                    || c == 0x2028
                    || c == 0x2029) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.appendCodePoint(c);
            }
            i += Character.charCount(c);
        }
        return out.append('"').toString();
    }

    /** Returns " Did you mean ...?" or, if nothing is close, a list of the known names. */
    static String hint(String found, Collection<String> known, String plural) {
        Optional<String> nearest = nearest(found, known);
        if (nearest.isPresent()) {
            return " Did you mean " + quote(nearest.get()) + "?";
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

    /**
     * Returns the closest known name by edit distance, if close enough; else the shortest that has
     * the text as one of its words, as "wire-plug" has "plug".
     */
    static Optional<String> nearest(String found, Collection<String> known) {
        if (found.isEmpty() || found.length() > COMPARED) {
            return Optional.empty();
        }
        String low = found.toLowerCase(Locale.ROOT);
        String best = null;
        int bestEdits = Math.max(1, found.length() / 3) + 1;
        for (String each : known) {
            String other = each.toLowerCase(Locale.ROOT);
            // many names are compared, most of them of very different length
            int edits =
                    Math.abs(low.length() - other.length()) < bestEdits
                            ? Edits.between(low, other)
                            : bestEdits;
            if (edits < bestEdits) {
                best = each;
                bestEdits = edits;
            }
        }
        return Optional.ofNullable(best)
                .or(
                        () ->
                                known.stream()
                                        .filter(each -> wordsOf(each).contains(low))
                                        .min(Comparator.comparingInt(String::length)));
    }

    private static List<String> wordsOf(String id) {
        return List.of(id.toLowerCase(Locale.ROOT).split("[-_.]", -1));
    }

    /** Returns "a", "a and b", "a, b and c". */
    static String and(Collection<String> texts) {
        return join(texts, " and ");
    }

    /** Returns "a", "a or b", "a, b or c". */
    static String or(Collection<String> texts) {
        return join(texts, " or ");
    }

    private static String join(Collection<String> texts, String lastJoin) {
        List<String> all = new ArrayList<>(texts);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1))
                + lastJoin
                + all.get(all.size() - 1);
    }
}
