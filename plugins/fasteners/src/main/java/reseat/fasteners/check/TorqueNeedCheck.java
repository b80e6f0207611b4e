package reseat.fasteners.check;

import static reseat.text.NumberText.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.SeatConditions;
import reseat.fasten.TorqueAdvice;
import reseat.fasten.TorqueAdvisor;
import reseat.fasten.TorqueEstimate;
import reseat.model.Severity;

/** Finds given torques that leave a joint loose. */
final class TorqueNeedCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "torque-below-need",
                    "Torque far below the need",
                    "A given torque that is a small share of what screw, thread and drive would stand at low friction.",
                    "The joint works loose. Such a value is nearly always a slip of the unit or of the point. The limits have their sources in the tables; the share is common practice, no source.",
                    Severity.WARNING,
                    List.of("screws", "torque"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "leastPercent",
                                    "least share of the estimated torque",
                                    "%",
                                    "20")));

    TorqueNeedCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        double least = input.number("leastPercent") / 100;
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            Optional<TorqueAdvice> advice =
                    BoltedFacts.known(
                            () ->
                                    TorqueAdvisor.of(input.tables())
                                            .forSeat(
                                                    input.device(),
                                                    screw.joint().id(),
                                                    SeatConditions.unknown()));
            advice.filter(given -> given.basis() != TorqueAdvice.Basis.ESTIMATE)
                    .filter(
                            given ->
                                    given.estimate()
                                            .filter(e -> given.valueNm() < least * e.valueNm())
                                            .isPresent())
                    .ifPresent(given -> found.add(finding(input, screw, given)));
        }
        return found;
    }

    private Finding finding(CheckInput input, BoltedFacts.Screwed screw, TorqueAdvice given) {
        TorqueEstimate estimate = given.estimate().orElseThrow();
        List<String> evidence = new ArrayList<>();
        evidence.add(
                "estimate "
                        + figures(estimate.valueNm(), 2)
                        + " N·m: "
                        + estimate.governing().told());
        evidence.addAll(estimate.assumptions());
        return finding(
                input,
                screw.joint().id(),
                "torque",
                "The torque of "
                        + figures(given.valueNm(), 3)
                        + " N·m ("
                        + given.from()
                        + ") is only "
                        + figures(100 * given.valueNm() / estimate.valueNm(), 2)
                        + " % of what "
                        + screw.type().id()
                        + " takes in "
                        + screw.joint().id()
                        + ". That is an estimate.",
                evidence,
                "Compare the torque and its unit with the maker's document.");
    }
}
