package reseat.model;

/** The syntax of ids. */
public final class Ids {

    /**
     * Letters, digits, dot, underscore, hyphen; starts with a letter or digit; at most 64
     * characters.
     */
    public static final String PATTERN = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    private static final int LONGEST = 64;

    private Ids() {}

    /** Returns whether a text is a valid id. */
    public static boolean valid(String text) {
        // no regular expression: readers check every id of every file
        int length = text.length();
        if (length == 0 || length > LONGEST || !letterOrDigit(text.charAt(0))) {
            return false;
        }
        for (int i = 1; i < length; i++) {
            char c = text.charAt(i);
            if (!letterOrDigit(c) && c != '.' && c != '_' && c != '-') {
                return false;
            }
        }
        return true;
    }

    private static boolean letterOrDigit(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    }
}
