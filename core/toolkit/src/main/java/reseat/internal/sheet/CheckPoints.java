package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.Part;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;

/** Where in a teardown something must be looked at or measured. */
final class CheckPoints {

    private final Device device;
    private final Plan plan;
    private final PlanNotes notes;
    private final List<List<CheckPoint>> before = new ArrayList<>();

    CheckPoints(Plan plan, PlanNotes notes) {
        this.device = plan.request().device();
        this.plan = plan;
        this.notes = notes;
        for (int at = 0; at <= plan.acts().size(); at++) {
            before.add(new ArrayList<>());
        }
        closed();
        cells();
        charged();
    }

    /** Returns the checks before an act; for the number of acts, those at the end. */
    List<CheckPoint> before(int act) {
        return before.get(act);
    }

    private void closed() {
        List<String> cells = parts(this::isCell);
        for (int at = 0; at < plan.acts().size() && !cells.isEmpty(); at++) {
            if (!(plan.acts().get(at).act() instanceof Act.Prepared)) {
                before.get(at).add(new CheckPoint(CheckPoint.Kind.CLOSED, cells));
                return;
            }
        }
    }

    private void cells() {
        for (int at = 0; at < plan.acts().size(); at++) {
            List<String> seen = notes.uncovers().get(at).stream().filter(this::isCell).toList();
            if (!seen.isEmpty()) {
                before.get(at + 1).add(new CheckPoint(CheckPoint.Kind.CELL_SEEN, seen));
            }
        }
    }

    /** It is measured as soon as it can be reached: once uncovered, or before the work on it. */
    private void charged() {
        Set<String> measured = new HashSet<>();
        for (int at = 0; at < plan.acts().size(); at++) {
            List<String> touched = touched(plan.acts().get(at).act()).stream()
                    .filter(this::storesCharge).filter(measured::add).toList();
            if (!touched.isEmpty()) {
                before.get(at).add(new CheckPoint(CheckPoint.Kind.DEAD, touched));
            }
            List<String> seen =
                    notes.uncovers().get(at).stream()
                            .filter(this::storesCharge)
                            .filter(measured::add)
                            .toList();
            if (!seen.isEmpty()) {
                before.get(at + 1).add(new CheckPoint(CheckPoint.Kind.DEAD, seen));
            }
        }
    }

    private List<String> touched(Act act) {
        if (act instanceof Act.Release release) {
            return device.joint(release.joint()).holds();
        }
        return act instanceof Act.MoveParts move ? move.parts() : List.of();
    }

    private List<String> parts(java.util.function.Predicate<String> which) {
        return device.parts().keySet().stream().filter(which).toList();
    }

    private boolean isCell(String id) {
        return isCell(device, id);
    }

    static boolean isCell(Device device, String id) {
        Part part = device.part(id);
        return device.kindOf(part).role().equals(Optional.of(Kind.Role.CELL));
    }

    private boolean storesCharge(String id) {
        return device.kindOf(device.part(id)).storesCharge();
    }
}
