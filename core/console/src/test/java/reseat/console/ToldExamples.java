package reseat.console;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One command line that we show to newcomers.
 *
 * @param line the words as they are shown, with what the shell makes of them
 * @param from where it is shown
 */
record ToldExamples(String line, String from) {

    private static final Pattern INLINE = Pattern.compile("`(reseat [^`]+)`");
    private static final Pattern EXIT = Pattern.compile("# *exit ([0-3])\\s*$");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

    /** Returns the examples in a help text: every line below its heading that calls us. */
    static List<ToldExamples> ofHelp(String help, String from) {
        List<ToldExamples> found = new ArrayList<>();
        help.lines()
                .filter(line -> line.startsWith("  reseat "))
                .forEach(line -> found.add(new ToldExamples(line.strip(), from)));
        return found;
    }

    /** Returns the calls in a page of Markdown, fenced or within a line. */
    static List<ToldExamples> ofPage(String page, String from) {
        List<ToldExamples> found = new ArrayList<>();
        boolean fenced = false;
        for (String line : page.lines().toList()) {
            if (line.strip().startsWith("```")) {
                fenced = !fenced;
            } else if (fenced) {
                int at = line.indexOf("reseat ");
                if (at == 0 || at > 0 && line.startsWith("bin/", at - 4)) {
                    found.add(new ToldExamples(line.substring(at).strip(), from));
                }
            } else {
                Matcher inline = INLINE.matcher(line);
                while (inline.find()) {
                    found.add(new ToldExamples(inline.group(1), from));
                }
            }
        }
        return found;
    }

    /** Returns whether it names a sample, so that it can be run as it stands. */
    boolean runs() {
        return line.contains("samples/");
    }

    /** Returns the exit code that the example tells. */
    int code() {
        Matcher told = EXIT.matcher(line);
        return told.find() ? Integer.parseInt(told.group(1)) : 0;
    }

    /** Returns the words after {@code reseat}, without comment, pipe and redirection. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line.substring("reseat ".length()));
        while (word.find()) {
            if (word.group(3) != null && word.group(3).matches("[#|>].*")) {
                break;
            }
            for (int group = 1; group <= 3; group++) {
                if (word.group(group) != null) {
                    words.add(word.group(group));
                }
            }
        }
        return words;
    }

    @Override
    public String toString() {
        return line + "   (" + from + ")";
    }
}
