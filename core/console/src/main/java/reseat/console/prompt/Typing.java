package reseat.console.prompt;

import java.util.List;
import java.util.function.BiPredicate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Splits lines into words for the line editor, and decides whether input is complete. */
final class Typing implements Parser {

    private final Tongue tongue;
    private final BiPredicate<Tongue, String> complete;

    Typing(Tongue tongue, BiPredicate<Tongue, String> complete) {
        this.tongue = tongue;
        this.complete = complete;
    }

    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
        if (context == ParseContext.ACCEPT_LINE && !complete.test(tongue, line)) {
            throw new EOFError(-1, -1, "more to come");
        }
        Spot spot = Spot.of(line, cursor);
        return new Line(line, cursor, spot);
    }

    /** Our words contain no spaces to escape. */
    @Override
    public boolean isEscapeChar(char ch) {
        return false;
    }

    private record Line(String line, int cursor, Spot spot) implements CompletingParsedLine {

        @Override
        public String word() {
            return spot.word();
        }

        @Override
        public int wordCursor() {
            return spot.word().length();
        }

        @Override
        public int wordIndex() {
            return 0;
        }

        @Override
        public List<String> words() {
            return List.of(spot.word());
        }

        @Override
        public CharSequence escape(CharSequence candidate, boolean complete) {
            return candidate;
        }

        @Override
        public int rawWordCursor() {
            return spot.word().length();
        }

        @Override
        public int rawWordLength() {
            return spot.word().length();
        }
    }
}
