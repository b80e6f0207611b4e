package reseat.internal.sheet;

import java.util.List;
import reseat.plan.Plan;
import reseat.sheet.Group;
import reseat.sheet.Sheet;

/** Computes a sheet. */
public final class SheetMaker {

    private final Source source;
    private final Sheet.Extent extent;

    /** Prepares the sheet of a valid plan. */
    public SheetMaker(Plan plan, Sheet.Extent extent) {
        this.source = Source.of(plan);
        this.extent = extent;
    }

    /** Computes it; see {@link Sheet#of}. */
    public Sheet make() {
        Progress progress = new Progress(source);
        Cautions cautions = new Cautions(source.device());
        boolean idle = source.isIdle();
        boolean out = extent != Sheet.Extent.REBUILD && !idle;
        boolean back = extent != Sheet.Extent.TEARDOWN && !idle;
        List<Group> teardown =
                out ? new TeardownSteps(source, progress, cautions).make() : List.of();
        List<Group> rebuild =
                back ? new RebuildSteps(source, progress, cautions).make() : List.of();
        return new Sheet(
                extent,
                new HeadMaker(source, progress).make(),
                idle ? List.of() : new NeedMaker(source).make(),
                teardown,
                rebuild,
                source.tally(),
                back ? new ClosingChecks(source).make() : List.of());
    }
}
