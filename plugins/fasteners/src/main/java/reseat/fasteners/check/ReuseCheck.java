package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.Material;
import reseat.fasten.Rule;
import reseat.model.Seat;
import reseat.model.Severity;

/** Finds screws that should not go back as they came out. */
final class ReuseCheck extends JointCheck {

    private static final CheckInfo PATCH =
            new CheckInfo(
                    "patch-screw-reused",
                    "Screw with a spent patch goes back",
                    "A screw with a locking patch whose way to put it back uses up nothing.",
                    "A patch locks once; a screw that goes back as it came out works loose.",
                    Severity.WARNING,
                    List.of("screws", "rebuild", "consumables"),
                    List.of());

    private static final CheckInfo FORMED =
            new CheckInfo(
                    "formed-thread-worn",
                    "Formed thread beyond its cycles",
                    "A thread-forming screw that has been, or with this work will be, driven more often than its thread stands.",
                    "Each cycle wears the formed thread; it strips without warning.",
                    Severity.WARNING,
                    List.of("screws", "rebuild"),
                    List.of());

    private ReuseCheck(CheckInfo info) {
        super(info);
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new ReuseCheck(PATCH), new ReuseCheck(FORMED));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            if (is(PATCH)) {
                patch(input, screw, found);
            } else {
                formed(input, screw, found);
            }
        }
        return found;
    }

    private void patch(CheckInput input, BoltedFacts.Screwed screw, List<Finding> found) {
        boolean replaced =
                screw.joint().ways().values().stream().allMatch(way -> !way.consumes().isEmpty());
        if (screw.type().patch() && !replaced) {
            found.add(
                    finding(
                            input,
                            screw.joint().id(),
                            "ways",
                            screw.type().id()
                                    + " in "
                                    + screw.joint().id()
                                    + " carries a locking patch, and nothing new is used when it goes back.",
                            List.of("patch: true", "consumes: nothing"),
                            "State a new screw"
                                    + screw.type()
                                            .spare()
                                            .map(spare -> " (" + spare + ")")
                                            .orElse("")
                                    + " or thread locker among what the way consumes."));
        }
    }

    private void formed(CheckInput input, BoltedFacts.Screwed screw, List<Finding> found) {
        if (screw.seat().form() != Seat.Form.FORMED) {
            return;
        }
        boolean plastic =
                screw.seat()
                        .material()
                        .flatMap(name -> BoltedFacts.known(() -> input.tables().material(name)))
                        .filter(Material::thermoplastic)
                        .isPresent();
        Rule rule = input.tables().rule(plastic ? "plastic-cycles" : "formed-metal-cycles");
        int cycles =
                input.job()
                        .map(job -> job.cycles().get(screw.joint().id()))
                        .orElse(screw.seat().formedCycles());
        int next = cycles + 1;
        if (next > rule.low()) {
            found.add(
                    finding(
                            input,
                            screw.joint().id(),
                            "formedCycles",
                            "The thread of "
                                    + screw.joint().id()
                                    + " has been formed into "
                                    + cycles
                                    + " times; this work makes it "
                                    + next
                                    + ", and "
                                    + (int) rule.low()
                                    + " is the most that is claimed.",
                            List.of(rule.source()),
                            "Use the next size or an insert, or replace the part with the boss."));
        }
    }
}
