package reseat.slate;

import java.util.List;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;
import reseat.spi.TextTemplate;

/** Creates the first device file of a slate. */
final class SlateTemplate {

    private static final List<Question> QUESTIONS =
            List.of(
                    Question.number("width", "Width in mm, lying in front of you?", 30, 600, 240),
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
                            "cell-held",
                            "What holds the cell?",
                            "stretch-tape",
                            "pad-bond",
                            "screws"),
                    Question.number(
                            "board-screws", "How many screws hold the mainboard?", 2, 26, 5));

    private SlateTemplate() {}

    static DeviceTemplate make() {
        return new TextTemplate(
                "slate",
                "slate, opened at the front or at the back",
                QUESTIONS,
                () -> SlateFamily.open("new-slate.yaml"));
    }
}
