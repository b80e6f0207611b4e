package reseat.internal.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import reseat.fasten.StripPlan;
import reseat.model.ConsumableUse;
import reseat.text.NumberText;

/** Words for the strips of adhesive that a bond needs. */
final class StripWords {

    private StripWords() {}

    /**
     * Returns the pieces to cut, and whether what the device file lets be used up is enough.
     *
     * @param uses what is used up with them
     */
    static List<String> of(StripPlan plan, List<ConsumableUse> uses) {
        if (plan.pieces().isEmpty()) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        List<String> pieces =
                plan.pieces().stream()
                        .map(
                                piece ->
                                        piece.strip().replace('-', ' ')
                                                + " "
                                                + mm(piece.lengthMm())
                                                + ", "
                                                + NumberText.of(piece.widthMm())
                                                + "\u00a0mm wide")
                        .toList();
        words.add(
                "Cut "
                        + NumberText.count(pieces.size(), "strip", "strips")
                        + ": "
                        + String.join("; ", pieces)
                        + (pieces.size() > 1 ? "; " + mm(plan.lengthMm()) + " in all." : "."));
        uses.stream()
                .filter(use -> use.unit().equals("mm"))
                .map(ConsumableUse::quantity)
                .max(BigDecimal::compareTo)
                .filter(stated -> stated.doubleValue() < plan.lengthMm())
                .ifPresent(
                        stated ->
                                words.add(
                                        "That is more than the "
                                                + NumberText.of(stated)
                                                + "\u00a0mm that the device file states."));
        return words;
    }

    private static String mm(double value) {
        return NumberText.of((double) Math.round(value)) + "\u00a0mm";
    }
}
