package reseat.fasteners.check;

import static reseat.text.NumberText.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.Friction;
import reseat.fasten.SeatConditions;
import reseat.fasten.TorqueAdvice;
import reseat.fasten.TorqueAdvisor;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueEstimate.Limit.Kind;
import reseat.model.Severity;

/** Finds given torques that the screw, its thread or its drive does not stand. */
final class TorqueLimitCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "torque-above-limit",
                    "Torque above a limit",
                    "A given torque that is above what the screw, the thread of the seat or the drive stands at middling friction.",
                    "The screw breaks or the thread strips, often in the hand of the next technician.",
                    Severity.WARNING,
                    List.of("screws", "torque"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "friction",
                                    "surface by which friction is judged; a finding is an error where even the highest friction does not excuse the torque",
                                    "",
                                    "unknown")));

    TorqueLimitCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        Friction friction = input.tables().friction(input.text("friction"));
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            at(input, screw, friction, (friction.low() + friction.high()) / 2)
                    .filter(advice -> advice.basis() != TorqueAdvice.Basis.ESTIMATE)
                    .filter(TorqueLimitCheck::above)
                    .ifPresent(
                            advice -> {
                                boolean anyway =
                                        at(input, screw, friction, friction.high())
                                                .filter(TorqueLimitCheck::breaks)
                                                .isPresent();
                                found.add(finding(input, screw, advice, anyway));
                            });
        }
        return found;
    }

    private static boolean above(TorqueAdvice advice) {
        return advice.estimate().filter(e -> advice.valueNm() > e.highNm()).isPresent();
    }

    /** What is known of drives is too vague for an error. */
    private static boolean breaks(TorqueAdvice advice) {
        return advice.estimate().stream()
                .flatMap(e -> e.limits().stream())
                .anyMatch(
                        limit -> limit.kind() != Kind.DRIVE && limit.utmostNm() < advice.valueNm());
    }

    private Optional<TorqueAdvice> at(
            CheckInput input, BoltedFacts.Screwed screw, Friction friction, double mu) {
        Friction one = new Friction(friction.surface(), mu, mu, friction.source());
        return BoltedFacts.known(
                () ->
                        TorqueAdvisor.of(input.tables())
                                .forSeat(
                                        input.device(),
                                        screw.joint().id(),
                                        new SeatConditions(Optional.of(one), true)));
    }

    private Finding finding(
            CheckInput input, BoltedFacts.Screwed screw, TorqueAdvice advice, boolean anyway) {
        TorqueEstimate estimate = advice.estimate().orElseThrow();
        List<TorqueEstimate.Limit> passed =
                estimate.limits().stream()
                        .filter(each -> each.utmostNm() < advice.valueNm())
                        .sorted(
                                Comparator.comparing(
                                                (TorqueEstimate.Limit each) ->
                                                        each.kind() == Kind.DRIVE)
                                        .thenComparingDouble(TorqueEstimate.Limit::utmostNm))
                        .toList();
        TorqueEstimate.Limit limit = passed.get(0);
        List<String> evidence = new ArrayList<>();
        for (TorqueEstimate.Limit each : passed) {
            evidence.add(
                    each.kind().words()
                            + " from "
                            + figures(each.utmostNm(), 3)
                            + " N·m: "
                            + each.told());
        }
        evidence.addAll(estimate.assumptions());
        evidence.add("friction " + estimate.inputs().get(2).value());
        return finding(
                input,
                anyway && limit.kind() != TorqueEstimate.Limit.Kind.DRIVE
                        ? Severity.ERROR
                        : Severity.WARNING,
                screw.joint().id(),
                "torque",
                "The torque of "
                        + figures(advice.valueNm(), 3)
                        + " N·m ("
                        + advice.from()
                        + ") is above "
                        + figures(limit.utmostNm(), 2)
                        + " N·m, from which "
                        + limit.kind().words()
                        + ". That limit is an estimate.",
                evidence,
                "Compare the torque and its unit with the maker's document.");
    }
}
