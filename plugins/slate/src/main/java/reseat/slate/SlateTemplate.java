package reseat.slate;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;
import reseat.spi.TemplateText;

/** Makes the first file of a slate. */
final class SlateTemplate implements DeviceTemplate {

    @Override
    public String id() {
        return "slate";
    }

    @Override
    public String title() {
        return "slate, opened at the front or at the back";
    }

    @Override
    public List<Question> questions() {
        return List.of(
                Question.number("width", "Width in mm, as it lies before you?", 30, 600, 240),
                Question.number("height", "Height in mm?", 30, 600, 170),
                Question.choice(
                        "opening",
                        "How is it opened?",
                        "display-bonded",
                        "back-bonded",
                        "back-screwed"),
                Question.number(
                        "cover-screws",
                        "How many screws hold the back, if it is screwed?",
                        2,
                        26,
                        8),
                Question.choice(
                        "cell-connector",
                        "How is the cell connected?",
                        "board-to-board",
                        "zif-connector",
                        "wire-plug"),
                Question.choice(
                        "cell-held", "What holds the cell?", "stretch-tape", "pad-bond", "screws"),
                Question.number("board-screws", "How many screws hold the mainboard?", 2, 26, 5));
    }

    @Override
    public String write(Map<String, String> answers) {
        Map<String, String> values = new TreeMap<>(answers);
        values.put(
                "cover-seats",
                TemplateText.seatsAround(
                        number(values, "cover-screws"),
                        number(values, "width"),
                        number(values, "height"),
                        4));
        values.put(
                "board-seats",
                TemplateText.seatsAround(
                        number(values, "board-screws"),
                        number(values, "width"),
                        number(values, "height"),
                        30));
        try (InputStream in = SlateFamily.open("new-slate.yaml")) {
            return TemplateText.fill(new String(in.readAllBytes(), StandardCharsets.UTF_8), values);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int number(Map<String, String> values, String name) {
        return Integer.parseInt(String.valueOf(values.get(name)));
    }
}
