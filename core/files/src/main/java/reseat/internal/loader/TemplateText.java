package reseat.internal.loader;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fills in a text with gaps. {@code ${name}} stands for a value. {@code ${seats name margin}}
 * stands for as many seats along the edge as the value says, in an outline of the values {@code
 * width} and {@code height}. A line that ends in {@code #? name=value} is kept, without that, only
 * where the value is so; {@code #? name!=value} where it is not; several conditions must all hold.
 */
final class TemplateText {

    /** Values that every template has without a question. */
    static final List<String> GIVEN = List.of("id", "name", "maker");

    /** As many seats as there are letters for them. */
    static final int MOST_SEATS = 26;

    static final Pattern GAP = Pattern.compile("\\$\\{([a-z0-9-]+)}");
    static final Pattern SEATS = Pattern.compile("\\$\\{seats ([a-z0-9-]+) ([0-9]{1,3})}");
    static final Pattern CONDITION = Pattern.compile("\\s*#\\? ([a-z0-9-]+)(!?)=([^\\s#]*)\\s*$");

    private TemplateText() {}

    /**
     * Fills in the placeholders of a text.
     *
     * @param text the text; its lines end in {@code \n}
     * @param values values by name
     * @throws IllegalArgumentException if a placeholder or a condition names an unknown value
     */
    static String fill(String text, Map<String, String> values) {
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
                rest = SEATS.matcher(rest).replaceAll(gap -> seats(values, gap));
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

    /**
     * Returns seats spread evenly along the edge of a rectangle, as the value of {@code seats}: a
     * starting point for a person to correct.
     *
     * @param count how many, 1 to 26
     * @param width width of the outline in mm
     * @param height height of the outline in mm
     * @param margin how far they lie from its edge in mm
     */
    private static String seatsAround(int count, int width, int height, int margin) {
        if (count < 1 || count > MOST_SEATS) {
            throw new IllegalArgumentException("1 to " + MOST_SEATS + " seats, not " + count);
        }
        double inset = Math.min(margin, Math.min(width, height) / 4.0);
        double w = width - 2 * inset;
        double h = height - 2 * inset;
        StringBuilder seats = new StringBuilder("{");
        for (int i = 0; i < count; i++) {
            double along = 2 * (w + h) * i / count;
            double x = along < w ? along : along < w + h ? w : Math.max(0, 2 * w + h - along);
            double y =
                    along < w
                            ? 0
                            : along < w + h
                                    ? along - w
                                    : along < 2 * w + h ? h : 2 * (w + h) - along;
            seats.append(i == 0 ? "" : ", ")
                    .append((char) ('a' + i))
                    .append(": {x: ")
                    .append(Math.round(inset + x))
                    .append(", y: ")
                    .append(Math.round(inset + y))
                    .append('}');
        }
        return seats.append('}').toString();
    }

    private static String seats(Map<String, String> values, MatchResult gap) {
        return seatsAround(
                number(values, gap.group(1)),
                number(values, "width"),
                number(values, "height"),
                Integer.parseInt(gap.group(2)));
    }

    private static int number(Map<String, String> values, String name) {
        String value = value(values, name);
        if (!value.matches("[0-9]{1,6}")) {
            throw new IllegalArgumentException(name + " must be a whole number, not " + value);
        }
        return Integer.parseInt(value);
    }

    private static String value(Map<String, String> values, String name) {
        String value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException(
                    "the text refers to " + name + ", which has no value");
        }
        return value;
    }
}
