package reseat.console.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.SourceSection;
import org.jspecify.annotations.Nullable;
import reseat.text.Nearest;

/** Rewords errors of JavaScript, and locates them in the input. */
final class JsTroubles {

    private static final Pattern UNKNOWN =
            Pattern.compile(
                    "invokeMember \\((\\w+)\\) on ([\\w.$]+) failed due to: Unknown identifier");
    private static final int FRAMES = 12;

    private JsTroubles() {}

    static Trouble of(PolyglotException e, Source source) {
        String text = source.getCharacters().toString();
        int shift = text.startsWith("(") && text.endsWith(")") && isWrapped(text) ? -1 : 0;
        SourceSection section = section(e, source);
        List<String> details = e.isSyntaxError() ? List.of() : frames(e);
        String message = e.isHostException() ? Thrown.message(e.asHostException()) : words(e);
        Matcher unknown = UNKNOWN.matcher(message);
        if (unknown.find() && section != null && section.hasCharIndex()) {
            return unknown(unknown, section, details).shifted(shift);
        }
        if (section == null || !section.hasCharIndex()) {
            return new Trouble(-1, -1, message, details);
        }
        return new Trouble(
                section.getCharIndex() + shift,
                section.getCharEndIndex() + shift,
                message,
                details);
    }

    /** Marks the name itself, and suggests the nearest known one. */
    private static Trouble unknown(Matcher unknown, SourceSection section, List<String> details) {
        String name = unknown.group(1);
        String type = unknown.group(2);
        String words =
                type.substring(Math.max(type.lastIndexOf('.'), type.lastIndexOf('$')) + 1)
                        + " has no member \""
                        + name
                        + "\""
                        + Nearest.aside(name, Members.of(type));
        int at = section.getCharacters().toString().lastIndexOf(name);
        int start = section.getCharIndex() + Math.max(0, at);
        int end = at < 0 ? section.getCharEndIndex() : start + name.length();
        return new Trouble(start, end, words, details);
    }

    private static boolean isWrapped(String text) {
        return text.length() > 2 && text.substring(1).stripLeading().startsWith("{");
    }

    private static @Nullable SourceSection section(PolyglotException e, Source source) {
        SourceSection at = e.getSourceLocation();
        if (at != null && at.getSource().equals(source)) {
            return at;
        }
        for (PolyglotException.StackFrame frame : e.getPolyglotStackTrace()) {
            SourceSection place = frame.isGuestFrame() ? frame.getSourceLocation() : null;
            if (place != null && place.getSource().equals(source)) {
                return place;
            }
        }
        return null;
    }

    private static String words(PolyglotException e) {
        String message = String.valueOf(e.getMessage());
        if (e.isSyntaxError()) {
            // the engine repeats and marks the line; we mark it ourselves
            String first = message.lines().findFirst().orElse(message);
            return first.replaceFirst("^SyntaxError: \\S+?:\\d+:\\d+ ", "");
        }
        return message;
    }

    private static List<String> frames(PolyglotException e) {
        List<String> lines = new ArrayList<>();
        for (PolyglotException.StackFrame frame : e.getPolyglotStackTrace()) {
            SourceSection at = frame.getSourceLocation();
            if (frame.isGuestFrame() && at != null && lines.size() < FRAMES) {
                lines.add("in " + frame.getRootName() + ", line " + at.getStartLine());
            }
        }
        return lines;
    }
}
