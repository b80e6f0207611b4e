package reseat.internal.loader;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;

/**
 * A template that is a text with gaps; see {@link TemplateText}.
 *
 * @param files the files of its family
 * @param text the name of its text among them
 * @param at where its family names the text
 */
record TextTemplate(
        String id,
        String title,
        List<Question> questions,
        FamilyFiles files,
        String text,
        Origin at)
        implements DeviceTemplate {

    TextTemplate {
        questions = List.copyOf(questions);
    }

    @Override
    public String write(Map<String, String> answers) {
        try {
            return TemplateText.fill(files.text(text), answers);
        } catch (IOException e) {
            throw new UncheckedIOException(text + ": " + FamilyFiles.why(e), e);
        }
    }

    /** Returns what is wrong with the text. */
    List<Problem> problems() {
        try {
            return TemplateProofreader.problems(text, files.text(text), questions);
        } catch (IOException e) {
            return List.of(Problem.error(at, text + ": " + FamilyFiles.why(e)));
        }
    }
}
