package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.LookAlikes;
import reseat.fasten.StackUp;
import reseat.fasten.StackUp.Outcome;
import reseat.model.Kind;
import reseat.model.ScrewType;
import reseat.model.Severity;

/** Finds seats into which a look-alike can go and do harm. */
final class WrongScrewCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "wrong-screw-possible",
                    "Wrong screw possible",
                    "A screw that comes out in the same work, looks like the right one, starts in its seat and does harm there; whatever it looks like where it reaches a cell.",
                    "A screw of the wrong length or thread is the classic way to pierce a cell or to strip a boss.",
                    Severity.WARNING,
                    List.of("screws", "rebuild"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "lengthSeenMm",
                                    "difference of length that a person sees",
                                    "mm",
                                    "1.0"),
                            new CheckInfo.Parameter(
                                    "lengthSeenCellMm",
                                    "the same where the wrong screw would reach a cell",
                                    "mm",
                                    "1.5"),
                            new CheckInfo.Parameter(
                                    "headSeenMm",
                                    "difference of head diameter that a person sees",
                                    "mm",
                                    "0.5")));

    WrongScrewCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        double head = input.number("headSeenMm");
        LookAlikes.Eye eye = new LookAlikes.Eye(input.number("lengthSeenMm"), head);
        LookAlikes.Eye sharper = new LookAlikes.Eye(input.number("lengthSeenCellMm"), head);
        List<BoltedFacts.Screwed> screws = BoltedFacts.screws(input);
        Map<String, ScrewType> types = new LinkedHashMap<>();
        screws.forEach(screw -> types.put(screw.type().id(), screw.type()));
        Map<String, List<StackUp>> swaps = new LinkedHashMap<>();
        for (BoltedFacts.Screwed screw : screws) {
            for (ScrewType other : types.values()) {
                if (!other.id().equals(screw.type().id())) {
                    BoltedFacts.known(
                                    () ->
                                            StackUp.of(
                                                    input.tables(),
                                                    input.device(),
                                                    screw.joint().id(),
                                                    other))
                            .filter(swap -> LookAlikes.weight(swap) >= LookAlikes.Pair.DANGEROUS)
                            .filter(
                                    swap ->
                                            reachesCell(swap)
                                                    || alike(
                                                            input,
                                                            screw.type(),
                                                            other,
                                                            LookAlikes.weight(swap) >= 5
                                                                    ? sharper
                                                                    : eye))
                            .ifPresent(
                                    swap ->
                                            swaps.computeIfAbsent(
                                                            screw.type().id() + " " + other.id(),
                                                            k -> new ArrayList<>())
                                                    .add(swap));
                }
            }
        }
        return swaps.values().stream().map(each -> finding(input, each, sharper)).toList();
    }

    /** A cell is not left to a person's eye. */
    private static boolean reachesCell(StackUp swap) {
        return (swap.outcome() == Outcome.TOUCHES || swap.outcome() == Outcome.PIERCES)
                && swap.behind().stream()
                        .anyMatch(
                                b ->
                                        b.clearanceMm() <= 1e-9
                                                && b.role().equals(Optional.of(Kind.Role.CELL)));
    }

    private static boolean alike(
            CheckInput input, ScrewType right, ScrewType other, LookAlikes.Eye eye) {
        return BoltedFacts.known(() -> LookAlikes.visible(input.tables(), right, other, eye))
                .filter(List::isEmpty)
                .isPresent();
    }

    private Finding finding(CheckInput input, List<StackUp> swaps, LookAlikes.Eye sharper) {
        StackUp worst = swaps.get(0);
        for (StackUp swap : swaps) {
            if (LookAlikes.weight(swap) > LookAlikes.weight(worst)) {
                worst = swap;
            }
        }
        String right = input.device().joint(worst.joint()).seat().orElseThrow().screw();
        ScrewType rightType = Objects.requireNonNull(input.device().screwTypes().get(right));
        ScrewType otherType =
                Objects.requireNonNull(input.device().screwTypes().get(worst.screw()));
        List<String> told =
                BoltedFacts.known(
                                () ->
                                        LookAlikes.visible(
                                                input.tables(), rightType, otherType, sharper))
                        .orElse(List.of());
        boolean hits = worst.outcome() == Outcome.TOUCHES || worst.outcome() == Outcome.PIERCES;
        List<String> evidence = new ArrayList<>();
        for (StackUp swap : swaps) {
            if (!swap.told().equals(worst.told())) {
                evidence.add(swap.told());
            }
        }
        told.forEach(difference -> evidence.add("told apart by " + difference));
        return finding(
                input,
                hits && told.isEmpty() ? Severity.ERROR : Severity.WARNING,
                worst.joint(),
                "screw",
                worst.screw()
                        + (told.isEmpty()
                                ? " can be taken for " + right
                                : " starts in a seat of " + right)
                        + ". "
                        + worst.told(),
                evidence,
                "Lay "
                        + worst.screw()
                        + " and "
                        + right
                        + " apart, and measure the length before it goes in.");
    }
}
