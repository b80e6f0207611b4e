package reseat.handheld;

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

/** Makes the first file of a sealed handheld. */
final class HandheldTemplate implements DeviceTemplate {

    @Override
    public String id() {
        return "sealed";
    }

    @Override
    public String title() {
        return "sealed handheld with a cell behind a door";
    }

    @Override
    public List<Question> questions() {
        return List.of(
                Question.number("width", "Width in mm, as it lies before you?", 30, 600, 80),
                Question.number("height", "Height in mm?", 30, 600, 180),
                Question.number("shell-screws", "How many screws close the shell?", 2, 26, 8),
                Question.choice("seal", "What seals the shell?", "gasket", "adhesive-bond"),
                Question.choice(
                        "cell-connector",
                        "How is the cell connected?",
                        "contact-block",
                        "wire-plug"),
                Question.choice("grip", "Does it have a grip?", "no", "yes"),
                Question.number("board-screws", "How many screws hold the mainboard?", 2, 26, 5));
    }

    @Override
    public String write(Map<String, String> answers) {
        Map<String, String> values = new TreeMap<>(answers);
        values.put(
                "shell-seats",
                TemplateText.seatsAround(
                        number(values, "shell-screws"),
                        number(values, "width"),
                        number(values, "height"),
                        5));
        values.put(
                "board-seats",
                TemplateText.seatsAround(
                        number(values, "board-screws"),
                        number(values, "width"),
                        number(values, "height"),
                        14));
        try (InputStream in = HandheldFamily.open("new-handheld.yaml")) {
            return TemplateText.fill(new String(in.readAllBytes(), StandardCharsets.UTF_8), values);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int number(Map<String, String> values, String name) {
        return Integer.parseInt(String.valueOf(values.get(name)));
    }
}
