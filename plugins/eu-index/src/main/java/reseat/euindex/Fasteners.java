package reseat.euindex;

import java.util.List;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Way;

/**
 * The points of fasteners.
 *
 * <p>Source: Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026, Annex I 16 to
 * 19 and Annex IV point 5.
 */
final class Fasteners {

    /** Points of a fastener that can be used again. */
    static final int REUSABLE = 5;

    private static final int RESUPPLIED = 3;
    private static final int REMOVABLE = 1;

    private final Device device;
    private final Statements stated;

    Fasteners(Device device, Statements stated) {
        this.device = device;
        this.stated = stated;
    }

    /**
     * Returns 5 for a reusable fastener, 3 for one that is used up and comes with the spare part, 1
     * for one that is used up and does not. A fastener is used up if making it again consumes
     * something that holds, or if its screw has a locking patch.
     */
    int points(Act.Release release, boolean supplied) {
        Joint joint = device.joint(release.joint());
        boolean patch =
                joint.seat()
                        .map(seat -> device.screwTypes().get(seat.screw()))
                        .filter(type -> type.patch())
                        .isPresent();
        boolean usedUp = uses(joint, release).stream().anyMatch(stated::joins);
        if (!usedUp && !patch) {
            return REUSABLE;
        }
        return supplied ? RESUPPLIED : REMOVABLE;
    }

    /** Paste, grease and loose seals join nothing: they are no fasteners. */
    boolean holdNothing(Act.Release release) {
        Joint joint = device.joint(release.joint());
        List<String> uses = uses(joint, release);
        return device.kindOf(joint).role().equals(Optional.of(Kind.Role.BOND))
                && !uses.isEmpty()
                && uses.stream().noneMatch(stated::joins);
    }

    private static List<String> uses(Joint joint, Act.Release release) {
        Way way = Optional.ofNullable(joint.ways().get(release.way())).orElseThrow();
        return way.consumes().stream().map(ConsumableUse::consumable).toList();
    }
}
