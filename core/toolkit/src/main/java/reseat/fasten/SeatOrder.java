package reseat.fasten;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import reseat.fasten.TighteningPattern.Backing;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Device;
import reseat.model.Point;
import reseat.model.Seat;

/**
 * The order in which the screws of a device's part are tightened, by joint.
 *
 * <p>All screws are started by hand first. Where the maker puts screws in numbered passes ({@link
 * Seat#pass()}), each number is tightened to the end before the next, and screws without a number
 * come last; within a number {@link TighteningPattern} decides.
 *
 * @param passes passes in order
 * @param notes remarks on the order; a sentence each
 */
public record SeatOrder(List<Pass> passes, List<String> notes) {

    public SeatOrder {
        passes = List.copyOf(passes);
        notes = List.copyOf(notes);
    }

    /**
     * One pass.
     *
     * @param stage what is done
     * @param torqueShare share of the torque of each screw, from 0 (by hand) to 1
     * @param joints ids of the joints in order
     */
    public record Pass(Stage stage, double torqueShare, List<String> joints) {
        public Pass {
            joints = List.copyOf(joints);
        }
    }

    /**
     * Returns the order for some screws of a device.
     *
     * @param joints ids of joints with a seat; repeated ids count once
     * @param backing what lies between the parts
     * @throws IllegalArgumentException if there is no joint, or a joint does not exist or has no
     *     seat
     */
    public static SeatOrder of(Device device, List<String> joints, Backing backing) {
        if (joints.isEmpty()) {
            throw new IllegalArgumentException("a tightening order must have at least one screw");
        }
        Map<Integer, List<String>> groups = new TreeMap<>();
        List<String> notes = new ArrayList<>();
        for (String joint : joints.stream().distinct().toList()) {
            groups.computeIfAbsent(
                            seat(device, joint).pass().orElse(Integer.MAX_VALUE),
                            n -> new ArrayList<>())
                    .add(joint);
        }
        List<String> byHand = new ArrayList<>();
        List<Pass> tighten = new ArrayList<>();
        for (List<String> group : groups.values()) {
            for (TighteningPattern.Pass pass : pattern(device, group, backing, notes)) {
                List<String> ordered = pass.order().stream().map(group::get).toList();
                if (pass.stage() == Stage.START_BY_HAND) {
                    byHand.addAll(ordered);
                } else {
                    tighten.add(new Pass(pass.stage(), pass.torqueShare(), ordered));
                }
            }
        }
        List<Pass> passes = new ArrayList<>();
        passes.add(new Pass(Stage.START_BY_HAND, 0, byHand));
        passes.addAll(tighten);
        return new SeatOrder(passes, notes);
    }

    private static List<TighteningPattern.Pass> pattern(
            Device device, List<String> group, Backing backing, List<String> notes) {
        List<Point> points = new ArrayList<>();
        List<String> unplaced = new ArrayList<>();
        for (String joint : group) {
            seat(device, joint).at().ifPresentOrElse(points::add, () -> unplaced.add(joint));
        }
        if (unplaced.isEmpty()) {
            return TighteningPattern.of(points, backing).passes();
        }
        if (group.size() > 1) {
            notes.add(
                    "The order is that of the device file, because the position of "
                            + String.join(", ", unplaced)
                            + " is not known; tighten opposite screws in turn.");
        }
        List<Point> asListed = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            asListed.add(new Point(i, 0));
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            order.add(i);
        }
        return TighteningPattern.of(asListed, backing).passes().stream()
                .map(pass -> new TighteningPattern.Pass(pass.stage(), pass.torqueShare(), order))
                .toList();
    }

    private static Seat seat(Device device, String joint) {
        Objects.requireNonNull(joint, "joint");
        return device.joint(joint)
                .seat()
                .orElseThrow(
                        () -> new IllegalArgumentException(joint + " is not a screw in a seat"));
    }
}
