package reseat.spi;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fills in a text with gaps. {@code ${name}} stands for a value. A line that ends in {@code #?
 * name=value} is kept, without that, only where the value is so; {@code #? name!=value} where it is
 * not; several conditions must all hold.
 */
public final class TemplateText {

    private static final Pattern GAP = Pattern.compile("\\$\\{([a-z0-9-]+)}");
    private static final Pattern CONDITION =
            Pattern.compile("\\s*#\\? ([a-z0-9-]+)(!?)=([^\\s#]*)\\s*$");

    private TemplateText() {}

    /**
     * Fills in a text.
     *
     * @param text the text; its lines end in {@code \n}
     * @param values values by name
     * @throws IllegalArgumentException if a gap or a condition names a value that there is not
     */
    public static String fill(String text, Map<String, String> values) {
        StringBuilder filled = new StringBuilder();
        for (String line : text.lines().toList()) {
            String rest = line;
            boolean kept = true;
            Matcher condition = CONDITION.matcher(rest);
            while (condition.find()) {
                boolean same = value(values, condition.group(1)).equals(condition.group(3));
                kept &= same == String.valueOf(condition.group(2)).isEmpty();
                rest = rest.substring(0, condition.start());
                condition = CONDITION.matcher(rest);
            }
            if (kept) {
                filled.append(
                                GAP.matcher(rest)
                                        .replaceAll(
                                                gap ->
                                                        Matcher.quoteReplacement(
                                                                value(values, gap.group(1)))))
                        .append('\n');
            }
        }
        return filled.toString();
    }

    private static String value(Map<String, String> values, String name) {
        String value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("the text names " + name + ", which has no value");
        }
        return value;
    }
}
