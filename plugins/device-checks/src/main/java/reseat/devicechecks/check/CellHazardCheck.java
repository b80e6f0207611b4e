package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Hazard;
import reseat.model.Part;
import reseat.model.Severity;

/** Finds cells that no hazard speaks of. */
final class CellHazardCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "cell-without-hazard",
                    "Cell without its hazard",
                    "A part with the role cell for which no hazard of the part or its kind speaks of a cell.",
                    "The sheet then comes to the cell without a word of warning. Lithium cells burn when they are pierced, bent or shorted: common practice, no source.",
                    Severity.ERROR,
                    List.of("hazards", "safety", "cells"),
                    List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Part part : Hazards.cells(input.device())) {
            List<Hazard> hazards = Hazards.of(input.device(), part);
            if (hazards.stream().noneMatch(hazard -> Hazards.speaksOfCell(hazard, part))) {
                found.add(
                        input.finding("/parts/" + part.id())
                                .evidence(
                                        hazards.isEmpty()
                                                ? "it has no hazard at all"
                                                : "its hazards: "
                                                        + String.join(
                                                                ", ",
                                                                hazards.stream()
                                                                        .map(Hazard::id)
                                                                        .toList()))
                                .says(
                                        part.id()
                                                + " is a cell, and no hazard of it or of its kind speaks of one.",
                                        "Give the part or its kind a hazard such as lithium-cell."));
            }
        }
        return found;
    }
}
