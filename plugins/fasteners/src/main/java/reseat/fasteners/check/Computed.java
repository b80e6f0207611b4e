package reseat.fasteners.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import reseat.check.CheckInput;
import reseat.fasten.CutPlan;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.StackUp;
import reseat.model.Bond;
import reseat.model.Device;
import reseat.model.Joint;

/** What several checks compute of one input alike, computed once and kept in the input. */
final class Computed {

    private final Device device;
    private final FastenerTables tables;
    private final Map<String, Optional<StackUp>> seats = new ConcurrentHashMap<>();
    private final Map<String, Cut> cuts = new ConcurrentHashMap<>();

    private Computed(CheckInput input) {
        this.device = input.device();
        this.tables = input.tables();
    }

    /**
     * How a bond can be cut.
     *
     * @param plan the plan; empty where the geometry makes no sense
     * @param judged the depths that are given
     * @param wrong what makes no sense
     */
    record Cut(Optional<CutPlan> plan, List<CutPlan.Judged> judged, String wrong) {}

    static Computed of(CheckInput input) {
        return input.computed(Computed.class, Computed::new);
    }

    /** Returns how the right screw lies in a seat; empty where a name in it is not known. */
    Optional<StackUp> seat(Joint joint) {
        return seats.computeIfAbsent(
                joint.id(), id -> BoltedFacts.known(() -> StackUp.of(tables, device, id)));
    }

    /** Returns how a bond of a joint can be cut. */
    Cut cut(Joint joint, Bond bond) {
        return cuts.computeIfAbsent(joint.id(), id -> cut(bond));
    }

    private static Cut cut(Bond bond) {
        try {
            CutPlan plan = CutPlan.of(bond);
            return new Cut(Optional.of(plan), plan.judge(bond), "");
        } catch (FastenerInputException e) {
            return new Cut(Optional.empty(), List.of(), String.valueOf(e.getMessage()));
        }
    }
}
