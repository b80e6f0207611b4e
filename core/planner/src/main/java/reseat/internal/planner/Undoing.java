package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.RebuildAct;

/**
 * An act of a rebuild before it has its place in the order.
 *
 * @param kind what is done; for a placing {@link RebuildAct.Kind#PUT_BACK}, whether the parts hang
 *     by something or not
 * @param undoes place of the act of the plan that it undoes; empty if there is none
 * @param act the act of the teardown that it undoes or lays for
 * @param joints the joint that it makes or lays; for a placing those that may close with it: they
 *     give, have no closing of their own and lead out of it
 * @param tool id of the tool; empty if it takes hand and device as they are
 * @param posture id of the posture; empty if it takes them as they are
 * @param ms time in milliseconds, without what closes with a placing
 * @param consumes what it uses up, without what closes with a placing
 * @param irreversible whether what it makes cannot be opened again without destroying it; false for
 *     a placing
 * @param dwellMs how long what it makes has to rest, in milliseconds; 0 for a placing
 */
public record Undoing(
        RebuildAct.Kind kind,
        OptionalInt undoes,
        Act act,
        List<Joint> joints,
        Optional<String> tool,
        Optional<String> posture,
        long ms,
        List<ConsumableUse> consumes,
        boolean irreversible,
        long dwellMs) {

    public Undoing {
        joints = List.copyOf(joints);
        consumes = List.copyOf(consumes);
    }

    /**
     * Returns the undoing of an act, with the bed before it if it has one.
     *
     * @param notByMoves ids of joints that no placing closes
     */
    static List<Undoing> of(Device device, Act act, Set<String> notByMoves, OptionalInt undoes) {
        if (act instanceof Act.Release release) {
            return made(device, release, undoes);
        }
        return List.of(
                act instanceof Act.MoveParts move
                        ? placed(device, move, notByMoves, undoes)
                        : prepared(device, (Act.Prepared) act, undoes));
    }

    private static List<Undoing> made(Device device, Act.Release release, OptionalInt undoes) {
        Joint joint = device.joint(release.joint());
        Way way = Objects.requireNonNull(joint.ways().get(release.way()));
        List<Undoing> made = new ArrayList<>();
        boolean laid = device.kindOf(joint).laid();
        if (laid) {
            made.add(bed(device, joint, way, release, undoes));
        }
        made.add(
                new Undoing(
                        RebuildAct.Kind.MAKE,
                        undoes,
                        release,
                        List.of(joint),
                        Optional.of(restoreTool(device, joint, way)),
                        Optional.of(way.posture()),
                        laid ? 0 : way.restoreMs(),
                        laid ? List.of() : way.consumes(),
                        isIrreversible(device, joint, way),
                        dwell(device, joint, way)));
        return made;
    }

    /** Returns the laying of a joint, for which the act of the teardown is an occasion. */
    static Undoing bed(Device device, Joint joint, Way way, Act act, OptionalInt undoes) {
        return new Undoing(
                RebuildAct.Kind.BED,
                undoes,
                act,
                List.of(joint),
                Optional.of(device.hand()),
                Optional.of(way.posture()),
                way.restoreMs(),
                way.consumes(),
                false,
                0);
    }

    private static Undoing placed(
            Device device, Act.MoveParts move, Set<String> notByMoves, OptionalInt undoes) {
        List<Joint> giving =
                device.joints().values().stream()
                        .filter(joint -> joint.letsGo(move.parts()))
                        .filter(joint -> !notByMoves.contains(joint.id()))
                        .toList();
        long ms = move.parts().stream().mapToLong(p -> device.move(p).restoreMs()).max().orElse(0);
        return new Undoing(
                RebuildAct.Kind.PUT_BACK,
                undoes,
                move,
                giving,
                Optional.of(device.move(move.parts().get(0)).tool()),
                Optional.of(device.move(move.parts().get(0)).posture()),
                ms,
                List.of(),
                false,
                0);
    }

    private static Undoing prepared(Device device, Act.Prepared act, OptionalInt undoes) {
        Prepare prepare = Objects.requireNonNull(device.prepares().get(act.prepare()));
        boolean something = !prepare.restore().isEmpty() || prepare.restoreMs() > 0;
        return new Undoing(
                RebuildAct.Kind.UNDO_PREPARE,
                undoes,
                act,
                List.of(),
                something ? Optional.of(device.hand()) : Optional.empty(),
                something ? Optional.of(device.usualPosture()) : Optional.empty(),
                prepare.restoreMs(),
                List.of(),
                false,
                0);
    }

    /** Returns whether it lays or makes something with what burns. */
    boolean isFlammable(Device device) {
        boolean byKind =
                act instanceof Act.Release release
                        && kind != RebuildAct.Kind.UNDO_PREPARE
                        && device.manipulation(
                                        Objects.requireNonNull(
                                                        device.joint(release.joint())
                                                                .ways()
                                                                .get(release.way()))
                                                .kind())
                                .flammable();
        return byKind || burns(device, consumes);
    }

    static boolean burns(Device device, List<ConsumableUse> uses) {
        return uses.stream()
                .map(use -> device.consumables().get(use.consumable()))
                .anyMatch(consumable -> consumable != null && consumable.flammable());
    }

    private static String restoreTool(Device device, Joint joint, Way way) {
        Optional<Kind.Role> role = device.kindOf(joint).role();
        boolean pressed = role.filter(r -> r == Kind.Role.BOND || r == Kind.Role.CLIP).isPresent();
        return pressed ? device.hand() : way.tool();
    }

    static long dwell(Device device, Joint joint, Way way) {
        return Math.max(device.kindOf(joint).dwellMs(), device.manipulation(way.kind()).dwellMs());
    }

    static boolean isIrreversible(Device device, Joint joint, Way way) {
        return device.kindOf(joint).irreversible()
                || device.manipulation(way.kind()).irreversible();
    }
}
