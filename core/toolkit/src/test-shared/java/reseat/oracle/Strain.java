package reseat.oracle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Way;

/** What a way of a joint is strained by, from the facts alone. */
final class Strain {

    private final Device device;
    private final List<Joint> screws = new ArrayList<>();

    Strain(Device device) {
        this.device = device;
        for (Joint joint : device.joints().values()) {
            Kind kind = device.kinds(Kind.Scope.JOINT).get(joint.kind());
            if (kind != null && kind.role().equals(Optional.of(Kind.Role.SCREW))) {
                screws.add(joint);
            }
        }
    }

    /** Returns the joints that must be released before a joint is released by a way. */
    List<String> of(Joint joint, Way way) {
        if (way.strainedBy().isPresent()) {
            return way.strainedBy().get();
        }
        List<String> strain = new ArrayList<>();
        Kind how = device.kinds(Kind.Scope.MANIPULATION).get(way.kind());
        if (how != null && how.forceful()) {
            for (Joint screw : screws) {
                Set<String> both = new HashSet<>(screw.holds());
                both.retainAll(joint.holds());
                if (screw != joint && both.size() >= 2) {
                    strain.add(screw.id());
                }
            }
        }
        return strain;
    }
}
