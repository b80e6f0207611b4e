package reseat.console.prompt;

import java.util.List;
import java.util.Locale;

/** Turns field names into headings, with their unit suffix. */
final class Heading {

    private record Unit(String ending, String sign) {}

    private static final List<Unit> UNITS =
            List.of(
                    new Unit("Mm2", "mm²"),
                    new Unit("Mm", "mm"),
                    new Unit("Um", "µm"),
                    new Unit("Nm", "N·m"),
                    new Unit("NewtonMetres", "N·m"),
                    new Unit("Ms", "ms"),
                    new Unit("MPa", "MPa"),
                    new Unit("Degrees", "°"),
                    new Unit("LoadN", "N"));

    private Heading() {}

    /** Returns the heading: "clampedMm" is "clamped mm", "madeCycles" is "made cycles". */
    static String of(String field) {
        for (Unit unit : UNITS) {
            if (field.endsWith(unit.ending) && field.length() > unit.ending.length()) {
                return words(field.substring(0, field.length() - unit.ending.length()))
                        + " "
                        + unit.sign;
            }
        }
        return switch (field) {
            case "ms" -> "ms";
            default -> words(field);
        };
    }

    private static String words(String name) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean starts =
                    Character.isUpperCase(c) && i > 0 && Character.isLowerCase(name.charAt(i - 1));
            text.append(starts ? " " : "").append(c);
        }
        String words = text.toString();
        return words.equals(words.toUpperCase(Locale.ROOT))
                ? words
                : words.toLowerCase(Locale.ROOT);
    }
}
