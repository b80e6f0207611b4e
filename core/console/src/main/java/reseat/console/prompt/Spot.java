package reseat.console.prompt;

/**
 * The position of the cursor in the input, for completion.
 *
 * @param start the start of the current word
 * @param word the word up to the cursor
 * @param quoted whether it is inside a text in quotes
 * @param call the function whose argument it is; empty if none
 * @param argument which argument of it, counted from 0
 */
record Spot(int start, String word, boolean quoted, String call, int argument) {

    static Spot of(String text, int cursor) {
        int quote = openQuote(text, cursor);
        if (quote >= 0) {
            int open = openBracket(text, quote);
            return new Spot(
                    quote + 1,
                    text.substring(quote + 1, cursor),
                    true,
                    open < 0 ? "" : nameBefore(text, open),
                    open < 0 ? 0 : commas(text, open, quote));
        }
        int start = cursor;
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return new Spot(start, text.substring(start, cursor), false, "", 0);
    }

    /** Returns the position of the opening quote around the cursor; -1 if none. */
    private static int openQuote(String text, int cursor) {
        int at = 0;
        while (at < cursor) {
            char c = text.charAt(at);
            int after = JsText.skipped(text, at);
            if (after > at) {
                boolean quotes = c == '"' || c == '\'' || c == '`';
                boolean closed = after <= cursor && after - 1 > at && text.charAt(after - 1) == c;
                if (quotes && (after > cursor || !closed)) {
                    return at;
                }
                at = after;
            } else {
                at++;
            }
        }
        return -1;
    }

    private static int openBracket(String text, int before) {
        int depth = 0;
        for (int i = before - 1; i >= 0; i--) {
            char c = text.charAt(i);
            if (c == ')' || c == ']' || c == '}') {
                depth++;
            } else if (c == '(' || c == '[' || c == '{') {
                if (depth == 0) {
                    return c == '(' ? i : -1;
                }
                depth--;
            }
        }
        return -1;
    }

    private static String nameBefore(String text, int open) {
        int start = open;
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return text.substring(start, open);
    }

    private static int commas(String text, int open, int quote) {
        int depth = 0;
        int count = 0;
        for (int i = open + 1; i < quote; i++) {
            int after = JsText.skipped(text, i);
            char c = text.charAt(i);
            if (after > i) {
                i = after - 1;
            } else if (c == '(' || c == '[' || c == '{') {
                depth++;
            } else if (c == ')' || c == ']' || c == '}') {
                depth--;
            } else if (c == ',' && depth == 0) {
                count++;
            }
        }
        return count;
    }
}
