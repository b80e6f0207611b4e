package reseat.internal.sheet;

import java.util.Objects;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.Tally;
import reseat.sheet.Names;

/** What a sheet is computed from. */
record Source(
        Plan plan,
        Device device,
        Names names,
        Rebuild rebuild,
        Tally tally,
        PlanNotes notes,
        Runs runs,
        Trays trays) {

    static Source of(Plan plan) {
        Rebuild rebuild = plan.rebuild();
        Device device = plan.request().device();
        PlanNotes notes = PlanNotes.of(plan, rebuild);
        return new Source(
                plan,
                device,
                new Names(device),
                rebuild,
                Tally.of(plan, rebuild),
                notes,
                new Runs(plan, rebuild, new CheckPoints(plan, notes)),
                Trays.of(plan));
    }

    /** Returns whether there is nothing to take apart and nothing to put back. */
    boolean isIdle() {
        return plan.acts().isEmpty() && rebuild.acts().isEmpty();
    }

    Way way(Act.Release release) {
        return way(device, release);
    }

    static Way way(Device device, Act.Release release) {
        Joint joint = device.joint(release.joint());
        return Objects.requireNonNull(joint.ways().get(release.way()));
    }

    Prepare prepare(Act.Prepared prepared) {
        return Objects.requireNonNull(device.prepares().get(prepared.prepare()));
    }

    /** Returns a text as a sentence. */
    static String sentence(String words) {
        return words.endsWith(".") || words.endsWith(":") ? words : words + ".";
    }
}
