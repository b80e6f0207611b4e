package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import reseat.internal.fasten.CutPasses;
import reseat.internal.fasten.ScrewFormulas;
import reseat.model.Bond;
import reseat.model.Point;

/** What holds for all inputs. */
class FastenProperties {

    private static final FastenerTables TABLES = FastenerTables.standard();
    private static final TorqueAdvisor ADVISOR = TorqueAdvisor.of(TABLES);

    @Provide
    Arbitrary<ScrewThread> threads() {
        return Arbitraries.of(TABLES.rows(FastenerTable.THREADS))
                .map(row -> TABLES.thread(row.text("thread")));
    }

    @Provide
    Arbitrary<TorqueUnit> units() {
        return Arbitraries.of(TABLES.torqueUnits().names()).map(TABLES.torqueUnits()::unit);
    }

    @Provide
    Arbitrary<String> classes() {
        return Arbitraries.of("4.8", "8.8", "10.9", "12.9", "A2-50", "A2-70");
    }

    @Provide
    Arbitrary<String> materials() {
        return Arbitraries.of(
                TABLES.rows(FastenerTable.MATERIALS).stream()
                        .map(r -> r.text("material"))
                        .toList());
    }

    @Property
    void unitsRoundTrip(
            @ForAll @Scale(6) @BigRange(min = "0.000001", max = "1000000") BigDecimal amount,
            @ForAll("units") TorqueUnit from,
            @ForAll("units") TorqueUnit to) {
        Assume.that(amount.signum() > 0);
        BigDecimal back = new Torque(amount, from).to(to).in(from);
        MathContext figures = new MathContext(30);
        assertEquals(0, amount.round(figures).compareTo(back.round(figures)), back.toPlainString());
    }

    @Property
    void printedTorquesReadBack(
            @ForAll @Scale(4) @BigRange(min = "0.0001", max = "1000") BigDecimal amount,
            @ForAll("units") TorqueUnit unit) {
        Assume.that(amount.signum() > 0);
        Torque torque = new Torque(amount, unit);
        assertEquals(
                0,
                TABLES.torqueUnits()
                        .parse(torque.toString())
                        .newtonMetres()
                        .compareTo(torque.newtonMetres()));
    }

    @Property
    void longerEngagementNeverLowersTheStrippingTorque(
            @ForAll("threads") ScrewThread thread,
            @ForAll("materials") String material,
            @ForAll @DoubleRange(min = 0.2, max = 10) double length,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        double before = strip(thread, material, length);
        double after = strip(thread, material, length + more);
        assertTrue(after >= before, before + " > " + after);
        assertTrue(before > 0);
    }

    private static double strip(ScrewThread thread, String material, double length) {
        return ADVISOR
                .estimate(request(thread, "hardened", material, length, 0.12, 0.12))
                .limits()
                .stream()
                .filter(l -> l.kind() == TorqueEstimate.Limit.Kind.SEAT_THREAD)
                .findFirst()
                .orElseThrow()
                .utmostNm();
    }

    @Property
    void higherFrictionNeverLowersTorqueAtEqualPreload(
            @ForAll("threads") ScrewThread thread,
            @ForAll @DoubleRange(min = 1, max = 20000) double preload,
            @ForAll @DoubleRange(min = 0.04, max = 0.4) double mu,
            @ForAll @DoubleRange(min = 0, max = 0.3) double more) {
        double d = thread.diameterMm();
        // each part by itself: together, the head would hide a wrong sign in the thread
        assertTrue(
                ScrewFormulas.threadArmMm(thread, mu + more)
                        >= ScrewFormulas.threadArmMm(thread, mu));
        for (HeadSize.Bearing bearing : HeadSize.Bearing.values()) {
            assertTrue(
                    ScrewFormulas.headArmMm(bearing, 1.8 * d, 1.1 * d, mu + more)
                            >= ScrewFormulas.headArmMm(bearing, 1.8 * d, 1.1 * d, mu));
        }
        assertTrue(
                ScrewFormulas.tighteningTorqueNm(thread, preload, mu + more, 1.8 * d, 1.1 * d)
                        >= ScrewFormulas.tighteningTorqueNm(thread, preload, mu, 1.8 * d, 1.1 * d));
        assertTrue(
                ScrewFormulas.screwEquationTorque(
                                preload,
                                thread.pitchDiameterMm(),
                                thread.pitchMm(),
                                30,
                                mu + more,
                                mu,
                                d)
                        >= ScrewFormulas.screwEquationTorque(
                                preload,
                                thread.pitchDiameterMm(),
                                thread.pitchMm(),
                                30,
                                mu,
                                mu,
                                d));
    }

    @Property
    void higherFrictionNeverRaisesThePreload(
            @ForAll("threads") ScrewThread thread,
            @ForAll @DoubleRange(min = 0.04, max = 0.4) double mu,
            @ForAll @DoubleRange(min = 0, max = 0.3) double more) {
        assertTrue(
                ScrewFormulas.assemblyPreloadN(thread, 640, 0.9, mu + more)
                        <= ScrewFormulas.assemblyPreloadN(thread, 640, 0.9, mu));
    }

    @Property
    void noEstimateExceedsAnyOfItsLimits(
            @ForAll("threads") ScrewThread thread,
            @ForAll("classes") String strength,
            @ForAll("materials") String material,
            @ForAll @DoubleRange(min = 0.2, max = 12) double length,
            @ForAll @DoubleRange(min = 0.05, max = 0.2) double low,
            @ForAll @DoubleRange(min = 0, max = 0.2) double spread) {
        TorqueEstimate estimate =
                ADVISOR.estimate(request(thread, strength, material, length, low, low + spread));
        assertTrue(estimate.lowNm() > 0 && estimate.lowNm() <= estimate.valueNm());
        assertTrue(estimate.valueNm() <= estimate.highNm());
        for (TorqueEstimate.Limit limit : estimate.limits()) {
            assertTrue(estimate.valueNm() <= limit.cautiousNm());
            assertTrue(estimate.highNm() <= limit.utmostNm());
        }
        assertEquals(TorqueEstimate.CAUTION, estimate.cautions().get(0));
        assertTrue(estimate.preloadLowN() <= estimate.preloadHighN());
    }

    private static TorqueRequest request(
            ScrewThread thread,
            String strength,
            String material,
            double length,
            double low,
            double high) {
        return TorqueRequest.builder()
                .thread(thread)
                .strength(TABLES.strengthClass(strength))
                .friction(new Friction("test", low, high, "test"))
                .material(TABLES.material(material))
                .engagementMm(length)
                .assumeCautiously()
                .build();
    }

    @Property
    void threadsAreNested(@ForAll("threads") ScrewThread thread) {
        assertTrue(thread.rootDiameterMm() > 0);
        assertTrue(thread.rootDiameterMm() <= thread.minorDiameterMm());
        assertTrue(thread.minorDiameterMm() < thread.pitchDiameterMm());
        assertTrue(thread.pitchDiameterMm() < thread.diameterMm());
        thread.limits()
                .ifPresent(
                        l -> {
                            assertTrue(
                                    l.pitchMinMm() < l.pitchMaxMm()
                                            && l.pitchMaxMm() <= thread.pitchDiameterMm() + 6e-4);
                            assertTrue(
                                    l.majorMinMm() < l.majorMaxMm()
                                            && l.majorMaxMm() <= thread.diameterMm());
                        });
        thread.hole()
                .ifPresent(
                        h ->
                                assertTrue(
                                        h.pitchMaxMm() > thread.pitchDiameterMm()
                                                && h.minorMaxMm() > thread.minorDiameterMm()));
    }

    /**
     * A cut at the depths of the plan, sampled: every point of adhesive that is not at an unsafe
     * stretch lies within the depth of an edge, and no point within that depth comes nearer to a
     * keep-out than the margin.
     */
    @Property(tries = 60)
    void cutsAgreeWithSampledGeometry(
            @ForAll @DoubleRange(min = 0.5, max = 6) double width,
            @ForAll @DoubleRange(min = 0, max = 4) double inset,
            @ForAll @DoubleRange(min = 2, max = 50) double keepX,
            @ForAll @DoubleRange(min = 1, max = 20) double keepY,
            @ForAll @DoubleRange(min = 1, max = 8) double keepSize,
            @ForAll @DoubleRange(min = 0, max = 1) double margin,
            @ForAll @DoubleRange(min = 0, max = 10) double slant) {
        List<Point> edge =
                List.of(
                        new Point(0, 0),
                        new Point(60, slant / 3),
                        new Point(60 - slant, 40),
                        new Point(slant, 40));
        double y = inset + width / 2;
        Bond.Strip strip =
                new Bond.Strip(
                        "s",
                        List.of(new Point(3, y + 0.02 * slant), new Point(55, y + slant / 3)),
                        width);
        List<Point> square =
                List.of(
                        new Point(keepX, keepY),
                        new Point(keepX + keepSize, keepY),
                        new Point(keepX + keepSize, keepY + keepSize),
                        new Point(keepX, keepY + keepSize));
        Bond bond =
                new Bond(
                        edge,
                        List.of(strip),
                        List.of(new Bond.KeepOut("k", "board", square)),
                        margin,
                        OptionalDouble.empty(),
                        List.of());
        CutPlan plan = CutPlan.of(bond);
        int sampled = 0;
        for (double x = 0.25; x < 60; x += 0.5) {
            for (double py = 0.25; py < 40; py += 0.5) {
                Point p = new Point(x, py);
                if (inside(p, edge)) {
                    sampled++;
                    look(bond, plan, p, strip, square);
                }
            }
        }
        assertTrue(sampled > 100);
        assertTrue(plan.settings().size() <= plan.pieces().size());
    }

    private static void look(
            Bond bond, CutPlan plan, Point p, Bond.Strip strip, List<Point> square) {
        boolean glued =
                distance(p, strip.path().get(0), strip.path().get(1)) < strip.widthMm() / 2 - 1e-6
                        && along(p, strip.path().get(0), strip.path().get(1)) > 0
                        && along(p, strip.path().get(0), strip.path().get(1)) < 1;
        int nearest = 0;
        for (int e = 1; e < 4; e++) {
            if (edgeDistance(bond, e, p) < edgeDistance(bond, nearest, p)) {
                nearest = e;
            }
        }
        double at =
                Math.min(
                        1, Math.max(0, along(p, corner(bond, nearest), corner(bond, nearest + 1))));
        double mm = at * corner(bond, nearest).distanceMm(corner(bond, nearest + 1));
        OptionalDouble depth = plan.depthAt(nearest, mm);
        double away = edgeDistance(bond, nearest, p);
        if (glued) {
            boolean severed = false;
            for (int e = 0; e < 4; e++) {
                severed |= severedOrRefused(bond, plan, e, p);
            }
            assertTrue(severed, p + " is neither severed nor refused");
        }
        // a point that the blade sweeps keeps the margin; a corner may be swept from a piece of
        // another edge
        if (depth.isPresent() && away <= depth.getAsDouble() && at > 0 && at < 1) {
            double clear = inside(p, square) ? 0 : squareDistance(p, square);
            assertTrue(clear >= bond.marginMm() - 1e-6, p + " is " + clear + " from the keep-out");
        }
    }

    private static boolean severedOrRefused(Bond bond, CutPlan plan, int edge, Point p) {
        double at = Math.min(1, Math.max(0, along(p, corner(bond, edge), corner(bond, edge + 1))));
        double mm = at * corner(bond, edge).distanceMm(corner(bond, edge + 1));
        double away = edgeDistance(bond, edge, p);
        return plan.depthAt(edge, mm).orElse(0) >= away - 1e-6
                || plan.unsafe().stream()
                        .anyMatch(
                                u ->
                                        u.place().edge() == edge
                                                && u.place().fromMm() - 1e-9 <= mm
                                                && mm <= u.place().toMm() + 1e-9
                                                && away <= u.neededMm() + 1e-6);
    }

    /** The fewest settings, against trying every set of candidate depths. */
    @Property(tries = 200)
    void settingsAreTheFewest(
            @ForAll List<@IntRange(min = 1, max = 9) Integer> ends, @ForAll long bits) {
        Assume.that(ends.size() <= 9);
        List<CutPlan.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            int low = ends.get(i);
            double high = low + (bits >> (3 * i) & 3);
            pieces.add(new CutPlan.Piece(new CutPlan.Place(0, i, i + 1), low, high, "k"));
        }
        CutPlan plan = CutPasses.plan(pieces);
        for (CutPlan.Piece piece : pieces) {
            assertTrue(
                    plan.settings().stream()
                            .anyMatch(s -> s >= piece.leastMm() && s <= piece.greatestMm()));
        }
        assertEquals(fewestStabs(pieces), plan.settings().size());
        assertEquals(
                ends.size(),
                plan.passes().stream()
                        .flatMap(p -> p.places().stream())
                        .mapToDouble(p -> p.toMm() - p.fromMm())
                        .sum(),
                1e-9);
    }

    private static int fewestStabs(List<CutPlan.Piece> pieces) {
        int best = pieces.size();
        for (int set = 0; set < 1 << 10; set++) {
            int chosen = set;
            boolean all =
                    pieces.stream()
                            .allMatch(
                                    p -> {
                                        for (int d = 1; d <= 9; d++) {
                                            if ((chosen >> d & 1) == 1
                                                    && d >= p.leastMm()
                                                    && d <= p.greatestMm()) {
                                                return true;
                                            }
                                        }
                                        return false;
                                    });
            if (all) {
                best = Math.min(best, Integer.bitCount(set & ~1));
            }
        }
        return best;
    }

    private static Point corner(Bond bond, int i) {
        return bond.edge().get(i % bond.edge().size());
    }

    private static double edgeDistance(Bond bond, int edge, Point p) {
        return distance(p, corner(bond, edge), corner(bond, edge + 1));
    }

    private static double along(Point p, Point a, Point b) {
        double dx = b.xMm() - a.xMm();
        double dy = b.yMm() - a.yMm();
        return ((p.xMm() - a.xMm()) * dx + (p.yMm() - a.yMm()) * dy) / (dx * dx + dy * dy);
    }

    private static double distance(Point p, Point a, Point b) {
        double t = Math.min(1, Math.max(0, along(p, a, b)));
        return p.distanceMm(
                new Point(a.xMm() + t * (b.xMm() - a.xMm()), a.yMm() + t * (b.yMm() - a.yMm())));
    }

    private static double squareDistance(Point p, List<Point> square) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < square.size(); i++) {
            best = Math.min(best, distance(p, square.get(i), square.get((i + 1) % square.size())));
        }
        return best;
    }

    private static boolean inside(Point p, List<Point> polygon) {
        boolean in = false;
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            Point a = polygon.get(i);
            Point b = polygon.get(j);
            if ((a.yMm() > p.yMm()) != (b.yMm() > p.yMm())
                    && p.xMm()
                            < (b.xMm() - a.xMm()) * (p.yMm() - a.yMm()) / (b.yMm() - a.yMm())
                                    + a.xMm()) {
                in = !in;
            }
        }
        return in;
    }
}
