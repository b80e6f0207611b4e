package reseat.console.sheet;

import java.io.Console;
import java.lang.reflect.Method;
import java.util.Locale;
import java.util.Map;

/**
 * The capabilities of the destination of a text.
 *
 * @param interactive whether it is interactive
 * @param width width in columns
 * @param colour whether colour may be used
 * @param ascii whether to use only ASCII for our own symbols
 */
public record Terminal(boolean interactive, int width, boolean colour, boolean ascii) {

    /** Width of text that does not go to a terminal. */
    public static final int WIDTH = 100;

    private static final int NARROWEST = 60;

    /** Returns the capabilities of a file or a pipe: just a reasonable width. */
    public static Terminal none() {
        return new Terminal(false, WIDTH, false, false);
    }

    /** Reads the environment. */
    public static Terminal detect() {
        return of(isTerminal(System.console()), System.getenv());
    }

    /** Decides by the environment. */
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
     * Returns a line in the form that suits the destination: wrapped between words on a terminal,
     * unchanged in a file or a pipe, where programs search for lines.
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

    /** Since Java 22 there is a console even without a terminal; it has a method to check. */
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
