package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import reseat.model.Bond;
import reseat.model.Point;

class CutPlanTest {

    private static final List<Point> EDGE =
            List.of(new Point(0, 0), new Point(120, 0), new Point(120, 80), new Point(0, 80));

    /** Strips along all four edges, 2.5 mm wide, inset 1 mm: every piece needs 3.5 mm. */
    private static final List<Bond.Strip> ROUND =
            List.of(
                    strip("bottom", 2.5, 1, 2.25, 119, 2.25),
                    strip("right", 2.5, 117.75, 1, 117.75, 79),
                    strip("top", 2.5, 119, 77.75, 1, 77.75),
                    strip("left", 2.5, 2.25, 79, 2.25, 1));

    @Test
    void needsOneSettingAllRoundWithoutKeepOuts() {
        CutPlan plan = CutPlan.of(bond(ROUND, List.of(), 0.5, List.of()));
        assertEquals(List.of(3.5), plan.settings());
        assertEquals(1, plan.passes().size());
        assertEquals(4, plan.passes().get(0).places().size());
        assertTrue(plan.unsafe().isEmpty());
        assertEquals(400, plan.pieces().size());
        assertTrue(
                plan.pieces().stream()
                        .filter(CutPlan.Piece::bonded)
                        .allMatch(p -> p.leastMm() <= 3.5 + 1e-9));
    }

    /** The corner of a wide strip is cut from the edge that the strip runs along, not from both. */
    @Test
    void leavesTheCornersOfAWideStripToItsOwnEdge() {
        List<Bond.Strip> strips =
                List.of(
                        strip("wide", 5, 0, 2.5, 120, 2.5),
                        strip("right", 3, 118.5, 0, 118.5, 80),
                        strip("left", 3, 1.5, 80, 1.5, 0));
        CutPlan plan = CutPlan.of(bond(strips, List.of(), 0.5, List.of()));
        for (CutPlan.Piece piece : plan.pieces()) {
            double least = piece.place().edge() == 0 ? 5 : piece.place().edge() == 2 ? 0 : 3;
            assertTrue(piece.leastMm() <= least + 1e-6, piece.toString());
        }
    }

    @Test
    void saysWhereNoSafeDepthExistsAndWhatForbidsIt() {
        Bond bond = bond(ROUND, List.of(keepOut("coax", 40, 3, 60, 6)), 0.5, List.of());
        CutPlan plan = CutPlan.of(bond);
        assertEquals(1, plan.unsafe().size());
        CutPlan.Unsafe stretch = plan.unsafe().get(0);
        assertEquals("coax", stretch.keepOut());
        assertEquals(0, stretch.place().edge());
        assertEquals(3.5, stretch.neededMm(), 1e-9);
        assertEquals(2.5, stretch.allowedMm(), 1e-9);
        // a blade 3.5 mm deep keeps 0.5 mm from the corner (40, 3) when it is 2.6 mm away along the
        // edge
        assertTrue(
                stretch.place().fromMm() <= 38 && stretch.place().fromMm() >= 36,
                stretch.toString());
        assertTrue(
                stretch.place().toMm() >= 62 && stretch.place().toMm() <= 64, stretch.toString());
        assertTrue(plan.depthAt(0, 50).isEmpty());
        assertEquals(3.5, plan.depthAt(0, 10).orElseThrow());
    }

    @Test
    void mergesNeedsIntoTheFewestSettings() {
        List<Bond.Strip> strips =
                List.of(
                        strip("bottom", 2, 0, 1, 120, 1),
                        strip("right", 3, 118.5, 10, 118.5, 70),
                        strip("top", 6, 110, 77, 10, 77));
        // the bottom must stay shallow, the top must go deep: two settings, and the right takes
        // part in one of them
        CutPlan plan =
                CutPlan.of(bond(strips, List.of(keepOut("flex", 10, 4, 110, 8)), 0.5, List.of()));
        assertEquals(List.of(3.0, 6.0), plan.settings());
        assertTrue(plan.unsafe().isEmpty());
        assertEquals(2, plan.passes().size());
    }

    @Test
    void judgesDepthsThatADocumentGives() {
        Bond bond =
                bond(
                        ROUND,
                        List.of(keepOut("coax", 40, 5, 60, 8)),
                        0.5,
                        List.of(
                                new Bond.GivenDepth(0, 5),
                                new Bond.GivenDepth(1, 3),
                                new Bond.GivenDepth(2, 4)));
        List<CutPlan.Judged> judged = CutPlan.of(bond).judge(bond);
        assertFalse(judged.get(0).safe());
        assertEquals("coax", judged.get(0).keepOut());
        assertEquals(4.5, judged.get(0).greatestMm(), 1e-9);
        assertTrue(judged.get(1).safe());
        assertFalse(judged.get(1).severs());
        assertTrue(judged.get(2).safe() && judged.get(2).severs());
    }

    /** Exactly the depth that is needed severs, exactly the depth that is allowed is safe. */
    @Test
    void judgesTheLimitsThemselvesAsKept() {
        Bond bond =
                bond(
                        ROUND,
                        List.of(keepOut("coax", 40, 5, 60, 8)),
                        0.5,
                        List.of(
                                new Bond.GivenDepth(0, 4.5),
                                new Bond.GivenDepth(0, 4.51),
                                new Bond.GivenDepth(3, 3.5),
                                new Bond.GivenDepth(3, 3.49)));
        List<CutPlan.Judged> judged = CutPlan.of(bond).judge(bond);
        assertTrue(judged.get(0).safe());
        assertFalse(judged.get(1).safe());
        assertTrue(judged.get(2).severs());
        assertFalse(judged.get(3).severs());
        assertEquals(3.5, judged.get(3).leastMm(), 1e-6);
        for (Bond.GivenDepth none :
                List.of(new Bond.GivenDepth(0, 0), new Bond.GivenDepth(-1, 3))) {
            Bond wrong = bond(ROUND, List.of(), 0.5, List.of(none));
            assertThrows(FastenerInputException.class, () -> CutPlan.of(wrong).judge(wrong));
        }
    }

    @Test
    void aPieceIsSafeWhileTheDepthItNeedsIsAllowed() {
        CutPlan.Place place = new CutPlan.Place(0, 0, 1);
        assertTrue(new CutPlan.Piece(place, 3.5, 3.5, "coax").safe());
        assertFalse(new CutPlan.Piece(place, 3.6, 3.5, "coax").safe());
    }

    @Test
    void tellsTheDepthAtEachPlaceOfAnEdgeFromCornerToCorner() {
        CutPlan plan = CutPlan.of(bond(ROUND, List.of(), 0.5, List.of()));
        for (double at : new double[] {0, 60, 120}) {
            assertEquals(3.5, plan.depthAt(0, at).orElseThrow(), 1e-6);
        }
        assertTrue(plan.depthAt(0, 120.1).isEmpty());
        assertTrue(plan.depthAt(0, -0.1).isEmpty());
        assertTrue(plan.depthAt(4, 1).isEmpty());
    }

    /**
     * A quarter, a third and so on of the four sides of 120 mm by 80 mm, the last back to (0, 0).
     */
    @Test
    void placesOnAnEdgeAreCountedFromItsFirstCorner() {
        Bond bond = bond(ROUND, List.of(), 0.5, List.of());
        assertEquals(new Point(30, 0), CutPlan.pointAt(bond, 0, 30));
        assertEquals(new Point(120, 20), CutPlan.pointAt(bond, 1, 20));
        assertEquals(new Point(90, 80), CutPlan.pointAt(bond, 2, 30));
        assertEquals(new Point(0, 50), CutPlan.pointAt(bond, 3, 30));
    }

    @Test
    void cutsFromTheNearestEdgeOfAnAngledPart() {
        List<Point> ell =
                List.of(
                        new Point(0, 0),
                        new Point(60, 0),
                        new Point(60, 20),
                        new Point(20, 20),
                        new Point(20, 60),
                        new Point(0, 60));
        Bond bond =
                new Bond(
                        ell,
                        List.of(strip("inner", 2, 30, 18, 58, 18)),
                        List.of(),
                        0.5,
                        OptionalDouble.empty(),
                        List.of());
        CutPlan plan = CutPlan.of(bond);
        assertEquals(3.0, plan.settings().get(0), 1e-6);
        assertTrue(
                plan.pieces().stream()
                        .filter(CutPlan.Piece::bonded)
                        .anyMatch(p -> p.place().edge() == 2));
        assertTrue(
                plan.pieces().stream()
                        .filter(CutPlan.Piece::bonded)
                        .noneMatch(p -> p.place().edge() == 0));
    }

    private static List<Double> depths(CutPlan plan, int edge) {
        return plan.pieces().stream()
                .filter(piece -> piece.place().edge() == edge)
                .map(CutPlan.Piece::leastMm)
                .toList();
    }

    /**
     * A square of 20 mm with a strip 4 mm wide along its diagonal from (5, 5) to (15, 15), which
     * runs along no edge: each point is cut from its nearest edge. At x the strip comes up to y =
     * x, so that the piece from 8 to 9 mm needs 9 mm, but for the finest cell of 1/16 mm; past the
     * middle the right edge is nearer, and from 11.41 mm on there is nothing left for the bottom.
     */
    @Test
    void cutsWhatRunsAlongNoEdgeFromTheNearest() {
        List<Point> square =
                List.of(new Point(0, 0), new Point(20, 0), new Point(20, 20), new Point(0, 20));
        CutPlan plan =
                CutPlan.of(
                        new Bond(
                                square,
                                List.of(strip("diagonal", 4, 5, 5, 15, 15)),
                                List.of(),
                                0.5,
                                OptionalDouble.empty(),
                                List.of()));
        List<Double> bottom = depths(plan, 0);
        assertEquals(20, bottom.size());
        for (int at = 0; at < 20; at++) {
            double deepest = at < 5 || at > 11 ? 0 : Math.min(at + 1, 20 - at);
            boolean beside = at == 4 || at == 12;
            assertEquals(deepest, bottom.get(at), beside ? 5.1 : 0.1, "at " + at);
            assertTrue(bottom.get(at) >= deepest, "at " + at + " the bond must be severed");
        }
        List<Double> left = new ArrayList<>(depths(plan, 3));
        Collections.reverse(left);
        assertEquals(bottom, left, "mirrored in the diagonal");
        for (int at = 0; at < 20; at++) {
            assertEquals(bottom.get(at), depths(plan, 2).get(at), 0.1, "turned half round");
        }
    }

    /**
     * A square of 10 √2 mm that stands on its corner; the strip is 2 mm wide, lies along the edge
     * from (10, 0) to (20, 10) and covers it from 2 to 12 mm. Pieces are 0.943 mm long.
     */
    @Test
    void cutsAlongASlantedEdge() {
        List<Point> diamond =
                List.of(new Point(10, 0), new Point(20, 10), new Point(10, 20), new Point(0, 10));
        double s = Math.sqrt(0.5);
        CutPlan plan =
                CutPlan.of(
                        new Bond(
                                diamond,
                                List.of(strip("slanted", 2, 10 + s, 3 * s, 10 + 11 * s, 13 * s)),
                                List.of(),
                                0.5,
                                OptionalDouble.empty(),
                                List.of()));
        List<Double> expected = new ArrayList<>(Collections.nCopies(15, 0.0));
        Collections.fill(expected.subList(2, 13), 2.0);
        assertEquals(expected, depths(plan, 0));
        for (int edge = 1; edge < 4; edge++) {
            assertEquals(Collections.nCopies(15, 0.0), depths(plan, edge));
        }
        assertEquals(List.of(2.0), plan.settings());
    }

    @Test
    void anEdgeInsideAKeepOutIsCutNowhere() {
        CutPlan plan =
                CutPlan.of(bond(ROUND, List.of(keepOut("frame", -5, -5, 130, 4)), 0, List.of()));
        assertTrue(
                plan.pieces().stream()
                        .filter(piece -> piece.place().edge() == 0)
                        .allMatch(piece -> piece.greatestMm() == 0));
        assertEquals("frame", plan.unsafe().get(0).keepOut());
        assertEquals(0, plan.unsafe().get(0).allowedMm());
    }

    @Test
    void anOutlineHasThreeCornersOrMore() {
        Bond line =
                new Bond(
                        EDGE.subList(0, 2),
                        ROUND,
                        List.of(),
                        0.5,
                        OptionalDouble.empty(),
                        List.of());
        assertEquals(
                "The edge of the bonded part needs three corners or more; found 2.",
                assertThrows(FastenerInputException.class, () -> CutPlan.of(line)).getMessage());
    }

    @Test
    void refusesShapesThatMakeNoSense() {
        assertThrows(
                FastenerInputException.class,
                () -> CutPlan.of(bond(ROUND, List.of(), -1, List.of())));
        List<Point> bow =
                List.of(new Point(0, 0), new Point(10, 10), new Point(10, 0), new Point(0, 10));
        FastenerInputException crossed =
                assertThrows(
                        FastenerInputException.class,
                        () ->
                                CutPlan.of(
                                        new Bond(
                                                bow,
                                                ROUND,
                                                List.of(),
                                                0.5,
                                                OptionalDouble.empty(),
                                                List.of())));
        assertTrue(String.valueOf(crossed.getMessage()).contains("crosses or touches itself"));
        assertThrows(
                FastenerInputException.class,
                () ->
                        CutPlan.of(
                                bond(
                                        List.of(strip("none", 0, 0, 0, 10, 0)),
                                        List.of(),
                                        0.5,
                                        List.of())));
        Bond wrong = bond(ROUND, List.of(), 0.5, List.of(new Bond.GivenDepth(7, 1)));
        FastenerInputException edge =
                assertThrows(FastenerInputException.class, () -> CutPlan.of(wrong).judge(wrong));
        assertTrue(String.valueOf(edge.getMessage()).contains("edges are 0 to 3"));
    }

    @Test
    void theCutBeginsWhereTheMostRoomIsLeft() {
        Bond bond =
                bond(
                        List.of(strip("south", 2, 0, 1, 100, 1)),
                        List.of(keepOut("board", 0, 4, 60, 9)),
                        0.5,
                        List.of());

        CutPlan.Place entry = CutPlan.of(bond).entry().orElseThrow();

        assertEquals(0, entry.edge());
        assertTrue(entry.fromMm() > 60, entry.toString());
    }

    @Test
    void stripsAreCutToTheLengthOfTheirMiddleLines() {
        StripPlan plan =
                StripPlan.of(
                        bond(
                                List.of(
                                        strip("south", 2, 0, 1, 30, 1),
                                        strip("slant", 3, 0, 0, 3, 4)),
                                List.of(),
                                0.5,
                                List.of()));

        assertEquals(
                List.of(new StripPlan.Piece("south", 30, 2), new StripPlan.Piece("slant", 5, 3)),
                plan.pieces());
        assertEquals(35, plan.lengthMm(), 1e-9);
    }

    private static Bond bond(
            List<Bond.Strip> strips,
            List<Bond.KeepOut> keepOuts,
            double margin,
            List<Bond.GivenDepth> given) {
        return new Bond(EDGE, strips, keepOuts, margin, OptionalDouble.of(0.3), given);
    }

    private static Bond.Strip strip(
            String id, double width, double x1, double y1, double x2, double y2) {
        return new Bond.Strip(id, List.of(new Point(x1, y1), new Point(x2, y2)), width);
    }

    private static Bond.KeepOut keepOut(String id, double x1, double y1, double x2, double y2) {
        return new Bond.KeepOut(
                id,
                "board",
                List.of(
                        new Point(x1, y1),
                        new Point(x2, y1),
                        new Point(x2, y2),
                        new Point(x1, y2)));
    }
}
