package reseat.fasteners.check;

import static reseat.text.NumberText.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.TableRow;
import reseat.fasten.Torque;
import reseat.fasten.TorqueAdvisor;
import reseat.model.Severity;

/**
 * Finds torques that are given in two places and disagree: the seat and the words of its own
 * source; the seat and the table of the family; two seats that are alike in everything that decides
 * a torque.
 */
final class TorqueAgreementCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "torque-disagrees",
                    "Torques disagree",
                    "A torque that is given in two places with two values: seat and the text of its source, seat and family"
                            + " table, or two seats alike.",
                    "One of them is wrong, often by a unit, and nobody sees which.",
                    Severity.WARNING,
                    List.of("screws", "torque", "data"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "sharePercent",
                                    "difference that still counts as agreement",
                                    "%",
                                    "5")));

    private static final Pattern TORQUE =
            Pattern.compile("\\d+(?:[.,]\\d+)?\\s*[a-zA-Z]+[.\\-*·⋅ ]?[a-zA-Z]*");

    TorqueAgreementCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        double share = input.number("sharePercent") / 100;
        List<Finding> found = new ArrayList<>();
        Map<List<Object>, BoltedFacts.Screwed> first = new LinkedHashMap<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            if (screw.seat().torqueNm().isEmpty()) {
                continue;
            }
            double given = screw.seat().torqueNm().getAsDouble();
            List<Torque> told = told(input, screw.seat().torqueSource());
            if (!told.isEmpty() && told.stream().noneMatch(t -> agree(given, t.nm(), share))) {
                add(
                        found,
                        input,
                        screw,
                        given,
                        told.get(0).nm(),
                        "its own source, \"" + screw.seat().torqueSource() + "\"");
            }
            family(input, screw)
                    .map(row -> input.tables().torqueUnits().parse(row.text("torque")).nm())
                    .filter(nm -> !agree(given, nm, share))
                    .ifPresent(
                            nm -> add(found, input, screw, given, nm, "the table of the family"));
            BoltedFacts.Screwed before = first.putIfAbsent(likeness(screw), screw);
            if (before != null && !agree(given, before.seat().torqueNm().orElse(given), share)) {
                add(
                        found,
                        input,
                        screw,
                        given,
                        before.seat().torqueNm().orElse(given),
                        before.joint().id()
                                + ", a seat that is alike in screw, form, material and lengths");
            }
        }
        return found;
    }

    private Optional<TableRow> family(CheckInput input, BoltedFacts.Screwed screw) {
        return BoltedFacts.known(
                        () ->
                                TorqueAdvisor.of(input.tables())
                                        .familyRow(input.device(), screw.joint().id()))
                .flatMap(row -> row);
    }

    /** Returns the torques that a text names. */
    private static List<Torque> told(CheckInput input, String text) {
        List<Torque> all = new ArrayList<>();
        Matcher m = TORQUE.matcher(text);
        while (m.find()) {
            BoltedFacts.known(() -> input.tables().torqueUnits().parse(m.group()))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static List<Object> likeness(BoltedFacts.Screwed screw) {
        return List.of(
                screw.type().id(),
                screw.seat().form(),
                screw.seat().material(),
                screw.seat().clampedMm(),
                screw.seat().threadedMm(),
                screw.seat().depthMm(),
                screw.joint().holds());
    }

    private static boolean agree(double a, double b, double share) {
        return Math.abs(a - b) <= share * Math.max(a, b);
    }

    private void add(
            List<Finding> found,
            CheckInput input,
            BoltedFacts.Screwed screw,
            double given,
            double other,
            String where) {
        found.add(
                finding(
                        input,
                        screw.joint().id(),
                        "torque",
                        "The seat gives "
                                + figures(given, 3)
                                + " N·m, but "
                                + figures(other, 3)
                                + " N·m stands in "
                                + where
                                + ".",
                        List.of(
                                "ratio "
                                        + figures(
                                                Math.max(given, other) / Math.min(given, other),
                                                3)),
                        "Look the torque up once more, with its unit, and correct the wrong one."));
    }
}
