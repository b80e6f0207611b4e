package reseat.clamshell;

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

/** Makes the first file of a clamshell. */
final class ClamshellTemplate implements DeviceTemplate {

    @Override
    public String id() {
        return "clamshell";
    }

    @Override
    public String title() {
        return "clamshell with a screwed bottom cover";
    }

    @Override
    public List<Question> questions() {
        return List.of(
                Question.number("width", "Width in mm, as it lies before you?", 30, 600, 300),
                Question.number("height", "Height in mm?", 30, 600, 210),
                Question.number("cover-screws", "How many screws hold the bottom cover?", 2, 26, 8),
                Question.choice("cover-foot", "Are some of them below a stuck foot?", "no", "yes"),
                Question.choice(
                        "cell-connector",
                        "How is the cell connected?",
                        "latched-connector",
                        "wire-plug",
                        "board-to-board"),
                Question.choice(
                        "cell-held", "What holds the cell?", "screws", "pad-bond", "stretch-tape"),
                Question.choice("fan", "Is there a fan?", "yes", "no"),
                Question.number("board-screws", "How many screws hold the mainboard?", 2, 26, 6));
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
                        6));
        values.put(
                "board-seats",
                TemplateText.seatsAround(
                        number(values, "board-screws"),
                        number(values, "width"),
                        number(values, "height"),
                        40));
        try (InputStream in = ClamshellFamily.open("new-clamshell.yaml")) {
            return TemplateText.fill(new String(in.readAllBytes(), StandardCharsets.UTF_8), values);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int number(Map<String, String> values, String name) {
        return Integer.parseInt(String.valueOf(values.get(name)));
    }
}
