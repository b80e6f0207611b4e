package reseat.fasteners.check;

import static reseat.text.NumberText.figures;

import java.util.ArrayList;
import java.util.List;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.FastenerInputException;
import reseat.fasten.SeatConditions;
import reseat.fasten.TorqueAdvice;
import reseat.fasten.TorqueAdvisor;
import reseat.model.Severity;

/** Finds seats for which neither maker nor family gives a torque. */
final class TorqueMissingCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "torque-missing",
                    "No torque given",
                    "A seat for which neither the maker nor the table of the family gives a torque.",
                    "A torque that nobody wrote down is guessed.",
                    Severity.WARNING,
                    List.of("screws", "torque", "data"),
                    List.of());

    TorqueMissingCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        TorqueAdvisor advisor = TorqueAdvisor.of(input.tables());
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            if (screw.seat().torqueNm().isPresent()) {
                continue;
            }
            String id = screw.joint().id();
            try {
                TorqueAdvice advice = advisor.forSeat(input.device(), id, SeatConditions.unknown());
                if (advice.basis() == TorqueAdvice.Basis.ESTIMATE) {
                    List<String> evidence = new ArrayList<>();
                    evidence.add(
                            "estimate "
                                    + figures(advice.valueNm(), 2)
                                    + " N·m, window "
                                    + figures(advice.lowNm(), 2)
                                    + " to "
                                    + figures(advice.highNm(), 2)
                                    + " N·m: "
                                    + advice.from());
                    evidence.addAll(advice.cautions());
                    found.add(
                            finding(
                                    input,
                                    Severity.NOTE,
                                    id,
                                    "torque",
                                    "No torque is given for " + id + "; it can only be estimated.",
                                    evidence,
                                    "Look it up in the maker's document and state it with its source."));
                }
            } catch (FastenerInputException e) {
                found.add(
                        finding(
                                input,
                                id,
                                "torque",
                                "No torque is given for " + id + ", and none can be estimated.",
                                List.of(String.valueOf(e.getMessage())),
                                "Look it up in the maker's document and state it with its source."));
            }
        }
        return found;
    }
}
