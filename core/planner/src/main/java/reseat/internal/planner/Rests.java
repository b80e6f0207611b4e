package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.plan.RebuildAct;

/** What still cures or dries while a unit is put together. */
final class Rests {

    /** How long a cleaner takes to dry; common practice, no source. */
    static final long DRY_MS = 120_000;

    private final Device device;
    private final List<Wait> open = new ArrayList<>();

    Rests(Device device) {
        this.device = device;
    }

    /**
     * A wait.
     *
     * @param joints ids of the joints that rest
     * @param ms how long from now, in milliseconds
     */
    record Wait(RebuildAct.Rest rest, List<String> joints, long ms) {}

    /** Notes what rests after an act. */
    void begin(RebuildAct act, long dwellMs, boolean flammable) {
        if (dwellMs > 0) {
            open.add(new Wait(RebuildAct.Rest.CURE, act.joints(), dwellMs));
        }
        if (flammable) {
            open.add(new Wait(RebuildAct.Rest.DRY, act.joints(), DRY_MS));
        }
    }

    /** Lets time pass. */
    void passed(long ms) {
        open.replaceAll(wait -> new Wait(wait.rest(), wait.joints(), wait.ms() - ms));
        open.removeIf(wait -> wait.ms() <= 0);
    }

    /** Returns the wait until all has cured; empty if nothing cures. */
    Optional<Wait> cure() {
        return all(RebuildAct.Rest.CURE);
    }

    /** Returns the wait until all has dried; empty if nothing dries. */
    Optional<Wait> dry() {
        return all(RebuildAct.Rest.DRY);
    }

    private Optional<Wait> all(RebuildAct.Rest rest) {
        List<Wait> such = open.stream().filter(wait -> wait.rest() == rest).toList();
        Set<String> joints = new LinkedHashSet<>();
        such.forEach(wait -> joints.addAll(wait.joints()));
        return such.stream()
                .map(Wait::ms)
                .max(Long::compare)
                .map(ms -> new Wait(rest, List.copyOf(joints), ms));
    }

    /** Returns whether a test disturbs what cures. */
    boolean isDisturbedBy(FunctionTest test) {
        Set<String> curing = new LinkedHashSet<>();
        for (Wait wait : open) {
            if (wait.rest() == RebuildAct.Rest.CURE) {
                for (String joint : wait.joints()) {
                    curing.add(joint);
                    curing.addAll(device.joint(joint).holds());
                }
            }
        }
        return !curing.isEmpty()
                && (test.isDocked() || test.leak() || test.of().stream().anyMatch(curing::contains));
    }
}
