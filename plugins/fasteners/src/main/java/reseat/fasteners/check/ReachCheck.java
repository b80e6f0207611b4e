package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.StackUp;
import reseat.fasten.StackUp.Outcome;
import reseat.model.Kind;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Looks at how the right screw lies in each seat. */
final class ReachCheck extends JointCheck {

    private static final CheckInfo MISSING =
            new CheckInfo(
                    "seat-facts-missing",
                    "Seat not measured",
                    "A seat whose clamped thickness or depth of thread is not known.",
                    "Nobody can tell whether a screw engages, bottoms or reaches what lies behind.",
                    Severity.NOTE,
                    List.of("screws", "data"),
                    List.of());

    private static final CheckInfo UNDER =
            new CheckInfo(
                    "under-engagement",
                    "Too little thread engaged",
                    "The right screw engages less thread than its seat needs.",
                    "Too little thread strips, at once or at the next repair.",
                    Severity.WARNING,
                    List.of("screws"),
                    List.of());

    private static final CheckInfo BOTTOMS =
            new CheckInfo(
                    "screw-bottoms",
                    "Screw bottoms before it clamps",
                    "The right screw meets the bottom of its hole, the end of its thread or its own shank before the head clamps.",
                    "The joint stays loose though the torque is reached, and the boss may burst.",
                    Severity.ERROR,
                    List.of("screws"),
                    List.of());

    private static final CheckInfo PROTRUDES =
            new CheckInfo(
                    "protrusion-into-hazard",
                    "Screw reaches what lies behind",
                    "The tip of the right screw touches, pierces or comes too near to a part behind its seat.",
                    "A pierced cell burns; a pressed board or display cracks.",
                    Severity.ERROR,
                    List.of("screws", "safety"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "nearMm",
                                    "clearance to a cell, board, display or cable below which one warns",
                                    "mm",
                                    "0.2")));

    private static final Set<Kind.Role> DELICATE =
            EnumSet.of(Kind.Role.CELL, Kind.Role.BOARD, Kind.Role.DISPLAY, Kind.Role.CABLE);

    private ReachCheck(CheckInfo info) {
        super(info);
    }

    /** Returns the checks, one for each thing that can be wrong. */
    static List<Check> all() {
        return List.of(
                new ReachCheck(MISSING),
                new ReachCheck(UNDER),
                new ReachCheck(BOTTOMS),
                new ReachCheck(PROTRUDES));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            Computed.of(input)
                    .seat(screw.joint())
                    .ifPresent(lies -> look(input, screw, lies, found));
        }
        return found;
    }

    private void look(
            CheckInput input, BoltedFacts.Screwed screw, StackUp lies, List<Finding> found) {
        if (is(MISSING) && lies.outcome() == Outcome.UNKNOWN) {
            add(
                    found,
                    input,
                    screw,
                    MISSING.severity(),
                    "seat",
                    lies.told(),
                    "Measure it and state it in the device file.");
        } else if (is(UNDER) && lies.outcome() == Outcome.NO_ENTRY) {
            add(
                    found,
                    input,
                    screw,
                    Severity.ERROR,
                    "clamped",
                    lies.told(),
                    "Check the length of the screw and the clamped thickness.");
        } else if (is(UNDER) && lies.outcome() == Outcome.STRIPS) {
            add(
                    found,
                    input,
                    screw,
                    UNDER.severity(),
                    "clamped",
                    lies.told(),
                    "Check the length of the screw, the clamped thickness and the depth of thread.");
        } else if (is(UNDER)
                && lies.outcome() == Outcome.FITS
                && lies.engagementMm().orElse(0) < lies.goodEngagementMm() - 1e-9) {
            add(
                    found,
                    input,
                    screw,
                    Severity.NOTE,
                    "clamped",
                    lies.told(),
                    "Be sparing with the torque, and check the thread each time.");
        } else if (is(BOTTOMS) && lies.outcome() == Outcome.BOTTOMS) {
            add(
                    found,
                    input,
                    screw,
                    BOTTOMS.severity(),
                    "depth",
                    lies.told(),
                    "Check the length of the screw against the depth of the hole.");
        } else if (is(PROTRUDES)) {
            protrudes(input, screw, lies, found);
        }
    }

    private void protrudes(
            CheckInput input, BoltedFacts.Screwed screw, StackUp lies, List<Finding> found) {
        String remedy =
                "Check the length of the screw and the gap behind the seat; use a shorter screw.";
        if (lies.outcome() == Outcome.TOUCHES || lies.outcome() == Outcome.PIERCES) {
            add(found, input, screw, Severity.ERROR, "behind", lies.told(), remedy);
            return;
        }
        double near = input.number("nearMm");
        if (lies.protrusionMm().orElse(0) <= 0) {
            return;
        }
        for (StackUp.Behind behind : lies.behind()) {
            if (behind.clearanceMm() < near - 1e-9
                    && behind.role().filter(DELICATE::contains).isPresent()) {
                add(
                        found,
                        input,
                        screw,
                        Severity.WARNING,
                        "behind",
                        lies.screw()
                                + " in "
                                + lies.joint()
                                + " comes within "
                                + NumberText.mm(behind.clearanceMm())
                                + " of "
                                + behind.name()
                                + ".",
                        remedy);
            }
        }
    }

    private void add(
            List<Finding> found,
            CheckInput input,
            BoltedFacts.Screwed screw,
            Severity severity,
            String field,
            String message,
            String remedy) {
        List<String> evidence = new ArrayList<>();
        evidence.add(
                "screw "
                        + screw.type().id()
                        + ", "
                        + screw.type().thread()
                        + ", "
                        + NumberText.mm(screw.type().lengthMm()));
        screw.seat()
                .clampedMm()
                .ifPresent(mm -> evidence.add("clamped thickness " + NumberText.mm(mm)));
        screw.seat()
                .threadedMm()
                .ifPresent(mm -> evidence.add("depth of thread " + NumberText.mm(mm)));
        screw.seat().depthMm().ifPresent(mm -> evidence.add("depth of hole " + NumberText.mm(mm)));
        screw.seat()
                .behind()
                .forEach(b -> evidence.add(b.part() + " " + NumberText.mm(b.gapMm()) + " behind"));
        found.add(finding(input, severity, screw.joint().id(), field, message, evidence, remedy));
    }
}
