package reseat.files;

import java.util.Objects;
import reseat.internal.files.PlanWriter;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.Tally;

/** Writes plans for other programs. The format is documented in core/docs/plan-json.md. */
public final class PlanJson {

    private PlanJson() {}

    /**
     * Writes a plan with its rebuild, tally and notes.
     *
     * @return JSON with line feeds, ending with one; the same plan always gives the same text
     */
    public static String write(Plan plan) {
        Objects.requireNonNull(plan, "plan");
        Rebuild rebuild = plan.rebuild();
        return PlanWriter.write(
                plan, rebuild, Tally.of(plan, rebuild), PlanNotes.of(plan, rebuild));
    }
}
