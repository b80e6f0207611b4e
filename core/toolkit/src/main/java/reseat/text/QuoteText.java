package reseat.text;

import java.util.Locale;

/** What a user gave, as a message repeats it. */
public final class QuoteText {

    /** How much of a user's text a message repeats. */
    private static final int QUOTED = 60;

    private QuoteText() {}

    /**
     * Returns the text in quotes, shortened, with what a terminal should not be sent made visible.
     */
    public static String of(String text) {
        StringBuilder out = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (shown++ == QUOTED) {
                return out.append("…\"").toString();
            }
            if (visible(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            }
            i += Character.charCount(c);
        }
        return out.append('"').toString();
    }

    static boolean visible(int c) {
        return !Character.isISOControl(c)
                && Character.getType(c) != Character.FORMAT
                && c != 0x2028
                && c != 0x2029;
    }
}
