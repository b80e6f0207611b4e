package reseat.simulate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.model.Way;

/** Determines what a goal still lacks in the current state of a unit. */
final class GoalCheck {

    private final Bench bench;
    private final Device device;
    private final Rules rules;
    private final Words words;

    GoalCheck(Bench bench, Rules rules) {
        this.bench = bench;
        this.device = bench.device();
        this.rules = rules;
        this.words = new Words(device);
    }

    /** Returns a sentence about what is missing; empty if the goal holds. */
    Optional<String> missing(Goal goal) {
        if (goal instanceof Goal.Free free) {
            return free.targets().stream().map(this::notFree).flatMap(Optional::stream).findFirst();
        }
        if (goal instanceof Goal.Reach reach) {
            return notReached(device.joint(reach.joint()));
        }
        return notTornDown();
    }

    /** Refuses a goal that names what the device does not have. */
    void verify(Goal goal) {
        if (goal instanceof Goal.Free free) {
            free.targets().forEach(device::move);
        } else if (goal instanceof Goal.Reach reach) {
            device.joint(reach.joint());
        }
    }

    private Optional<String> notFree(String targetId) {
        Part target = device.part(targetId);
        Set<String> unit = new LinkedHashSet<>(target.spareIncludes());
        unit.add(targetId);
        for (Joint joint : bench.unreleased()) {
            if (joint.holds().contains(targetId) && !unit.containsAll(joint.holds())) {
                List<String> others =
                        joint.holds().stream().filter(part -> !unit.contains(part)).toList();
                return because(
                        words.part(targetId)
                                + " is still connected to "
                                + words.parts(others)
                                + " by "
                                + words.joint(joint));
            }
        }
        List<String> beside =
                bench.sharing(targetId).stream().filter(part -> !unit.contains(part)).toList();
        return beside.isEmpty()
                ? Optional.empty()
                : because(words.part(targetId) + " still lies with " + words.parts(beside));
    }

    private Optional<String> notReached(Joint joint) {
        Optional<String> closed = new Gate(bench).reach(joint);
        if (closed.isPresent()) {
            return closed;
        }
        RuleCheck check = new RuleCheck(device, rules);
        Gate gate = new Gate(bench);
        Optional<String> strained = Optional.empty();
        for (Way way : joint.ways().values()) {
            if (check.permits(joint, way)) {
                strained = gate.strained(joint, way);
                if (strained.isEmpty()) {
                    return strained;
                }
            }
        }
        return strained.isPresent()
                ? strained
                : because("the rules leave no way to release " + words.joint(joint));
    }

    private Optional<String> notTornDown() {
        List<Joint> unreleased = bench.unreleased();
        if (!unreleased.isEmpty()) {
            int more = unreleased.size() - 1;
            return because(
                    words.joint(unreleased.get(0))
                            + (more == 0
                                    ? " is not released yet"
                                    : " and " + more + " more are not released yet"));
        }
        for (String part : device.parts().keySet()) {
            List<String> beside =
                    bench.sharing(part).stream().filter(other -> !other.equals(part)).toList();
            if (!beside.isEmpty()) {
                return because(words.part(part) + " still lies with " + words.parts(beside));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> because(String text) {
        return Optional.of(Words.sentence(text));
    }
}
