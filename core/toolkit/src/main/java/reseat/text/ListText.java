package reseat.text;

import java.util.Collection;
import java.util.List;

/** Formats lists for people. */
public final class ListText {

    private static final int MOST = 3;

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

    /**
     * Returns ids in few words: {@code a, b and 5 more}, or the first and the last of a row of
     * numbered ones.
     */
    public static String ids(List<String> ids) {
        String stem = stem(ids.get(0));
        if (ids.size() > 1 && !stem.isEmpty() && counted(ids, stem)) {
            String last = ids.get(ids.size() - 1).substring(stem.length());
            return ids.size() == 2
                    ? ids.get(0) + "/" + last
                    : ids.get(0) + "…" + last + " (" + ids.size() + ")";
        }
        if (ids.size() <= MOST) {
            return and(ids);
        }
        return String.join(", ", ids.subList(0, MOST - 1))
                + " and "
                + (ids.size() - MOST + 1)
                + " more";
    }

    private static boolean counted(List<String> ids, String stem) {
        int number = number(ids.get(0), stem);
        for (String id : ids) {
            if (number < 0 || !id.startsWith(stem) || number(id, stem) != number) {
                return false;
            }
            number++;
        }
        return true;
    }

    /** What comes before the number or the single letter at the end of an id. */
    private static String stem(String id) {
        int end = id.length();
        while (end > 0 && Character.isDigit(id.charAt(end - 1))) {
            end--;
        }
        if (end < id.length()) {
            return id.substring(0, end);
        }
        return end > 1 && !Character.isLetter(id.charAt(end - 2)) ? id.substring(0, end - 1) : "";
    }

    private static int number(String id, String stem) {
        String rest = id.substring(Math.min(stem.length(), id.length()));
        if (rest.length() == 1 && Character.isLetter(rest.charAt(0))) {
            return rest.charAt(0);
        }
        boolean digits = !rest.isEmpty() && rest.chars().allMatch(Character::isDigit);
        return digits && rest.length() < 9 ? Integer.parseInt(rest) : -1;
    }
}
