package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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

    /** A cell is looked at once it shows, or before the work on it if that comes first. */
    private void cells() {
        Set<String> known = new HashSet<>();
        for (int at = 0; at < plan.acts().size(); at++) {
            Act act = plan.acts().get(at).act();
            boolean alone = !(act instanceof Act.MoveParts move) || move.parts().size() == 1;
            List<String> worked = alone ? fresh(touched(act), this::isCell, known) : List.of();
            add(at, CheckPoint.Kind.CELL_SEEN, worked);
            add(
                    at + 1,
                    CheckPoint.Kind.CELL_SEEN,
                    fresh(notes.uncovers().get(at), this::isCell, known));
        }
    }

    /** It is measured as soon as it can be reached: once uncovered, or before the work on it. */
    private void charged() {
        Set<String> known = new HashSet<>();
        for (int at = 0; at < plan.acts().size(); at++) {
            List<String> worked = touched(plan.acts().get(at).act());
            add(at, CheckPoint.Kind.DEAD, fresh(worked, this::storesCharge, known));
            add(
                    at + 1,
                    CheckPoint.Kind.DEAD,
                    fresh(notes.uncovers().get(at), this::storesCharge, known));
        }
    }

    private static List<String> fresh(
            List<String> parts, Predicate<String> which, Set<String> known) {
        return parts.stream().filter(which).filter(known::add).toList();
    }

    private void add(int before, CheckPoint.Kind kind, List<String> parts) {
        if (!parts.isEmpty()) {
            this.before.get(before).add(new CheckPoint(kind, parts));
        }
    }

    private List<String> touched(Act act) {
        if (act instanceof Act.Release release) {
            return device.joint(release.joint()).holds();
        }
        return act instanceof Act.MoveParts move ? move.parts() : List.of();
    }

    private List<String> parts(Predicate<String> which) {
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
