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

    /** Returns the items that must be done before a test. */
    Set<Integer> needs(FunctionTest test) {
        Set<Integer> needs = new LinkedHashSet<>();
        Set<String> used = new LinkedHashSet<>(test.of());
        used.addAll(test.needs());
        for (String id : used) {
            if (device.joints().containsKey(id)) {
                needs.addAll(items.closers(device.joint(id)));
            } else {
                needs.addAll(items.placings(id));
                for (Joint joint : device.joints().values()) {
                    if (joint.holds().contains(id) && isConnector(joint)) {
                        needs.addAll(items.closers(joint));
                    }
                }
            }
        }
        if (test.powered()) {
            needs.addAll(isolators());
        }
        return needs;
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

    /** Returns whether a test can be made when some items are done. */
    boolean isReady(FunctionTest test, Set<Integer> done) {
        if (!done.containsAll(needs(test))) {
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
