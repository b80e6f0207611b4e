package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.SpareNeed;
import reseat.plan.Tally;
import reseat.text.ListText;
import reseat.text.NumberText;

/** Checks to make before the unit leaves the bench. */
record ClosingChecks(Source source) {

    List<String> make() {
        List<String> checks = new ArrayList<>();
        Rebuild rebuild = source.rebuild();
        Set<String> back = new LinkedHashSet<>(source.plan().movedParts());
        Set<String> made = new LinkedHashSet<>(source.plan().releasedJoints());
        for (RebuildAct each : rebuild.acts()) {
            Act undone = each.act().orElse(null);
            if (undone instanceof Act.MoveParts move) {
                back.addAll(move.parts());
            } else if (undone instanceof Act.Release release) {
                made.add(release.joint());
            }
        }
        if (source.tally().screwsOut() > 0) {
            checks.add(screws(source.tally()));
        }
        if (!back.isEmpty()) {
            checks.add(
                    NumberText.count(back.size(), "part is", "parts are")
                            + " back in: "
                            + source.names().parts(List.copyOf(back))
                            + ".");
        }
        List<String> isolators =
                made.stream()
                        .filter(joint -> source.device().joint(joint).isIsolator())
                        .map(source.names()::joint)
                        .toList();
        if (!isolators.isEmpty()) {
            checks.add("The supply is connected again: " + ListText.and(isolators) + ".");
        }
        oldCells().ifPresent(checks::add);
        if (!rebuild.tests().isEmpty()) {
            checks.add(
                    NumberText.count(rebuild.tests().size(), "test", "tests")
                            + " passed and written down.");
        }
        if (!rebuild.leftOpen().isEmpty()) {
            checks.add(
                    "Open when the unit arrived and not closed by this sheet: "
                            + source.names().together(rebuild.leftOpen())
                            + ".");
        }
        if (!rebuild.leftApart().isEmpty()) {
            checks.add(
                    "Apart when the unit arrived and not put back by this sheet: "
                            + source.names().parts(rebuild.leftApart())
                            + ".");
        }
        checks.add("Nothing rattles, no gap is wider than before, no cable is caught.");
        return checks;
    }

    /**
     * Rules of transport: ADR special provisions 376 and 377 with packing instructions P908, P911
     * and P909, read at gefahrgutbrumme.de, batteriestransport.org and lion-care.com; taping of
     * terminals: US EPA.
     */
    private Optional<String> oldCells() {
        List<String> cells =
                source.rebuild().spares().stream()
                        .map(SpareNeed::id)
                        .filter(source.device().parts()::containsKey)
                        .filter(part -> CheckPoints.isCell(source.device(), part))
                        .toList();
        return cells.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "If replaced, the old "
                                + source.names().parts(cells)
                                + ": terminals taped, singly in a non-metal bag, in a container that"
                                + " does not burn. To go away as waste: ADR special provision 377"
                                + " (P909). Damaged or swollen: special provision 376 (P908, or P911"
                                + " if it may react), never by air. The new one has passed UN 38.3.");
    }

    private static String screws(Tally tally) {
        List<String> types = new ArrayList<>();
        for (Tally.Total total : tally.totals()) {
            types.add(
                    total.type() + " " + total.out().size() + " out, " + total.in().size() + " in");
        }
        return "Screws: "
                + String.join("; ", types)
                + ". "
                + (tally.left() == 0 ? "All trays are empty." : tally.left() + " are left over.");
    }
}
