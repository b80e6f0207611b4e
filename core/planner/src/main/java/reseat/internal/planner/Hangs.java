package reseat.internal.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.plan.RebuildAct;
import reseat.plan.Stand;

/** Tells whether a part is laid aside while some items of a rebuild are done. */
final class Hangs {

    private final RebuildItems items;
    private final Device device;
    private final boolean counts;

    /** Joints that may lead to parts laid aside, each with the items without which it is open. */
    private final Map<Joint, BitSet> slack = new LinkedHashMap<>();

    private final Stand end;

    Hangs(RebuildItems items) {
        this.items = items;
        this.device = items.device();
        this.counts = device.setup().turnOpenMs() > 0;
        this.end = Stand.of(device, items.end());
        for (Joint joint : device.joints().values()) {
            if (joint.slack() && !items.end().released().contains(joint.id())) {
                slack.put(joint, makers(joint));
            }
        }
    }

    private BitSet makers(Joint joint) {
        BitSet makers = new BitSet();
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind() != RebuildAct.Kind.BED
                    && items.get(at).joints().contains(joint)) {
                makers.set(at);
            }
        }
        return makers;
    }

    /** Returns whether a part is laid aside; false where turning open costs nothing. */
    boolean at(BitSet done) {
        if (!counts) {
            return false;
        }
        for (Map.Entry<Joint, BitSet> each : slack.entrySet()) {
            BitSet open = (BitSet) each.getValue().clone();
            open.andNot(done);
            if (open.isEmpty() && isApart(each.getKey(), done)) {
                return true;
            }
        }
        return false;
    }

    /** Returns whether an item lays a part aside where none is. */
    boolean begins(int item, BitSet done) {
        if (!counts || at(done)) {
            return false;
        }
        BitSet then = (BitSet) done.clone();
        then.set(item);
        return at(then);
    }

    private boolean isApart(Joint joint, BitSet done) {
        List<Object> places = new ArrayList<>();
        for (String part : joint.holds()) {
            places.add(place(part, done));
        }
        return places.stream().anyMatch(place -> !Objects.equals(place, places.get(0)));
    }

    private Object place(String part, BitSet done) {
        for (int placing : items.placings(part)) {
            if (!done.get(placing)) {
                return placing;
            }
        }
        return end.withBase(part) ? Set.of() : Set.copyOf(end.sharing(part));
    }
}
