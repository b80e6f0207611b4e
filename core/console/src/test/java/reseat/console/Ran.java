package reseat.console;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What came out of one command, run inside this process; line ends are {@code \n}. */
public record Ran(int code, String out, String err) {

    public static Ran reseat(String... args) {
        return reseat(false, args);
    }

    public static Ran reseat(boolean trace, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), trace, args);
        return new Ran(code, unixLines(out), unixLines(err));
    }

    private static String unixLines(StringWriter text) {
        return text.toString().replace("\r\n", "\n");
    }
}
