package reseat.graph;

import java.util.List;
import reseat.text.ListText;

/** Short texts for ids. */
final class Labels {

    private static final int MOST = 3;

    private Labels() {}

    /** Several ids in few words: "lid-1…4 (4)", "seat.a/b", "a, b and 5 more". */
    static String ids(List<String> ids) {
        String stem = stem(ids.get(0));
        if (ids.size() > 1 && !stem.isEmpty() && counted(ids, stem)) {
            String last = ids.get(ids.size() - 1).substring(stem.length());
            return ids.size() == 2
                    ? ids.get(0) + "/" + last
                    : ids.get(0) + "…" + last + " (" + ids.size() + ")";
        }
        if (ids.size() <= MOST) {
            return ListText.and(ids);
        }
        return ListText.first(ids, MOST - 1);
    }

    /** A verb for one or for several: "holds", "hold". */
    static String verb(List<String> ids, String verb) {
        return ids.size() == 1 ? verb + "s" : verb;
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
