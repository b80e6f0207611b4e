package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.plan.RebuildAct;
import reseat.plan.Stand;

/** The tests that are due after a teardown, and what each of them needs. */
public final class RebuildTests {

    private final RebuildItems items;
    private final Device device;
    private final List<FunctionTest> due = new ArrayList<>();

    public RebuildTests(RebuildItems items) {
        this.items = items;
        this.device = items.device();
        Set<String> touched = new LinkedHashSet<>();
        for (Undoing item : items.all()) {
            item.joints().forEach(joint -> touched.add(joint.id()));
            if (item.act() instanceof Act.MoveParts move) {
                touched.addAll(move.parts());
            }
        }
        Stand end = Stand.of(device, items.end());
        for (FunctionTest test : device.tests().values()) {
            if (test.of().stream().anyMatch(touched::contains) && canBeMade(test, end)) {
                due.add(test);
            }
        }
    }

    /** A unit that is left open is not tested where it is open, nor switched on while cut. */
    private boolean canBeMade(FunctionTest test, Stand end) {
        Set<String> used = new LinkedHashSet<>(test.of());
        used.addAll(test.needs());
        boolean power = device.supplies().keySet().stream().noneMatch(supply -> end.isCut(supply));
        return (power || !test.powered())
                && used.stream()
                        .allMatch(
                                id ->
                                        device.joints().containsKey(id)
                                                ? !end.isReleased(id)
                                                : end.withBase(id));
    }

    /** Returns the tests that are due, in the order of the device. */
    public List<FunctionTest> due() {
        return due;
    }

    /**
     * Returns the items that must be done before a test. A part that hangs by a connector is tested
     * before it is put in place.
     */
    Set<Integer> needs(FunctionTest test) {
        Set<Integer> needs = closings(test);
        for (String part : parts(test)) {
            List<Integer> placings = items.placings(part);
            List<Joint> hanging = test.isDocked() ? List.of() : slackConnectors(part);
            if (hanging.isEmpty() || placings.isEmpty()) {
                needs.addAll(placings);
            } else {
                needs.addAll(placings.subList(0, placings.size() - 1));
                for (String other : hanging.get(0).holds()) {
                    if (!other.equals(part)) {
                        needs.addAll(items.placings(other));
                    }
                }
            }
        }
        return needs;
    }

    private static List<String> used(FunctionTest test) {
        Set<String> used = new LinkedHashSet<>(test.of());
        used.addAll(test.needs());
        return List.copyOf(used);
    }

    private List<String> parts(FunctionTest test) {
        return used(test).stream().filter(device.parts()::containsKey).toList();
    }

    /** Returns the closings that a test needs. */
    private Set<Integer> closings(FunctionTest test) {
        Set<Integer> closings = new LinkedHashSet<>();
        for (String id : used(test)) {
            if (device.joints().containsKey(id)) {
                closings.addAll(items.closers(device.joint(id)));
            } else {
                for (Joint joint : device.joints().values()) {
                    if (joint.holds().contains(id) && isConnector(joint)) {
                        closings.addAll(items.closers(joint));
                    }
                }
            }
        }
        if (test.powered()) {
            closings.addAll(isolators());
        }
        return closings;
    }

    private List<Joint> slackConnectors(String part) {
        return device.joints().values().stream()
                .filter(joint -> joint.holds().contains(part))
                .filter(joint -> joint.slack() && !joint.gives() && isConnector(joint))
                .toList();
    }

    /** Returns whether a part is in place, or hangs by a connector from what is. */
    private boolean isJoined(String part, FunctionTest test, Stand now) {
        return now.withBase(part)
                || (!test.isDocked()
                        && slackConnectors(part).stream()
                                .anyMatch(
                                        joint ->
                                                !now.isReleased(joint.id())
                                                        && joint.holds().stream()
                                                                .filter(p -> !p.equals(part))
                                                                .allMatch(now::withBase)));
    }

    private boolean isConnector(Joint joint) {
        return device.kindOf(joint).role().filter(Kind.Role.CONNECTOR::equals).isPresent();
    }

    private Set<Integer> isolators() {
        Set<Integer> isolators = new LinkedHashSet<>();
        items.closers()
                .forEach(
                        (joint, closers) -> {
                            if (joint.isIsolator()) {
                                isolators.addAll(closers);
                            }
                        });
        return isolators;
    }

    /**
     * Returns whether a test can be made when some items are done.
     *
     * @param now where the unit stands then; with a part that hangs it is not docked
     */
    boolean isReady(FunctionTest test, Set<Integer> done, Stand now) {
        if (!done.containsAll(closings(test))
                || !parts(test).stream().allMatch(part -> isJoined(part, test, now))
                || (test.isDocked() && !now.tethers().isEmpty())) {
            return false;
        }
        if (!test.powered()) {
            return true;
        }
        for (int at = 0; at < items.size(); at++) {
            boolean open = !done.contains(at) && items.get(at).kind() != RebuildAct.Kind.BED;
            if (open && !items.needs(at).isEmpty()) {
                return false;
            }
        }
        return true;
    }
}
