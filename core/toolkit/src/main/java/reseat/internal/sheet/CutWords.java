package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.fasten.CutPlan;
import reseat.internal.fasten.EdgeNames;
import reseat.model.Bond;
import reseat.text.ListText;
import reseat.text.NumberText;

/** Words for how deep a bond may be cut, where to begin, and in which passes. */
final class CutWords {

    private final Bond bond;
    private final CutPlan cut;
    private final List<String> edges;
    private final Names names;

    /** Names what must not be touched. */
    interface Names {
        /** Returns the name of a part. */
        String part(String id);
    }

    CutWords(Bond bond, CutPlan cut, Names names) {
        this.bond = bond;
        this.cut = cut;
        this.edges = EdgeNames.of(bond);
        this.names = names;
    }

    List<String> lines() {
        List<String> words = new ArrayList<>();
        cut.entry().ifPresent(place -> words.add("Start " + entry(place) + "."));
        int pass = 0;
        for (CutPlan.Pass each : cut.passes()) {
            pass++;
            words.add(
                    (cut.passes().size() > 1 ? "Pass " + pass + ", depth " : "Depth ")
                            + mm(each.depthMm())
                            + " from the edge inwards: "
                            + places(each)
                            + ".");
        }
        for (CutPlan.Unsafe stretch : cut.unsafe()) {
            words.add(
                    "No depth is safe on the "
                            + place(stretch.place())
                            + ": "
                            + keepOut(stretch.keepOut())
                            + " is too near. Do not cut there.");
        }
        given(words);
        return words;
    }

    private String entry(CutPlan.Place place) {
        double length = length(place.edge());
        String edge = "on the " + edges.get(place.edge());
        if (Math.abs(place.fromMm() - length / 2) <= length / 10) {
            return "in the middle of the " + edges.get(place.edge());
        }
        boolean near = place.fromMm() < length / 2;
        int beside = Math.floorMod(place.edge() + (near ? -1 : 1), edges.size());
        return edge
                + ", "
                + mm((double) Math.round(near ? place.fromMm() : length - place.fromMm()))
                + " from its corner with the "
                + edges.get(beside);
    }

    /** The maker's document comes first, but not where its depth reaches a keep-out. */
    private void given(List<String> words) {
        Map<Double, List<String>> depths = new LinkedHashMap<>();
        for (CutPlan.Judged each : cut.judge(bond)) {
            if (!each.safe()) {
                words.add(
                        "The maker gives "
                                + mm(each.depthMm())
                                + " on the "
                                + edges.get(each.edge())
                                + "; that comes too near to "
                                + keepOut(each.keepOut())
                                + ".");
            } else {
                depths.computeIfAbsent(each.depthMm(), d -> new ArrayList<>())
                        .add(edges.get(each.edge()));
            }
        }
        depths.forEach(
                (depth, where) ->
                        words.add(
                                "The maker gives "
                                        + mm(depth)
                                        + (where.size() == edges.size()
                                                ? " all round"
                                                : " on the " + ListText.and(where))
                                        + "."));
    }

    private String keepOut(String id) {
        return bond.keepOuts().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .map(each -> names.part(each.part()))
                .orElse(id);
    }

    private String places(CutPlan.Pass pass) {
        long bonded =
                cut.pieces().stream().mapToInt(piece -> piece.place().edge()).distinct().count();
        long whole = pass.places().stream().filter(this::isWhole).count();
        return whole == bonded
                ? "all round"
                : String.join("; ", pass.places().stream().map(this::place).toList());
    }

    private boolean isWhole(CutPlan.Place place) {
        return place.fromMm() == 0
                && cut.pieces().stream()
                        .map(CutPlan.Piece::place)
                        .noneMatch(p -> p.edge() == place.edge() && p.toMm() > place.toMm());
    }

    private String place(CutPlan.Place place) {
        String edge = edges.get(place.edge());
        return isWhole(place)
                ? edge
                : edge
                        + " from "
                        + NumberText.of(place.fromMm())
                        + " to "
                        + mm(place.toMm())
                        + " from its corner with the "
                        + edges.get(Math.floorMod(place.edge() - 1, edges.size()));
    }

    private double length(int edge) {
        return bond.edge().get(edge).distanceMm(bond.edge().get((edge + 1) % bond.edge().size()));
    }

    private static String mm(double value) {
        return NumberText.of(value) + "\u00a0mm";
    }
}
