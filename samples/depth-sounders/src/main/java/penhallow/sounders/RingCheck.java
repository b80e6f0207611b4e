package penhallow.sounders;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Joint;
import reseat.model.Severity;
import reseat.model.Way;

/** An O-ring below a bayonet ring is used once. */
final class RingCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "ring-renewed",
                    "Old O-ring below a bayonet ring",
                    "Bayonet rings that are closed again over the old O-ring.",
                    "An O-ring that was compressed once keeps its shape and no longer seals.",
                    Severity.ERROR,
                    List.of("seals"),
                    List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            for (Way way : joint.ways().values()) {
                if (joint.kind().equals("bayonet-ring") && !renews(way)) {
                    found.add(
                            input.finding("/joints/" + joint.id())
                                    .evidence("way " + way.id() + " uses up no O-ring")
                                    .says(
                                            joint.name() + " is closed again over its old O-ring.",
                                            "Let the way consume an O-ring, as a rule o-ring-40."));
                }
            }
        }
        return found;
    }

    private static boolean renews(Way way) {
        return way.consumes().stream().anyMatch(use -> use.consumable().startsWith("o-ring"));
    }
}
