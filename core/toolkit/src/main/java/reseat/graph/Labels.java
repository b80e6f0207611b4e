package reseat.graph;

import java.util.List;

/** Short texts for ids. */
final class Labels {

    private static final int MOST = 3;

    private Labels() {}

    /** Several ids in few words: "lid-1 … lid-4", "a, b", "a, b and 5 more". */
    static String ids(List<String> ids) {
        if (ids.size() > 2 && counted(ids)) {
            return ids.get(0) + " … " + ids.get(ids.size() - 1) + " (" + ids.size() + ")";
        }
        if (ids.size() <= MOST) {
            return and(ids);
        }
        return String.join(", ", ids.subList(0, MOST - 1))
                + " and "
                + (ids.size() - MOST + 1)
                + " more";
    }

    /** All ids: "a", "a and b", "a, b and c". */
    static String and(List<String> ids) {
        return list(ids, " and ");
    }

    /** All ids: "a", "a or b", "a, b or c". */
    static String or(List<String> ids) {
        return list(ids, " or ");
    }

    /** A verb for one or for several: "holds", "hold". */
    static String verb(List<String> ids, String verb) {
        return ids.size() == 1 ? verb + "s" : verb;
    }

    private static String list(List<String> ids, String last) {
        int n = ids.size();
        return n < 2
                ? String.join("", ids)
                : String.join(", ", ids.subList(0, n - 1)) + last + ids.get(n - 1);
    }

    private static boolean counted(List<String> ids) {
        String stem = stem(ids.get(0));
        int number = number(ids.get(0));
        for (String id : ids) {
            if (number < 0 || !stem(id).equals(stem) || number(id) != number) {
                return false;
            }
            number++;
        }
        return true;
    }

    private static String stem(String id) {
        int end = id.length();
        while (end > 0 && Character.isDigit(id.charAt(end - 1))) {
            end--;
        }
        return id.substring(0, end);
    }

    private static int number(String id) {
        String digits = id.substring(stem(id).length());
        return digits.isEmpty() || digits.length() > 8 ? -1 : Integer.parseInt(digits);
    }
}
