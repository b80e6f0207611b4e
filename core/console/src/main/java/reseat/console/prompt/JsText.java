package reseat.console.prompt;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Analyses JavaScript text without running it. */
final class JsText {

    private static final Pattern DECLARES = Pattern.compile("(let|const)(?=[\\s\\[{])");

    private JsText() {}

    /**
     * Returns the text with its outermost {@code let} and {@code const} as {@code var}, so that a
     * name can be redeclared; every character keeps its position.
     */
    static String redeclaring(String text) {
        StringBuilder changed = new StringBuilder(text);
        Matcher matcher = DECLARES.matcher(text);
        int depth = 0;
        boolean fresh = true;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            int after = skipped(text, at);
            if (after > at) {
                fresh &= c == '/';
                at = after - 1;
            } else if (c == '(' || c == '[' || c == '{') {
                depth++;
                fresh = false;
            } else if (c == ')' || c == ']' || c == '}') {
                depth--;
                fresh = depth == 0;
            } else if (c == ';' || c == '\n') {
                fresh = true;
            } else if (depth == 0 && fresh && matcher.region(at, text.length()).lookingAt()) {
                changed.replace(
                        at, matcher.end(1), matcher.group(1).equals("let") ? "var" : "var  ");
                fresh = false;
                at = matcher.end(1) - 1;
            } else if (!Character.isWhitespace(c)) {
                fresh = false;
            }
        }
        return changed.toString();
    }

    /** Returns whether brackets, quotes or a comment are still open, in either language. */
    static boolean isOpen(String text) {
        int depth = 0;
        for (int at = 0; at < text.length(); at++) {
            int after = skipped(text, at);
            char c = text.charAt(at);
            if (after > at) {
                boolean comment = c == '/';
                String closing = comment ? "*/" : String.valueOf(c);
                boolean line = text.startsWith("//", at);
                String inner = text.substring(at, after);
                if (!line && (inner.length() < 2 * closing.length() || !inner.endsWith(closing))) {
                    return after == text.length() && (comment || c == '`');
                }
                at = after - 1;
            } else if (c == '(' || c == '[' || c == '{') {
                depth++;
            } else if (c == ')' || c == ']' || c == '}') {
                depth--;
            }
        }
        return depth > 0;
    }

    /**
     * Returns the end of a string or comment that starts at a position; the position itself if
     * none.
     */
    static int skipped(String text, int at) {
        char c = text.charAt(at);
        if (text.startsWith("//", at)) {
            int feed = text.indexOf('\n', at);
            return feed < 0 ? text.length() : feed;
        }
        if (text.startsWith("/*", at)) {
            int end = text.indexOf("*/", at + 2);
            return end < 0 ? text.length() : end + 2;
        }
        if (c != '"' && c != '\'' && c != '`') {
            return at;
        }
        for (int i = at + 1; i < text.length(); i++) {
            if (text.charAt(i) == '\\') {
                i++;
            } else if (text.charAt(i) == c) {
                return i + 1;
            } else if (text.charAt(i) == '\n' && c != '`') {
                return i;
            }
        }
        return text.length();
    }
}
