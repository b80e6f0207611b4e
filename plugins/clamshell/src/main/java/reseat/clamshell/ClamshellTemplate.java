package reseat.clamshell;

import java.util.List;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;
import reseat.spi.TextTemplate;

/** Creates the first device file of a clamshell. */
final class ClamshellTemplate {

    private static final List<Question> QUESTIONS =
            List.of(
                    Question.number("width", "Width in mm, lying in front of you?", 30, 600, 300),
                    Question.number("height", "Height in mm?", 30, 600, 210),
                    Question.number(
                            "cover-screws", "How many screws hold the bottom cover?", 2, 26, 8),
                    Question.choice(
                            "cover-foot", "Are some of them under a glued foot?", "no", "yes"),
                    Question.choice(
                            "cell-connector",
                            "How is the cell connected?",
                            "latched-connector",
                            "wire-plug",
                            "board-to-board"),
                    Question.choice(
                            "cell-held",
                            "What holds the cell?",
                            "screws",
                            "pad-bond",
                            "stretch-tape"),
                    Question.choice("fan", "Is there a fan?", "yes", "no"),
                    Question.number(
                            "board-screws", "How many screws hold the mainboard?", 2, 26, 6));

    private ClamshellTemplate() {}

    static DeviceTemplate make() {
        return new TextTemplate(
                "clamshell",
                "clamshell with a screwed bottom cover",
                QUESTIONS,
                () -> ClamshellFamily.open("new-clamshell.yaml"));
    }
}
