package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Supply;
import reseat.plan.RebuildAct;

/** The progress of the work at each act: which supplies are on, and how long it took. */
final class Progress {

    private final Device device;
    private final List<Set<String>> opened = new ArrayList<>();
    private final List<Long> teardownMs = new ArrayList<>();
    private final List<Long> rebuildMs = new ArrayList<>();
    private final List<RebuildAct> rebuild;

    Progress(Source source) {
        this.device = source.device();
        this.rebuild = source.rebuild().acts();
        Set<String> released = new LinkedHashSet<>(source.plan().request().start().released());
        long ms = 0;
        opened.add(Set.copyOf(released));
        for (CostedAct act : source.plan().acts()) {
            if (act.act() instanceof Act.Release release) {
                released.add(release.joint());
            } else if (act.act() instanceof Act.MoveParts move) {
                released.addAll(given(move.parts()));
            }
            opened.add(Set.copyOf(released));
            ms += act.setupMs() + act.ms();
            teardownMs.add(ms);
        }
        rebuildMs.add(ms);
        for (RebuildAct act : rebuild) {
            ms += act.setupMs() + act.ms();
            rebuildMs.add(ms);
        }
    }

    /** Returns the supplies that are on before an act of the teardown. */
    List<Supply> onBefore(int act) {
        Set<String> released = opened.get(act);
        return device.supplies().values().stream()
                .filter(supply -> released.stream().noneMatch(joint -> cuts(joint, supply)))
                .toList();
    }

    /** Joints that give let go when parts are moved away. */
    private List<String> given(List<String> parts) {
        return device.joints().values().stream()
                .filter(joint -> joint.letsGo(parts))
                .map(Joint::id)
                .toList();
    }

    /**
     * Returns the act of the teardown that cuts a supply which is cut at its end; -1 if it was cut
     * at the start.
     */
    int cutBy(Supply supply) {
        int at = 0;
        while (onBefore(at).contains(supply)) {
            at++;
        }
        return at - 1;
    }

    /** Returns the supplies that are on before an act of the rebuild, or at its end. */
    List<Supply> onBeforeRebuild(int act) {
        return act == rebuild.size()
                ? onBefore(0)
                : rebuild.get(act).on().stream().map(device.supplies()::get).toList();
    }

    /** Returns the supplies that are on at every act of the plan. */
    List<Supply> staysOn() {
        return onBefore(opened.size() - 1);
    }

    /** Returns the time up to the end of an act of the teardown, in milliseconds. */
    long doneMs(int act) {
        return teardownMs.get(act);
    }

    /** Returns the time up to the beginning of an act of the rebuild, in milliseconds. */
    long rebuildMs(int act) {
        return rebuildMs.get(act);
    }

    private boolean cuts(String joint, Supply supply) {
        return device.joint(joint).cuts().contains(supply.id());
    }
}
