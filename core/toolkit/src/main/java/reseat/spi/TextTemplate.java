package reseat.spi;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A template that is a text with placeholders; see {@link TemplateText}.
 *
 * @param id its id, unique among the templates of the family
 * @param title short description of the file it creates
 * @param questions its questions, in the order in which to ask them
 * @param text the text
 */
public record TextTemplate(String id, String title, List<Question> questions, Text text)
        implements DeviceTemplate {

    /**
     * Where the text is; a plugin must open its own resources, which are not accessible to others.
     */
    @FunctionalInterface
    public interface Text {

        /**
         * Opens the text, in UTF-8.
         *
         * @return a new stream at each call, which the caller closes
         * @throws IOException if it cannot be read
         */
        InputStream open() throws IOException;
    }

    public TextTemplate {
        questions = List.copyOf(questions);
    }

    @Override
    public String write(Map<String, String> answers) {
        try (InputStream in = text.open()) {
            return TemplateText.fill(
                    new String(in.readAllBytes(), StandardCharsets.UTF_8), answers);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
