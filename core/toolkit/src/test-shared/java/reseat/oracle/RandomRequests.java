package reseat.oracle;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.State;

/**
 * Asks random things of a device: a goal, a start that random legal acts lead to, and now and then
 * rules.
 */
final class RandomRequests {

    private final Random random;
    private final Device device;
    private final List<String> movable;
    private final List<Joint> joints;

    /** The joints that an act of its own may release. */
    private final List<Joint> undone;

    RandomRequests(Random random, Device device) {
        this.random = random;
        this.device = device;
        this.movable =
                device.parts().keySet().stream().filter(p -> !p.equals(device.base())).toList();
        this.joints = List.copyOf(device.joints().values());
        this.undone = joints.stream().filter(joint -> !device.onlyLetsGo(joint)).toList();
    }

    Case request(long seed) {
        Goal goal = goal();
        Rules rules = rules();
        State start = chance(40) ? halfOpen(1 + random.nextInt(4)) : State.closed();
        return new Case(seed, device, start, goal, rules);
    }

    private Goal goal() {
        int roll = random.nextInt(100);
        if (roll < 55) {
            return new Goal.Free(List.of(any(movable)));
        }
        if (roll < 75) {
            Set<String> targets = new LinkedHashSet<>();
            targets.add(any(movable));
            targets.add(any(movable));
            return new Goal.Free(List.copyOf(targets));
        }
        return roll < 88 && !undone.isEmpty()
                ? new Goal.Reach(any(undone).id())
                : new Goal.Teardown();
    }

    private Rules rules() {
        Rules rules = Rules.none();
        if (chance(50)) {
            rules = rules.permitRuin(device.parts().keySet());
        }
        if (chance(75)) {
            return rules;
        }
        List<Joint> giving = joints.stream().filter(Joint::gives).toList();
        Joint joint = any(giving.isEmpty() || chance(70) ? joints : giving);
        String release = new Act.Release(joint.id(), any(List.copyOf(joint.ways().keySet()))).id();
        String tool = any(device.setup().tools());
        return switch (random.nextInt(9)) {
            case 0 -> rules.forbidActs(List.of(release));
            case 1 -> rules.forbidJoints(List.of(joint.id()));
            case 2 -> rules.forbidParts(List.of(any(movable)));
            case 3 -> rules.forbidTools(List.of(tool));
            case 4 ->
                    undone.contains(joint)
                            ? rules.requireActs(List.of(release))
                            : rules.requireJoints(List.of(joint.id()));
            case 5 -> rules.requireJoints(List.of(joint.id()));
            case 6 -> rules.requireParts(List.of(any(movable)));
            case 7 -> rules.requireTools(List.of(tool));
            default -> rules.forbidActs(List.of(new Act.MoveParts(List.of(any(movable))).id()));
        };
    }

    /** Carries out random legal acts, releases rather than moves. */
    private State halfOpen(int acts) {
        Masks masks = new Masks(device);
        long state = masks.encode(State.closed());
        for (int i = 0; i < acts; i++) {
            List<Long> next = masks.next(state, set -> {});
            if (next.isEmpty()) {
                break;
            }
            state = next.get(random.nextInt(next.size()));
        }
        return masks.decode(state);
    }

    private <T> T any(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }
}
