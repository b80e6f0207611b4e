package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Joint;
import reseat.model.Severity;
import reseat.query.CycleRow;

/** Finds connectors and clips that a work makes once too often. */
final class WornConnectorCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "rated-cycles-exceeded",
                    "Joint beyond its rated cycles",
                    "A connector, or another joint with rated cycles, that has been made as often as its kind is rated for, or that the plan makes once more than that. With a job, the cycles of the unit count.",
                    "Worn contacts fail now and then, and nobody finds out why. The rating and its source stand in the kind of the joint.",
                    Severity.WARNING,
                    List.of("connectors", "wear"),
                    List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        Set<String> view = input.jointsInView().stream().map(Joint::id).collect(Collectors.toSet());
        List<CycleRow> rows =
                input.planFacts()
                        .map(facts -> facts.wear())
                        .orElseGet(
                                () ->
                                        input.facts().connectors().stream()
                                                .filter(row -> view.contains(row.joint()))
                                                .map(WornConnectorCheck::onceMore)
                                                .toList());
        List<Finding> found = new ArrayList<>();
        for (CycleRow row : rows) {
            if (row.made() > row.rated()) {
                found.add(
                        input.finding(row.pointer())
                                .evidence("kind " + row.kind() + ", rated for " + row.rated())
                                .evidence("made " + row.made() + " times after this work")
                                .says(
                                        row.joint()
                                                + " is rated for "
                                                + row.rated()
                                                + " cycles, and this work makes it cycle "
                                                + row.made()
                                                + ".",
                                        "Replace the part with the worn half, or choose a way that leaves it made."));
            }
        }
        return found;
    }

    private static CycleRow onceMore(CycleRow row) {
        return new CycleRow(
                row.joint(),
                row.pointer(),
                row.name(),
                row.kind(),
                row.made() + 1,
                row.rated(),
                row.left() - 1);
    }
}
