package reseat.query;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;

/** Determines which parts are next to each other. */
final class JoinedParts {

    private JoinedParts() {}

    static List<PairRow> pairs(Device device) {
        Map<List<String>, List<String>> pairs = new LinkedHashMap<>();
        for (String one : device.parts().keySet()) {
            for (Joint joint : device.joints().values()) {
                if (joint.holds().contains(one)) {
                    for (String other : joint.holds()) {
                        if (!other.equals(one) && !pairs.containsKey(List.of(other, one))) {
                            pairs.computeIfAbsent(List.of(one, other), p -> new ArrayList<>())
                                    .add(joint.id());
                        }
                    }
                }
            }
        }
        return pairs.entrySet().stream()
                .map(e -> new PairRow(e.getKey().get(0), e.getKey().get(1), e.getValue()))
                .toList();
    }

    static List<NeighbourRow> neighbours(Device device, String part) {
        Part own = device.part(part);
        List<NeighbourRow> rows = new ArrayList<>();
        for (Part other : device.parts().values()) {
            List<String> shared =
                    device.joints().values().stream()
                            .filter(j -> j.holds().contains(part))
                            .filter(j -> j.holds().contains(other.id()))
                            .map(Joint::id)
                            .toList();
            boolean above = own.under().contains(other.id());
            boolean below = other.under().contains(part);
            if (!other.id().equals(part) && (above || below || !shared.isEmpty())) {
                rows.add(
                        new NeighbourRow(
                                other.id(),
                                "/parts/" + other.id(),
                                other.name(),
                                shared,
                                above,
                                below));
            }
        }
        return List.copyOf(rows);
    }
}
