package reseat.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Kind;

/**
 * Decides when tests are made. A test is made before the first closing that cannot be opened again
 * without destroying it, if all that it needs is back by then and no supply is cut; else at the
 * end.
 */
final class TestPlaces {

    private final Device device;

    /** The state of the unit before each act of the teardown, and after the last. */
    private final List<Stand> stands;

    private final List<RebuildAct> acts;
    private final Set<String> touched = new LinkedHashSet<>();

    TestPlaces(Device device, List<Stand> stands, List<RebuildAct> acts) {
        this.device = device;
        this.stands = stands;
        this.acts = acts;
        for (RebuildAct act : acts) {
            if (act.act() instanceof Act.Release release) {
                touched.add(release.joint());
            } else if (act.act() instanceof Act.MoveParts move) {
                touched.addAll(move.parts());
            }
        }
    }

    List<PlacedTest> all() {
        List<PlacedTest> early = new ArrayList<>();
        List<PlacedTest> late = new ArrayList<>();
        for (int at = 0; at <= acts.size(); at++) {
            for (FunctionTest test : device.tests().values()) {
                boolean due = test.of().stream().anyMatch(touched::contains);
                if (due && placeOf(test) == at) {
                    boolean end = at == acts.size();
                    (end ? late : early).add(new PlacedTest(test, at, closing(at)));
                }
            }
        }
        early.addAll(late);
        return early;
    }

    private int placeOf(FunctionTest test) {
        for (int at = 0; at < acts.size(); at++) {
            if (acts.get(at).irreversible() && isReady(test, at)) {
                return at;
            }
        }
        return acts.size();
    }

    private Optional<String> closing(int at) {
        return at < acts.size() && acts.get(at).act() instanceof Act.Release release
                ? Optional.of(release.joint())
                : Optional.empty();
    }

    private boolean isReady(FunctionTest test, int at) {
        Stand now = stands.get(acts.get(at).undoes() + 1);
        boolean power =
                device.supplies().keySet().stream()
                        .noneMatch(supply -> now.isCut(supply) && !stands.get(0).isCut(supply));
        return power
                && test.of().stream().allMatch(id -> isBack(id, now))
                && test.needs().stream().allMatch(id -> isBack(id, now));
    }

    private boolean isBack(String id, Stand now) {
        if (device.joints().containsKey(id)) {
            return !now.isReleased(id) || stands.get(0).isReleased(id);
        }
        return (now.withBase(id) || !stands.get(0).withBase(id))
                && device.joints().values().stream()
                        .noneMatch(
                                joint ->
                                        joint.holds().contains(id)
                                                && isConnector(joint)
                                                && now.isReleased(joint.id())
                                                && !stands.get(0).isReleased(joint.id()));
    }

    private boolean isConnector(Joint joint) {
        return device.kindOf(joint).role().filter(Kind.Role.CONNECTOR::equals).isPresent();
    }
}
