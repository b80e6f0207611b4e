package reseat.script.host;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.SourceSection;

/** Describes in a sentence why a JavaScript script did not finish. */
final class JsTrouble {

    private static final int SHOWN = 300;

    private static final Pattern SYNTAX = Pattern.compile("^SyntaxError: (\\S*:[0-9]+:[0-9]+ )?");

    private static final Pattern MEMBER =
            Pattern.compile(
                    "(invoke|read|write)Member \\((\\w+)\\) on ([\\w.$]+) failed due to: Unknown");

    private JsTrouble() {}

    static String of(PolyglotException thrown, ScriptLimits limits, boolean late) {
        if (late) {
            return "it was stopped after " + limits.seconds() + " s: it does not terminate";
        }
        if (thrown.isResourceExhausted() && message(thrown).contains("Statement")) {
            return String.format(
                    Locale.ROOT,
                    "it was stopped after %,d statements: it does not terminate",
                    limits.statements());
        }
        if (thrown.isCancelled() || thrown.isInterrupted()) {
            return "it was stopped";
        }
        String place = place(thrown);
        if (thrown.isSyntaxError()) {
            String said = message(thrown).lines().findFirst().orElse("");
            return place
                    + "it is not valid JavaScript: "
                    + shown(SYNTAX.matcher(said).replaceFirst(""));
        }
        if (thrown.isHostException()) {
            Throwable host = thrown.asHostException();
            String said = host.getMessage();
            if (host instanceof UnsupportedOperationException) {
                return place + "it tried to change a read-only object";
            }
            return place
                    + (said == null
                            ? "the toolkit threw " + host.getClass().getSimpleName()
                            : shown(said));
        }
        if (message(thrown).contains("Maximum call stack size exceeded")) {
            return place + "it has endless recursion";
        }
        if (thrown.isInternalError()) {
            return place + "the JavaScript engine failed: " + shown(message(thrown));
        }
        return place + plainly(shown(message(thrown)));
    }

    /** Rewords engine messages about class members in terms of the API. */
    private static String plainly(String message) {
        Matcher member = MEMBER.matcher(message);
        if (!member.find()) {
            return message;
        }
        String type = member.group(3).substring(member.group(3).lastIndexOf('.') + 1);
        return member.group(1).equals("write")
                ? "it tried to change " + member.group(2) + " of " + type + ", which is read-only"
                : type + " has no " + member.group(2) + " that a script may call";
    }

    /** Returns a text as one short line that is safe for a terminal. */
    static String shown(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length() && out.length() < SHOWN; ) {
            int c = text.codePointAt(i);
            boolean plain = !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT;
            out.appendCodePoint(plain ? c : ' ');
            i += Character.charCount(c);
        }
        return out.append(text.length() > out.length() ? " ..." : "").toString().strip();
    }

    private static String message(PolyglotException thrown) {
        String text = thrown.getMessage();
        return text == null || text.isBlank() ? "it failed without a message" : text;
    }

    private static String place(PolyglotException thrown) {
        SourceSection at = thrown.getSourceLocation();
        return at == null || !at.isAvailable() ? "" : "line " + at.getStartLine() + ": ";
    }
}
