package reseat.spi;

import java.util.List;
import java.util.Optional;

/**
 * Something that a template for new devices must be told.
 *
 * @param id name of the answer; lower case with hyphens
 * @param asks the question, for people
 * @param choices the answers to choose from; empty if the answer is a whole number
 * @param least the smallest number
 * @param most the greatest number
 * @param usual the answer where nobody gives one
 */
public record Question(
        String id, String asks, List<String> choices, int least, int most, String usual) {

    public Question {
        choices = List.copyOf(choices);
        if (id.isBlank() || asks.isBlank()) {
            throw new IllegalArgumentException("a question has an id and asks something");
        }
        Optional<String> wrong = wrongWith(choices, least, most, usual);
        if (wrong.isPresent()) {
            throw new IllegalArgumentException(id + ": the usual answer: " + wrong.get());
        }
    }

    /** Asks to choose; the first choice is the usual one. */
    public static Question choice(String id, String asks, String... choices) {
        return new Question(id, asks, List.of(choices), 0, 0, choices[0]);
    }

    /** Asks for a whole number. */
    public static Question number(String id, String asks, int least, int most, int usual) {
        return new Question(id, asks, List.of(), least, most, Integer.toString(usual));
    }

    /** Returns what is wrong with an answer; empty if nothing is. */
    public Optional<String> wrongWith(String answer) {
        return wrongWith(choices, least, most, answer);
    }

    private static Optional<String> wrongWith(
            List<String> choices, int least, int most, String answer) {
        boolean fits =
                choices.isEmpty()
                        ? answer.matches("[0-9]{1,6}")
                                && Integer.parseInt(answer) >= least
                                && Integer.parseInt(answer) <= most
                        : choices.contains(answer);
        if (fits) {
            return Optional.empty();
        }
        return Optional.of(
                "found \""
                        + answer
                        + "\", expected "
                        + (choices.isEmpty()
                                ? "a whole number from " + least + " to " + most
                                : "one of " + String.join(", ", choices)));
    }
}
