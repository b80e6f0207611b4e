package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.plan.Plan;

/** The acts of a plan with the supplies that are still on at each. */
final class LiveActs {

    /**
     * An act.
     *
     * @param act a release or a move
     * @param live supplies that are not cut when it begins
     */
    record Live(Act act, List<String> live) {

        /** Returns what it is about, as a pointer into the device file. */
        String pointer() {
            return act instanceof Act.Release release
                    ? "/joints/" + release.joint()
                    : "/parts/" + ((Act.MoveParts) act).parts().get(0);
        }
    }

    private final Device device;
    private final Set<String> live;
    private final Set<String> released;
    private final List<Live> acts = new ArrayList<>();

    private LiveActs(Plan plan) {
        device = plan.request().device();
        live = new LinkedHashSet<>(device.supplies().keySet());
        released = new LinkedHashSet<>();
        plan.request().start().released().forEach(this::release);
        for (CostedAct costed : plan.acts()) {
            if (costed.act() instanceof Act.Release release) {
                acts.add(new Live(release, List.copyOf(live)));
                release(release.joint());
            } else if (costed.act() instanceof Act.MoveParts move) {
                acts.add(new Live(move, List.copyOf(live)));
                giveWay(Set.copyOf(move.parts()));
            }
        }
    }

    /** Returns the releases and moves of a plan, in order. */
    static List<Live> of(Plan plan) {
        return List.copyOf(new LiveActs(plan).acts);
    }

    private void release(String joint) {
        if (released.add(joint)) {
            live.removeAll(device.joint(joint).cuts());
        }
    }

    private void giveWay(Set<String> moved) {
        for (Joint joint : device.joints().values()) {
            if (joint.letsGo(moved)) {
                release(joint.id());
            }
        }
    }
}
