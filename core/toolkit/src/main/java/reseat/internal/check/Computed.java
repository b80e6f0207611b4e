package reseat.internal.check;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.ConcurrentHashMap;
import reseat.check.CheckInput;
import reseat.fasten.CutPlan;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.StackUp;
import reseat.model.Bond;
import reseat.model.Device;
import reseat.model.Joint;

/**
 * What several checks compute of one device alike, computed once. Kept as long as the device is;
 * nothing in here may lead back to it.
 */
final class Computed {

    private static final Map<Device, Computed> OF =
            Collections.synchronizedMap(new WeakHashMap<>());

    private final FastenerTables tables;
    private final Map<String, Optional<StackUp>> seats = new ConcurrentHashMap<>();
    private final Map<String, Cut> cuts = new ConcurrentHashMap<>();

    private Computed(FastenerTables tables) {
        this.tables = tables;
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
        Computed known = OF.get(input.device());
        if (known == null || !known.tables.equals(input.tables())) {
            known = new Computed(input.tables());
            OF.put(input.device(), known);
        }
        return known;
    }

    /** Returns how the right screw lies in a seat; empty where a name in it is not known. */
    Optional<StackUp> seat(CheckInput input, Joint joint) {
        return seats.computeIfAbsent(
                joint.id(), id -> BoltedFacts.known(() -> StackUp.of(tables, input.device(), id)));
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
