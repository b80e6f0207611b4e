package reseat.console.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.UnresolvedReferenceException;
import org.jspecify.annotations.Nullable;
import reseat.text.Nearest;

/** Rewords errors of Java, and locates them in the input. */
final class JavaTroubles {

    private JavaTroubles() {}

    /** Returns the errors of the compiler. */
    static List<Trouble> of(JShell shell, Snippet snippet, int from) {
        return shell.diagnostics(snippet)
                .filter(Diag::isError)
                .map(diag -> trouble(diag).shifted(from))
                .toList();
    }

    private static Trouble trouble(Diag diag) {
        List<String> lines =
                diag.getMessage(Locale.ROOT)
                        .lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .map(JavaTroubles::short_)
                        .toList();
        String first = lines.isEmpty() ? "invalid Java" : lines.get(0);
        return first.equals("cannot find symbol")
                ? unknown(diag, lines)
                : new Trouble(
                        (int) diag.getStartPosition(),
                        (int) diag.getEndPosition(),
                        first,
                        lines.stream().skip(1).toList());
    }

    /** Names the missing symbol and its location, and marks only its name. */
    private static Trouble unknown(Diag diag, List<String> lines) {
        String symbol = after(lines, "symbol:");
        String location = after(lines, "location:");
        String type =
                location.replaceFirst(".* of type ", "").replaceFirst("^(class|interface) ", "");
        String name = symbol.replaceFirst("^\\w+ ", "").replaceFirst("\\(.*", "");
        boolean ours = !type.isBlank() && !type.equals("class") && !type.startsWith("$JShell");
        return Trouble.at(
                Math.max(
                        (int) diag.getStartPosition(), (int) diag.getEndPosition() - name.length()),
                (int) diag.getEndPosition(),
                "there is no "
                        + symbol
                        + (ours
                                ? " in "
                                        + type
                                        + Nearest.aside(name, Members.of(ApiWords.full(type)))
                                : ""));
    }

    private static String after(List<String> lines, String label) {
        return lines.stream()
                .filter(line -> line.startsWith(label))
                .map(line -> line.substring(label.length()).strip())
                .findFirst()
                .orElse("");
    }

    /** Removes package names; users type the short name. */
    private static String short_(String line) {
        return line.replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "");
    }

    /** Returns an exception, located at the innermost line of the input. */
    static Trouble thrown(
            JShellException exception, @Nullable Throwable thrown, Snippet snippet, int from) {
        if (exception instanceof UnresolvedReferenceException unresolved) {
            return Trouble.at(
                    from,
                    from + snippet.source().stripTrailing().length(),
                    "this cannot be used yet: "
                            + unresolved.getSnippet().name()
                            + " is incomplete");
        }
        int line = lineIn(snippet, exception);
        int[] span = span(snippet.source(), line);
        List<String> details = new ArrayList<>();
        if (thrown != null) {
            details.addAll(Thrown.trace(thrown));
        }
        String message =
                thrown != null
                        ? Thrown.message(thrown)
                        : exception instanceof EvalException eval
                                ? eval.getExceptionClassName() + ": " + eval.getMessage()
                                : String.valueOf(exception.getMessage());
        return new Trouble(from + span[0], from + span[1], message, details);
    }

    private static int lineIn(Snippet snippet, JShellException exception) {
        return Stream.of(exception.getStackTrace())
                .filter(frame -> ("#" + snippet.id()).equals(frame.getFileName()))
                .mapToInt(StackTraceElement::getLineNumber)
                .findFirst()
                .orElse(1);
    }

    /** Returns the start and end of the words of a line. */
    private static int[] span(String source, int line) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int feed = source.indexOf('\n', start);
            if (feed < 0) {
                break;
            }
            start = feed + 1;
        }
        int end = source.indexOf('\n', start);
        String words = source.substring(start, end < 0 ? source.length() : end);
        int indent = words.length() - words.stripLeading().length();
        return new int[] {start + indent, start + words.stripTrailing().length()};
    }
}
