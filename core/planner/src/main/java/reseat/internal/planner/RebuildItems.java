package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;
import reseat.model.Way;
import reseat.plan.Plan;
import reseat.plan.RebuildAct;
import reseat.plan.Stand;

/**
 * What has to be done to undo a teardown: the closings and placings in the plain reverse, each bed
 * at its first place.
 */
public final class RebuildItems {

    private final Device device;

    /** Where the unit stands before the teardown, and so after the rebuild. */
    private final State end;

    private final List<Act> teardown;
    private final List<Undoing> items = new ArrayList<>();

    /** Places of the items that undo moves, by part, in the plain reverse. */
    private final Map<String, List<Integer>> placings = new LinkedHashMap<>();

    /** Places of the items that may close a joint, by joint: the last of them to be done does. */
    private final Map<String, List<Integer>> closers = new LinkedHashMap<>();

    /**
     * Finds the items.
     *
     * @param before acts that lead from a closed unit to where the plan begins; none to leave open
     *     what was open then
     */
    public RebuildItems(Plan plan, List<Act> before) {
        this.device = plan.request().device();
        this.end = before.isEmpty() ? plan.request().start() : State.closed();
        this.teardown = new ArrayList<>(before);
        plan.acts().forEach(costed -> teardown.add(costed.act()));
        Set<String> notByMoves = new LinkedHashSet<>(end.released());
        for (Act act : teardown) {
            if (act instanceof Act.Release release) {
                notByMoves.add(release.joint());
            }
        }
        List<List<Undoing>> beds = new ArrayList<>();
        teardown.forEach(act -> beds.add(new ArrayList<>()));
        List<List<Undoing>> undone = new ArrayList<>();
        for (int at = 0; at < teardown.size(); at++) {
            int ofPlan = at - before.size();
            OptionalInt undoes = ofPlan < 0 ? OptionalInt.empty() : OptionalInt.of(ofPlan);
            List<Undoing> all =
                    new ArrayList<>(Undoing.of(device, teardown.get(at), notByMoves, undoes));
            if (all.size() > 1) {
                Undoing bed = all.remove(0);
                beds.get(covering(bed.joints().get(0), at)).add(bed);
            }
            undone.add(all);
        }
        givingBeds(before.size(), beds);
        for (int at = teardown.size() - 1; at >= 0; at--) {
            items.addAll(beds.get(at));
            items.addAll(undone.get(at));
        }
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind().isPlacing()) {
                for (String part : ((Act.MoveParts) items.get(at).act()).parts()) {
                    placings.computeIfAbsent(part, p -> new ArrayList<>()).add(at);
                }
            }
            if (items.get(at).kind() != RebuildAct.Kind.BED) {
                for (Joint joint : items.get(at).joints()) {
                    closers.computeIfAbsent(joint.id(), j -> new ArrayList<>()).add(at);
                }
            }
        }
    }

    /** Lays what clings by itself before the parts come together. */
    private void givingBeds(int ofPlan, List<List<Undoing>> beds) {
        Set<String> seen = new LinkedHashSet<>(end.released());
        for (int at = 0; at < teardown.size(); at++) {
            if (teardown.get(at) instanceof Act.Release release) {
                seen.add(release.joint());
            } else if (teardown.get(at) instanceof Act.MoveParts move) {
                for (Joint joint : device.joints().values()) {
                    if (joint.letsGo(move.parts())
                            && seen.add(joint.id())
                            && device.kindOf(joint).laid()) {
                        OptionalInt undoes =
                                at < ofPlan ? OptionalInt.empty() : OptionalInt.of(at - ofPlan);
                        beds.get(covering(joint, at))
                                .add(Undoing.bed(device, joint, joint.firstWay(), move, undoes));
                    }
                }
            }
        }
    }

    /**
     * Returns the act before whose undoing a bed is laid in the plain reverse: the first move that
     * parts what the joint holds, or the release if that comes after it.
     */
    private int covering(Joint joint, int release) {
        for (int at = 0; at < teardown.size(); at++) {
            if (teardown.get(at) instanceof Act.MoveParts move && joint.leadsOut(move.parts())) {
                return Math.max(at, release);
            }
        }
        return release;
    }

    public Device device() {
        return device;
    }

    /** Returns where the unit stands after the rebuild. */
    public State end() {
        return end;
    }

    /** Returns the number of items. */
    public int size() {
        return items.size();
    }

    public Undoing get(int at) {
        return items.get(at);
    }

    List<Undoing> all() {
        return List.copyOf(items);
    }

    /** Returns the acts that the items undo by number, for all that undo one. */
    public Map<Integer, Act> acts() {
        Map<Integer, Act> acts = new LinkedHashMap<>();
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind().isUndoing()) {
                acts.put(at, items.get(at).act());
            }
        }
        return acts;
    }

    /** Returns the places of the items that put a part back, in the plain reverse. */
    List<Integer> placings(String part) {
        return placings.getOrDefault(part, List.of());
    }

    /**
     * Returns the items that may close a joint: the last of them to be done does. A joint without
     * an own closing that gives is closed by the last placing that it leads out of.
     */
    List<Integer> closers(Joint joint) {
        return closers.getOrDefault(joint.id(), List.of());
    }

    /** Returns the items that may close a joint, for each joint that closes, in order. */
    Map<Joint, List<Integer>> closers() {
        Map<Joint, List<Integer>> all = new LinkedHashMap<>();
        closers.forEach((joint, at) -> all.put(device.joint(joint), at));
        return all;
    }

    /**
     * Returns whether a joint closes for good or has to rest, and so closes as late as possible.
     */
    boolean isLate(Joint joint) {
        Way way = wayOf(joint);
        return Undoing.isIrreversible(device, joint, way) || Undoing.dwell(device, joint, way) > 0;
    }

    /** Returns whether the parts of a joint are set on a bed that holds them for good. */
    boolean sticksForGood(Joint joint) {
        return device.kindOf(joint).laid()
                && !closers(joint).isEmpty()
                && Undoing.isIrreversible(device, joint, wayOf(joint));
    }

    private Way wayOf(Joint joint) {
        Way way = joint.firstWay();
        for (int at : closers(joint)) {
            if (items.get(at).act() instanceof Act.Release release) {
                way = Objects.requireNonNull(joint.ways().get(release.way()));
            }
        }
        return way;
    }

    /**
     * Returns the supplies that must be cut while an item is done. What a placing may close counts:
     * if another placing closes it, that one comes later and has the same needs.
     */
    Set<String> needs(int at) {
        Undoing item = items.get(at);
        Set<String> needs = new LinkedHashSet<>();
        if (item.act() instanceof Act.MoveParts move && item.kind().isPlacing()) {
            needs.addAll(device.power().needs(move.parts()));
        }
        item.joints().forEach(joint -> needs.addAll(device.power().needs(joint)));
        return needs;
    }

    /** Returns the state of the unit before each item of an order, and after the last. */
    List<Stand> stands(List<Integer> order) {
        List<Stand> backwards = new ArrayList<>(List.of(Stand.of(device, end)));
        for (int k = order.size() - 1; k >= 0; k--) {
            Stand after = Objects.requireNonNull(backwards.get(backwards.size() - 1));
            Undoing item = items.get(order.get(k));
            backwards.add(item.kind().isUndoing() ? after.after(item.act()) : after);
        }
        Collections.reverse(backwards);
        return backwards;
    }
}
