package reseat.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The known name that somebody probably meant, and the question that offers it. */
public final class Nearest {

    /** Longer names are never compared: an id has at most 64 characters. */
    private static final int COMPARED = 100;

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[-_.:/+ ]");

    private Nearest() {}

    /**
     * Returns the known name that is fewest letters away, upper and lower case being the same, if
     * at most a third of the letters differ, or one of two or three; else the shortest that has the
     * text as one of its words, as "wire-plug" has "plug". Of names that are as near, the first by
     * the alphabet.
     *
     * @param wanted what was given
     * @param known the names that there are; one that a terminal should not be sent is not offered
     */
    public static Optional<String> of(String wanted, Collection<String> known) {
        if (wanted.isEmpty() || wanted.length() > COMPARED) {
            return Optional.empty();
        }
        String low = wanted.toLowerCase(Locale.ROOT);
        String best = null;
        int most = Math.max(1, wanted.length() / 3);
        for (String each : known) {
            String other = each.toLowerCase(Locale.ROOT);
            // many names are compared, most of them of quite another length
            if (Math.abs(low.length() - other.length()) > most) {
                continue;
            }
            int away = edits(low, other);
            boolean nearer = best == null || away < most || each.compareTo(best) < 0;
            boolean alike = away <= most && away < Math.max(low.length(), other.length());
            if (alike && nearer && plain(each)) {
                best = each;
                most = away;
            }
        }
        return best != null ? Optional.of(best) : withWord(low, known);
    }

    private static Optional<String> withWord(String word, Collection<String> known) {
        return known.stream()
                .filter(Nearest::plain)
                .filter(each -> wordsOf(each).contains(word))
                .min(
                        Comparator.comparingInt(String::length)
                                .thenComparing(Comparator.naturalOrder()));
    }

    private static List<String> wordsOf(String name) {
        return List.of(BETWEEN_WORDS.split(name.toLowerCase(Locale.ROOT), -1));
    }

    private static boolean plain(String name) {
        return name.length() <= COMPARED && name.codePoints().allMatch(QuoteText::visible);
    }

    /** Returns {@code Did you mean "board"?} with a blank before it; nothing if no name is near. */
    public static String question(String wanted, Collection<String> known) {
        return of(wanted, known).map(name -> " Did you mean \"" + name + "\"?").orElse("");
    }

    /** Returns the same question for within a sentence: {@code (did you mean "board"?)}. */
    public static String aside(String wanted, Collection<String> known) {
        return of(wanted, known).map(name -> " (did you mean \"" + name + "\"?)").orElse("");
    }

    /**
     * Returns the edit distance with swaps of neighbours (optimal string alignment): the least
     * number of letters put in, left out, changed or swapped with the next that turns one word into
     * the other.
     */
    static int edits(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int k = 0; k <= b.length(); k++) {
            last[k] = k;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int k = 1; k <= b.length(); k++) {
                int same = a.charAt(i - 1) == b.charAt(k - 1) ? 0 : 1;
                row[k] = Math.min(Math.min(last[k] + 1, row[k - 1] + 1), last[k - 1] + same);
                if (i > 1
                        && k > 1
                        && a.charAt(i - 1) == b.charAt(k - 2)
                        && a.charAt(i - 2) == b.charAt(k - 1)) {
                    row[k] = Math.min(row[k], beforeLast[k - 2] + 1);
                }
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return last[b.length()];
    }
}
