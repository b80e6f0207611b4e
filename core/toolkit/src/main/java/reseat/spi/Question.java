package reseat.spi;

import java.util.List;
import java.util.Optional;

/**
 * A question of a template for new devices.
 *
 * @param id name of the answer; lower case with hyphens
 * @param asks text of the question
 * @param choices the answers to choose from; empty if the answer is a whole number
 * @param least the smallest number
 * @param most the greatest number
 * @param usual the default answer
 */
public record Question(
        String id, String asks, List<String> choices, int least, int most, String usual) {

    public Question {
        choices = List.copyOf(choices);
        if (id.isBlank() || asks.isBlank()) {
            throw new IllegalArgumentException("a question must have an id and a text");
        }
        Optional<String> wrong = wrongWith(choices, least, most, usual);
        if (wrong.isPresent()) {
            throw new IllegalArgumentException(id + ": the default answer: " + wrong.get());
        }
    }

    /** Creates a question with choices; the first one is the default. */
    public static Question choice(String id, String asks, String... choices) {
        return new Question(id, asks, List.of(choices), 0, 0, choices[0]);
    }

    /** Creates a question for a whole number. */
    public static Question number(String id, String asks, int least, int most, int usual) {
        return new Question(id, asks, List.of(), least, most, Integer.toString(usual));
    }

    /** Returns the error in an answer; empty if it is valid. */
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
