package reseat.internal.spi;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Versions of the plugin interface that a plugin supports: {@code [1,2)}, {@code [1,3]}, {@code 1}.
 *
 * @param least the first one
 * @param most the last one
 */
public record ApiRange(int least, int most) {

    private static final Pattern RANGE =
            Pattern.compile("([\\[(])\\s*([0-9]{1,6})\\s*,\\s*([0-9]{1,6})\\s*([])])|([0-9]{1,6})");

    static ApiRange parse(String text) {
        Matcher m = RANGE.matcher(text.strip());
        if (!m.matches()) {
            throw new IllegalArgumentException(
                    "its api is invalid: \"" + text + "\"; expected a version range such as [1,2)");
        }
        if (m.group(5) != null) {
            int only = number(m, 5);
            return new ApiRange(only, only);
        }
        int least = number(m, 2) + ("(".equals(m.group(1)) ? 1 : 0);
        int most = number(m, 3) - (")".equals(m.group(4)) ? 1 : 0);
        return new ApiRange(least, most);
    }

    /**
     * Returns why a plugin with a range does not support a version; empty if it does.
     *
     * @param range the text of the range
     */
    public static Optional<String> hindrance(String range, int version) {
        try {
            if (parse(range).holds(version)) {
                return Optional.empty();
            }
        } catch (IllegalArgumentException e) {
            return Optional.ofNullable(e.getMessage());
        }
        return Optional.of(
                "it is written for version "
                        + range
                        + " of Reseat's interface; this is version "
                        + version);
    }

    private static int number(Matcher m, int group) {
        return Integer.parseInt(String.valueOf(m.group(group)));
    }

    boolean holds(int version) {
        return least <= version && version <= most;
    }
}
