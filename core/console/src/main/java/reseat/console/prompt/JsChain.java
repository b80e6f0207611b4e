package reseat.console.prompt;

import java.util.ArrayList;
import java.util.List;

/**
 * Names and calls joined by dots, such as {@code q.parts().get("fan")}, as far as they are known
 * without running anything.
 *
 * @param links from left to right; empty for anything else
 */
record JsChain(List<Link> links) {

    /**
     * One name of a chain.
     *
     * @param name the name; empty for an element in brackets
     * @param called whether arguments follow
     */
    record Link(String name, boolean called) {}

    JsChain {
        links = List.copyOf(links);
    }

    /** Returns the chain that ends just before a dot. */
    static JsChain before(String text, int dot) {
        List<Link> links = new ArrayList<>();
        int at = dot;
        while (true) {
            int end = at;
            boolean called = false;
            while (end > 0 && (text.charAt(end - 1) == ')' || text.charAt(end - 1) == ']')) {
                int open = opening(text, end - 1);
                if (open < 0) {
                    return new JsChain(List.of());
                }
                if (text.charAt(end - 1) == ']') {
                    links.add(0, new Link("", false));
                } else {
                    called = true;
                }
                end = open;
            }
            int start = end;
            while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
                start--;
            }
            if (start == end) {
                return new JsChain(List.of());
            }
            links.add(0, new Link(text.substring(start, end), called));
            if (start == 0 || text.charAt(start - 1) != '.') {
                return new JsChain(links);
            }
            at = start - 1;
        }
    }

    /** Returns the position of the opening bracket for a closing one; -1 if none. */
    private static int opening(String text, int close) {
        int depth = 0;
        char quote = 0;
        for (int i = close; i >= 0; i--) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'' || c == '`') {
                quote = c;
            } else if (c == ')' || c == ']' || c == '}') {
                depth++;
            } else if (c == '(' || c == '[' || c == '{') {
                depth--;
                if (depth == 0) {
                    return i;
                }
            }
        }
        return -1;
    }
}
