package reseat.plan;

import java.util.ArrayList;
import java.util.List;
import reseat.fasten.SeatOrder;
import reseat.fasten.TighteningPattern.Backing;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;

/** Finds the screws that go in together: same part, same tool, consecutive. */
final class Fastenings {

    private final Device device;
    private final List<RebuildAct> acts;

    Fastenings(Device device, List<RebuildAct> acts) {
        this.device = device;
        this.acts = acts;
    }

    List<Fastening> all() {
        List<Fastening> all = new ArrayList<>();
        int at = 0;
        while (at < acts.size()) {
            if (!isScrew(at)) {
                at++;
                continue;
            }
            int first = at;
            List<String> joints = new ArrayList<>();
            while (at < acts.size() && isScrew(at) && belong(first, at)) {
                joints.add(joint(at).id());
                at++;
            }
            String part = joint(first).holds().get(0);
            SeatOrder order = SeatOrder.of(device, joints, backing(joint(first)));
            all.add(new Fastening(part, first, at - 1, joints, order));
        }
        return all;
    }

    private boolean isScrew(int at) {
        return acts.get(at).kind() == RebuildAct.Kind.MAKE && joint(at).seat().isPresent();
    }

    private boolean belong(int one, int other) {
        return joint(one).holds().get(0).equals(joint(other).holds().get(0))
                && acts.get(one).tool().equals(acts.get(other).tool())
                && acts.get(one).posture().equals(acts.get(other).posture());
    }

    private Joint joint(int at) {
        return device.joint(acts.get(at).joints().get(0));
    }

    /** Parts that also sit on a gasket, a pad or paste give way while they are drawn together. */
    private Backing backing(Joint screw) {
        boolean yields =
                device.joints().values().stream()
                        .anyMatch(
                                joint ->
                                        screw.holds().containsAll(joint.holds())
                                                && device.kindOf(joint)
                                                        .role()
                                                        .filter(Kind.Role.BOND::equals)
                                                        .isPresent()
                                                && !device.kindOf(joint).irreversible());
        return yields ? Backing.YIELDING : Backing.HARD;
    }
}
