package reseat.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes maps, lists, strings, numbers and booleans as JSON, indented by two spaces, with keys in
 * the order given.
 */
public final class JsonText {

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    /**
     * Returns a value as JSON with a line feed at the end. Empty optionals, infinities and NaN
     * become null.
     */
    public static String of(Object value) {
        JsonText text = new JsonText();
        text.value(value, 0);
        return text.out.append('\n').toString();
    }

    /** Returns a map of keys and values, in the given order. */
    public static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }

    private void value(Object value, int level) {
        if (value instanceof Map<?, ?> map) {
            open('{', map.isEmpty());
            boolean first = true;
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                line(first, level + 1);
                first = false;
                text(String.valueOf(entry.getKey()));
                out.append(": ");
                value(entry.getValue(), level + 1);
            }
            close('}', map.isEmpty(), level);
        } else if (value instanceof Collection<?> list) {
            open('[', list.isEmpty());
            boolean first = true;
            for (Object item : list) {
                line(first, level + 1);
                first = false;
                value(item, level + 1);
            }
            close(']', list.isEmpty(), level);
        } else if (value instanceof Optional<?> some) {
            if (some.isPresent()) {
                value(some.get(), level);
            } else {
                out.append("null");
            }
        } else if (value instanceof OptionalDouble some) {
            number(some.orElse(Double.NaN));
        } else if (value instanceof Double number) {
            number(number);
        } else if (value instanceof BigDecimal number) {
            out.append(number.toPlainString());
        } else if (value instanceof Number || value instanceof Boolean) {
            out.append(value);
        } else if (value instanceof Enum<?> word) {
            text(word.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        } else {
            text(String.valueOf(value));
        }
    }

    /**
     * Writes nine digits, which exceeds the precision of any of these numbers and hides binary
     * rounding noise.
     */
    private void number(double number) {
        if (!Double.isFinite(number)) {
            out.append("null");
            return;
        }
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(9)).stripTrailingZeros();
        out.append(rounded.signum() == 0 ? "0" : rounded.toPlainString());
    }

    private void open(char bracket, boolean empty) {
        out.append(bracket);
        if (!empty) {
            out.append('\n');
        }
    }

    private void line(boolean first, int level) {
        if (!first) {
            out.append(",\n");
        }
        out.append("  ".repeat(level));
    }

    private void close(char bracket, boolean empty, int level) {
        if (!empty) {
            out.append('\n').append("  ".repeat(level));
        }
        out.append(bracket);
    }

    private void text(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
