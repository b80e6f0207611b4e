package reseat.devicechecks.check;

import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Severity;
import reseat.query.PartRow;

/** Finds parts that are unplugged and not tested. */
final class UntestedCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "unplugged-untested",
                    "Unplugged and not tested",
                    "A part that a connector leads to, with no test that names it or such a connector; with a plan, only the parts that it unplugs.",
                    "A plug that is not quite home is found at the customer's. Common practice, no source.",
                    Severity.WARNING,
                    List.of("tests", "connectors"),
                    List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<PartRow> untested =
                input.planFacts()
                        .map(facts -> facts.untested())
                        .orElseGet(() -> input.facts().untested());
        return untested.stream()
                .map(
                        part ->
                                input.finding(part.pointer())
                                        .says(
                                                "No test shows that "
                                                        + part.part()
                                                        + " works again once it was unplugged.",
                                                "Write one: what to do, what must be seen, and the part or its connector in of."))
                .toList();
    }
}
