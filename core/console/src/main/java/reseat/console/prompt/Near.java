package reseat.console.prompt;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Suggests the nearest known name. */
final class Near {

    private Near() {}

    /** Returns "; did you mean ..." or nothing. */
    static String hint(String wanted, Collection<String> known) {
        String near = "";
        int best = Math.max(2, wanted.length() / 3) + 1;
        for (String each : known) {
            int away = distance(wanted, each);
            if (away < best) {
                best = away;
                near = each;
            }
        }
        return near.isEmpty() ? "" : "; did you mean \"" + near + "\"?";
    }

    static List<String> membersOf(String type) {
        try {
            return Arrays.stream(Class.forName(type).getMethods())
                    .map(Method::getName)
                    .distinct()
                    .sorted()
                    .collect(Collectors.toList());
        } catch (ClassNotFoundException | LinkageError e) {
            return List.of();
        }
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
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
