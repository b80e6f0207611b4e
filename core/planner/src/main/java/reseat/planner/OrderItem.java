package reseat.planner;

import java.util.Optional;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Prepare;
import reseat.model.Way;

/**
 * Something to be put in order: an act of a device or anything else that takes time, such as a bed
 * of adhesive, a wait or a test.
 *
 * @param id what messages call it
 * @param act the act of the device that it does, or undoes in a rebuild; empty for anything else
 * @param stance how it is done; empty if it takes the device and the hand as they are
 * @param ms time that it takes, set-ups apart, in milliseconds
 */
public record OrderItem(String id, Optional<Act> act, Optional<Stance> stance, long ms) {

    /**
     * What is in hand and how the device lies.
     *
     * @param tool id of a tool
     * @param posture id of a posture
     */
    public record Stance(String tool, String posture) {}

    public OrderItem {
        if (ms < 0) {
            throw new IllegalArgumentException(id + " takes " + ms + " ms, which is negative");
        }
    }

    /**
     * Returns an act as its device states it, with its restore time.
     *
     * @throws IllegalArgumentException if the device does not have it
     */
    public static OrderItem of(Device device, Act act) {
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            Way way = joint.ways().get(release.way());
            if (way == null) {
                throw new IllegalArgumentException(joint.id() + " has no way " + release.way());
            }
            return new OrderItem(
                    act.id(),
                    Optional.of(act),
                    Optional.of(new Stance(way.tool(), way.posture())),
                    way.ms() + way.restoreMs());
        }
        if (act instanceof Act.MoveParts move) {
            Move how = device.move(move.parts().get(0));
            long ms = move.parts().stream().mapToLong(p -> device.move(p).ms()).max().orElse(0);
            long restoreMs =
                    move.parts().stream()
                            .mapToLong(p -> device.move(p).restoreMs())
                            .max()
                            .orElse(0);
            return new OrderItem(
                    act.id(),
                    Optional.of(act),
                    Optional.of(new Stance(how.tool(), how.posture())),
                    ms + restoreMs);
        }
        Prepare prepare = device.prepares().get(((Act.Prepared) act).prepare());
        if (prepare == null) {
            throw new IllegalArgumentException("the device has no " + act.id());
        }
        return new OrderItem(
                act.id(), Optional.of(act), Optional.empty(), prepare.ms() + prepare.restoreMs());
    }
}
