package reseat.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON into maps, lists, texts, numbers and truth values, with no code of ours. */
final class PlainJson {

    private final String text;
    private int at;

    private PlainJson(String text) {
        this.text = text;
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(String text) {
        PlainJson json = new PlainJson(text);
        Map<String, Object> value = (Map<String, Object>) json.value();
        if (json.peek() != 0) {
            throw new IllegalArgumentException("more after the end: " + json.at);
        }
        return value;
    }

    private char peek() {
        while (at < text.length() && text.charAt(at) <= ' ') {
            at++;
        }
        return at < text.length() ? text.charAt(at) : 0;
    }

    private boolean take(char c) {
        if (peek() == c) {
            at++;
            return true;
        }
        return false;
    }

    private void need(char c) {
        if (!take(c)) {
            throw new IllegalArgumentException("expected " + c + " at " + at);
        }
    }

    private Object value() {
        return switch (peek()) {
            case '{' -> map();
            case '[' -> list();
            case '"' -> string();
            default -> bare();
        };
    }

    private Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        need('{');
        if (!take('}')) {
            do {
                peek();
                String key = string();
                need(':');
                map.put(key, value());
            } while (take(','));
            need('}');
        }
        return map;
    }

    private List<Object> list() {
        List<Object> list = new ArrayList<>();
        need('[');
        if (!take(']')) {
            do {
                list.add(value());
            } while (take(','));
            need(']');
        }
        return list;
    }

    private String string() {
        StringBuilder out = new StringBuilder();
        need('"');
        while (text.charAt(at) != '"') {
            char c = text.charAt(at++);
            if (c == '\\') {
                c = text.charAt(at++);
                switch (c) {
                    case 'n' -> c = '\n';
                    case 't' -> c = '\t';
                    case 'r' -> c = '\r';
                    case 'u' -> {
                        c = (char) Integer.parseInt(text.substring(at, at + 4), 16);
                        at += 4;
                    }
                    default -> {}
                }
            }
            out.append(c);
        }
        at++;
        return out.toString();
    }

    private Object bare() {
        int from = at;
        while (at < text.length() && ",]} \n\r\t".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String word = text.substring(from, at);
        return switch (word) {
            case "true" -> true;
            case "false" -> false;
            case "null" -> Double.NaN;
            default -> Double.valueOf(word);
        };
    }
}
