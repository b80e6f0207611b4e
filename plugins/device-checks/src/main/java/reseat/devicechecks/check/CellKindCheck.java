package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Part;
import reseat.model.Severity;

/** Finds parts that are cells by their name and not by their kind. */
final class CellKindCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "cell-not-marked",
                    "Cell whose kind is none",
                    "A part whose name ends in cell, battery or accumulator, or that a supply named so comes from, and whose kind lacks the role cell.",
                    "Hazards, clearances of screws and the order of power all go by the role. Common practice, no source.",
                    Severity.WARNING,
                    List.of("hazards", "safety", "cells", "data"),
                    List.of());

    private static final Pattern CELL_LAST =
            Pattern.compile(
                    "(?:^|\\s)(?:cells?|batter(?:y|ies)|accumulators?|(?:cell|battery|power|lithium) packs?)$");

    /** They end in the word and store nothing. */
    private static final Pattern OTHER_CELL =
            Texts.word("(?:load|photo|solar|light|measuring|flow|force|fuel) ?cells?");

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Part part : input.device().parts().values()) {
            String name = Texts.lower(part.name()).replace('-', ' ').strip();
            boolean byName = CELL_LAST.matcher(name).find() && !OTHER_CELL.matcher(name).find();
            boolean source =
                    input.device().supplies().values().stream()
                            .filter(supply -> supply.of().equals(Optional.of(part.id())))
                            .anyMatch(
                                    supply ->
                                            Texts.names(
                                                    Texts.CELL, supply.id() + " " + supply.name()));
            if (!Hazards.isCell(input.device(), part) && (byName || source)) {
                found.add(
                        input.finding("/parts/" + part.id())
                                .evidence("kind " + part.kind())
                                .says(
                                        part.id()
                                                + " is called \""
                                                + part.name()
                                                + "\", but its kind does not have the role cell.",
                                        "Give it the kind cell, or another with that role."));
            }
        }
        return found;
    }
}
