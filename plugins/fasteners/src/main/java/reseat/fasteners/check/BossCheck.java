package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.HeadSize;
import reseat.fasten.ScrewThread;
import reseat.model.Seat;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Looks at whether the boss holds what is driven into it. */
final class BossCheck extends JointCheck {

    private static final CheckInfo WALL =
            new CheckInfo(
                    "boss-wall-thin",
                    "Wall of the boss too thin",
                    "A boss, nut or insert that is hardly wider than its thread: below 2 diameters where a screw forms its thread in plastic, below 1.5 elsewhere; an error where no wall is left.",
                    "It splits when the screw is driven, or at the next repair. 2 to 2.5 diameters in plastic: celofasteners.com, boss design for plastite; the rest is common practice, no source.",
                    Severity.WARNING,
                    List.of("screws"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "leastDiameters",
                                    "least outer diameter where no thread is formed in plastic, in diameters of the thread",
                                    "1",
                                    "1.5")));

    private static final CheckInfo CONE =
            new CheckInfo(
                    "countersunk-in-plastic",
                    "Countersunk screw in plastic",
                    "A screw with a countersunk head whose thread is in plastic.",
                    "The cone spreads the plastic, which splits or creeps until the screw is loose: flat heads only, mastik.pt page 700 on screws for plastics.",
                    Severity.WARNING,
                    List.of("screws"),
                    List.of());

    private BossCheck(CheckInfo info) {
        super(info);
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new BossCheck(WALL), new BossCheck(CONE));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            if (is(WALL)) {
                wall(input, screw, found);
            } else {
                cone(input, screw, found);
            }
        }
        return found;
    }

    private void wall(CheckInput input, BoltedFacts.Screwed screw, List<Finding> found) {
        Optional<ScrewThread> thread =
                BoltedFacts.known(
                        () ->
                                input.tables()
                                        .thread(
                                                screw.seat()
                                                        .thread()
                                                        .orElse(screw.type().thread())));
        if (thread.isEmpty() || screw.seat().bossOuterMm().isEmpty()) {
            return;
        }
        double outer = screw.seat().bossOuterMm().getAsDouble();
        double d = thread.get().diameterMm();
        boolean plastic =
                screw.seat().form() == Seat.Form.FORMED && ThreadMatchCheck.plastic(input, screw);
        double least =
                plastic
                        ? input.tables().rule("plastic-boss-diameters").low()
                        : input.number("leastDiameters");
        if (outer < least * d - 1e-9) {
            found.add(
                    finding(
                            input,
                            outer <= d ? Severity.ERROR : WALL.severity(),
                            screw.joint().id(),
                            "bossOuter",
                            "The boss of "
                                    + screw.joint().id()
                                    + " is "
                                    + NumberText.mm(outer)
                                    + " wide; "
                                    + thread.get().designation()
                                    + " wants "
                                    + NumberText.mm(least * d)
                                    + ".",
                            List.of(
                                    "wall at the thread "
                                            + NumberText.mm(Math.max(0, (outer - d) / 2))),
                            "Measure the boss; if it is so thin, use little torque, or a thinner screw."));
        }
    }

    private void cone(CheckInput input, BoltedFacts.Screwed screw, List<Finding> found) {
        boolean cone =
                BoltedFacts.known(() -> input.tables().bearing(screw.type().head()))
                        .filter(bearing -> bearing == HeadSize.Bearing.CONE)
                        .isPresent();
        if (cone && ThreadMatchCheck.plastic(input, screw)) {
            found.add(
                    finding(
                            input,
                            screw.joint().id(),
                            "material",
                            screw.type().id()
                                    + " has a head of the form "
                                    + screw.type().head()
                                    + ", and the thread of "
                                    + screw.joint().id()
                                    + " is in "
                                    + screw.seat().material().orElse("plastic")
                                    + ".",
                            List.of(),
                            "Use a flat head with a washer face, or a metal insert."));
        }
    }
}
