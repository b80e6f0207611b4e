package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import reseat.fasten.CutPlan;
import reseat.text.NumberText;

/** Words for how deep a bond may be cut. */
final class CutWords {

    private CutWords() {}

    static List<String> of(CutPlan cut) {
        List<String> words = new ArrayList<>();
        for (CutPlan.Pass pass : cut.passes()) {
            words.add("Depth of cut " + mm(pass.depthMm()) + ": " + places(cut, pass) + ".");
        }
        for (CutPlan.Unsafe stretch : cut.unsafe()) {
            words.add(
                    "No depth is safe at "
                            + place(cut, stretch.place())
                            + ": "
                            + stretch.keepOut()
                            + " is too near. Do not cut there.");
        }
        return words;
    }

    private static String places(CutPlan cut, CutPlan.Pass pass) {
        long edges =
                cut.pieces().stream().mapToInt(piece -> piece.place().edge()).distinct().count();
        long whole = pass.places().stream().filter(place -> isWhole(cut, place)).count();
        return whole == edges
                ? "all round"
                : String.join("; ", pass.places().stream().map(p -> place(cut, p)).toList());
    }

    private static boolean isWhole(CutPlan cut, CutPlan.Place place) {
        return place.fromMm() == 0
                && cut.pieces().stream()
                        .map(CutPlan.Piece::place)
                        .noneMatch(p -> p.edge() == place.edge() && p.toMm() > place.toMm());
    }

    private static String place(CutPlan cut, CutPlan.Place place) {
        String edge = "edge\u00a0" + place.edge();
        return isWhole(cut, place)
                ? edge
                : edge + " from " + NumberText.of(place.fromMm()) + " to " + mm(place.toMm());
    }

    private static String mm(double value) {
        return NumberText.of(value) + "\u00a0mm";
    }
}
