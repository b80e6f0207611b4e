package reseat.internal.loader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.spi.Question;

/** Finds gaps and conditions of a {@link TemplateText} that its questions do not answer. */
final class TemplateProofreader {

    private final Map<String, Question> questions;
    private final List<Problem> problems = new ArrayList<>();

    private TemplateProofreader(List<Question> questions) {
        this.questions =
                questions.stream().collect(Collectors.toMap(Question::id, Function.identity()));
    }

    /**
     * Reads a text.
     *
     * @param file its name
     */
    static List<Problem> problems(String file, String text, List<Question> questions) {
        TemplateProofreader reader = new TemplateProofreader(questions);
        int number = 0;
        for (String line : text.lines().toList()) {
            reader.line(line, new Origin(file, ++number, 0));
        }
        return reader.problems;
    }

    private void line(String line, Origin at) {
        String rest = line;
        Matcher condition = TemplateText.CONDITION.matcher(rest);
        while (condition.find()) {
            condition(condition.group(1), condition.group(3), at);
            rest = rest.substring(0, condition.start());
            condition = TemplateText.CONDITION.matcher(rest);
        }
        TemplateText.SEATS.matcher(rest).results().forEach(gap -> seats(gap, at));
        rest = TemplateText.SEATS.matcher(rest).replaceAll("");
        TemplateText.GAP.matcher(rest).results().forEach(gap -> known(gap.group(1), at));
        if (TemplateText.GAP.matcher(rest).replaceAll("").contains("${")) {
            error(at, "a gap is ${name} or ${seats name margin}");
        }
        if (rest.contains("#?")) {
            error(at, "a condition is #? name=value or #? name!=value, at the end of its line");
        }
    }

    private void condition(String name, String value, Origin at) {
        Question question = questions.get(name);
        if (question == null) {
            known(name, at);
        } else {
            question.wrongWith(value).ifPresent(wrong -> error(at, "#? " + name + ": " + wrong));
        }
    }

    private void seats(MatchResult gap, Origin at) {
        Stream.of(gap.group(1), "width", "height")
                .filter(name -> !isNumber(name))
                .forEach(name -> error(at, "seats need " + name + ", which asks for no number"));
        Question count = questions.get(gap.group(1));
        if (count != null
                && isNumber(count.id())
                && (count.least() < 1 || count.most() > TemplateText.MOST_SEATS)) {
            error(at, "seats: " + count.id() + " must be from 1 to " + TemplateText.MOST_SEATS);
        }
    }

    private boolean isNumber(String name) {
        Question question = questions.get(name);
        return question != null && question.choices().isEmpty();
    }

    private void known(String name, Origin at) {
        if (!questions.containsKey(name) && !TemplateText.GIVEN.contains(name)) {
            error(at, "the text names " + name + ", which no question asks for");
        }
    }

    private void error(Origin at, String message) {
        problems.add(Problem.error(at, message));
    }
}
