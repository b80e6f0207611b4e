package reseat.console.sheet;

import java.io.Console;
import java.lang.reflect.Method;
import java.util.Locale;
import java.util.Map;

/**
 * What the place that a text goes to can show.
 *
 * @param interactive whether a person sits there
 * @param width columns that a text may fill
 * @param colour whether colour may be used
 * @param ascii whether nothing but ASCII may be used for our own signs
 */
public record Terminal(boolean interactive, int width, boolean colour, boolean ascii) {

    /** Width of a text that goes to no terminal. */
    public static final int WIDTH = 100;

    private static final int NARROWEST = 60;

    /** Returns what is known of a file or a pipe: nothing but a fair width. */
    public static Terminal none() {
        return new Terminal(false, WIDTH, false, false);
    }

    /** Asks the environment. */
    public static Terminal detect() {
        return of(isTerminal(System.console()), System.getenv());
    }

    /** Decides by what the environment says. */
    static Terminal of(boolean interactive, Map<String, String> env) {
        if (!interactive) {
            return none();
        }
        boolean dumb = "dumb".equals(env.get("TERM"));
        boolean colour = !dumb && !env.containsKey("NO_COLOR") && env.containsKey("TERM");
        String locale =
                env.getOrDefault(
                        "LC_ALL", env.getOrDefault("LC_CTYPE", env.getOrDefault("LANG", "")));
        boolean utf8 = locale.toUpperCase(Locale.ROOT).replace("-", "").endsWith("UTF8");
        return new Terminal(true, width(env.get("COLUMNS")), colour, !utf8);
    }

    /**
     * Returns a line as it fits here: broken between words where a person sits, whole in a file or
     * a pipe, where one looks for lines.
     */
    public String fitted(String line) {
        if (!interactive || line.length() <= width) {
            return line;
        }
        String inner = line.stripLeading();
        String lead = " ".repeat(line.length() - inner.length());
        String hang = lead + "    ";
        return lead
                + String.join(
                        System.lineSeparator() + hang, Paper.wrap(inner, width - hang.length()));
    }

    /** Returns the same terminal, limited to ASCII. */
    public Terminal asciiOnly() {
        return new Terminal(interactive, width, colour, true);
    }

    /** Returns the same terminal with another width. */
    public Terminal wide(int columns) {
        return new Terminal(interactive, Math.max(columns, NARROWEST), colour, ascii);
    }

    private static int width(@org.jspecify.annotations.Nullable String columns) {
        if (columns != null && columns.matches("[1-9][0-9]{0,3}")) {
            return Math.min(Math.max(Integer.parseInt(columns), NARROWEST), 120);
        }
        return WIDTH;
    }

    /** From Java 22 on there is a console even where there is no terminal; it can be asked. */
    private static boolean isTerminal(@org.jspecify.annotations.Nullable Console console) {
        if (console == null) {
            return false;
        }
        try {
            Method asks = Console.class.getMethod("isTerminal");
            return Boolean.TRUE.equals(asks.invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
