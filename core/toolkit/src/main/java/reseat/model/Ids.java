package reseat.model;

import java.util.regex.Pattern;

/** What an id may look like. */
public final class Ids {

    /**
     * Letters, digits, dot, underscore, hyphen; starts with a letter or digit; at most 64
     * characters.
     */
    public static final String PATTERN = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    private static final Pattern ID = Pattern.compile(PATTERN);

    private Ids() {}

    /** Tells whether a text may be an id. */
    public static boolean valid(String text) {
        return ID.matcher(text).matches();
    }
}
