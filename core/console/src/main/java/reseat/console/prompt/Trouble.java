package reseat.console.prompt;

import java.util.List;

/**
 * One error in an input.
 *
 * @param start its start in the text, in characters; -1 if unknown
 * @param end the character after its last one
 * @param message the error, as a sentence
 * @param details further lines, outermost call last; may be empty
 */
record Trouble(int start, int end, String message, List<String> details) {

    Trouble {
        details = List.copyOf(details);
    }

    static Trouble at(int start, int end, String message) {
        return new Trouble(start, Math.max(end, start), message, List.of());
    }

    static Trouble somewhere(String message) {
        return new Trouble(-1, -1, message, List.of());
    }

    Trouble shifted(int by) {
        return start < 0 ? this : new Trouble(start + by, end + by, message, details);
    }
}
