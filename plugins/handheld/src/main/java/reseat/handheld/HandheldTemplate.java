package reseat.handheld;

import java.util.List;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;
import reseat.spi.TextTemplate;

/** Creates the first device file of a sealed handheld. */
final class HandheldTemplate {

    private static final List<Question> QUESTIONS =
            List.of(
                    Question.number("width", "Width in mm, lying in front of you?", 30, 600, 80),
                    Question.number("height", "Height in mm?", 30, 600, 180),
                    Question.number("shell-screws", "How many screws close the shell?", 2, 26, 8),
                    Question.choice("seal", "What seals the shell?", "gasket", "adhesive-bond"),
                    Question.choice(
                            "cell-connector",
                            "How is the cell connected?",
                            "contact-block",
                            "wire-plug"),
                    Question.choice("grip", "Does it have a grip?", "no", "yes"),
                    Question.number(
                            "board-screws", "How many screws hold the mainboard?", 2, 26, 5));

    private HandheldTemplate() {}

    static DeviceTemplate make() {
        return new TextTemplate(
                "sealed",
                "sealed handheld with a cell behind a door",
                QUESTIONS,
                () -> HandheldFamily.open("new-handheld.yaml"));
    }
}
