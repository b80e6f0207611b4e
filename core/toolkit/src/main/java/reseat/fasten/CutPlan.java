package reseat.fasten;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import reseat.internal.fasten.CutGeometry;
import reseat.internal.fasten.CutPasses;
import reseat.model.Bond;
import reseat.model.Point;

/**
 * How deep a blade or pick goes, from the edge of a bonded part inwards.
 *
 * <p>Along each edge, piece by piece: the <em>least</em> depth is the largest distance from the
 * edge of adhesive that is cut from it: strips that run along it, and whatever else lies nearer to
 * it than to any other; the <em>greatest</em> is the distance from the piece to the nearest
 * keep-out, less the margin. Where the least exceeds the greatest, no safe depth exists. Pieces are
 * merged into the fewest depth settings (interval stabbing, exact), and these into the fewest
 * passes round the edge. Everything errs on the safe side: pieces are never judged longer than
 * {@value #PIECE_MM} mm, distances are of whole pieces.
 *
 * @param pieces the edge in pieces, in order round it
 * @param settings depths to mark on the pick, in millimetres, rising; the fewest that serve every
 *     piece that can be cut
 * @param passes the places cut at each setting, in order round the edge
 * @param unsafe where no safe depth exists, merged
 */
public record CutPlan(
        List<Piece> pieces, List<Double> settings, List<Pass> passes, List<Unsafe> unsafe) {

    /** Pieces of the edge are no longer than this, in millimetres. */
    public static final double PIECE_MM = 1.0;

    /** Room that differs by less is the same, in millimetres. */
    private static final double ROOM_MM = 0.5;

    /** More room than this makes no difference, in millimetres. */
    private static final double AMPLE_MM = 10;

    public CutPlan {
        pieces = List.copyOf(pieces);
        settings = List.copyOf(settings);
        passes = List.copyOf(passes);
        unsafe = List.copyOf(unsafe);
    }

    /**
     * A place on an edge.
     *
     * @param edge number of the edge, counted from 0; edge i runs from corner i to the next
     * @param fromMm distance from its first corner to where the place begins, in millimetres
     * @param toMm distance from its first corner to where it ends, in millimetres
     */
    public record Place(int edge, double fromMm, double toMm) {}

    /**
     * A piece of an edge.
     *
     * @param place where it lies
     * @param leastMm least depth that severs the bond, in millimetres; 0 if no adhesive belongs to
     *     it
     * @param greatestMm greatest depth that keeps the margin, in millimetres; infinite without
     *     keep-outs; 0 if the edge itself is too near
     * @param keepOut id of the keep-out that limits it; empty without keep-outs
     */
    public record Piece(Place place, double leastMm, double greatestMm, String keepOut) {

        /** Returns whether adhesive belongs to the piece. */
        public boolean bonded() {
            return leastMm > 0;
        }

        /** Returns whether a depth exists that severs the bond and keeps the margin. */
        public boolean safe() {
            return leastMm <= greatestMm;
        }
    }

    /**
     * One pass with one setting.
     *
     * @param depthMm depth in millimetres
     * @param places where, edge by edge
     */
    public record Pass(double depthMm, List<Place> places) {
        public Pass {
            places = List.copyOf(places);
        }
    }

    /**
     * A stretch of an edge at which no safe depth exists.
     *
     * @param place where
     * @param neededMm depth that severing it would need, in millimetres
     * @param allowedMm depth that the keep-out allows, in millimetres
     * @param keepOut id of the keep-out that forbids it
     */
    public record Unsafe(Place place, double neededMm, double allowedMm, String keepOut) {}

    /**
     * The effect of a depth given in a document.
     *
     * @param edge number of the edge
     * @param depthMm the depth given
     * @param safe whether it keeps the margin all along the edge
     * @param severs whether it severs the bond all along the edge
     * @param greatestMm greatest depth that keeps the margin all along the edge, in millimetres
     * @param leastMm least depth that severs all along the edge, in millimetres
     * @param keepOut id of the keep-out that limits it most; empty without keep-outs
     */
    public record Judged(
            int edge,
            double depthMm,
            boolean safe,
            boolean severs,
            double greatestMm,
            double leastMm,
            String keepOut) {}

    /**
     * Computes the plan of a bond. O(n k) time for n pieces and adhesive cells and k edges and
     * keep-outs.
     *
     * @param bond edge, strips, keep-outs and margin
     * @throws FastenerInputException if the edge or a keep-out is not a simple polygon, a strip has
     *     no width or no length, or the margin is negative
     */
    public static CutPlan of(Bond bond) {
        List<Piece> pieces = new CutGeometry(bond).pieces();
        return CutPasses.plan(pieces);
    }

    /**
     * Judges the depths that the maker's document gives for edges.
     *
     * @param bond the bond, the one for which the plan was computed
     * @throws FastenerInputException if a depth is for an edge that does not exist, or not above 0
     */
    public List<Judged> judge(Bond bond) {
        return bond.givenDepths().stream().map(given -> judge(bond, given)).toList();
    }

    private Judged judge(Bond bond, Bond.GivenDepth given) {
        if (given.edge() < 0 || given.edge() >= bond.edge().size()) {
            throw new FastenerInputException(
                    "A depth is given for edge "
                            + given.edge()
                            + "; the edges are 0 to "
                            + (bond.edge().size() - 1)
                            + ".");
        }
        if (!(given.depthMm() > 0)) {
            throw new FastenerInputException(
                    "A depth of " + given.depthMm() + " mm is invalid: it must be above 0.");
        }
        double least = 0;
        double greatest = Double.POSITIVE_INFINITY;
        String keepOut = "";
        for (Piece piece : pieces) {
            if (piece.place().edge() == given.edge()) {
                least = Math.max(least, piece.leastMm());
                if (piece.greatestMm() < greatest) {
                    greatest = piece.greatestMm();
                    keepOut = piece.keepOut();
                }
            }
        }
        return new Judged(
                given.edge(),
                given.depthMm(),
                given.depthMm() <= greatest + 1e-9,
                given.depthMm() >= least - 1e-9,
                greatest,
                least,
                keepOut);
    }

    /**
     * Returns where to begin: the middle of the longest stretch of one edge on which the most room
     * is left between the depth of cut and what must not be touched; empty if nothing can be cut.
     */
    public Optional<Place> entry() {
        double most = 0;
        for (Piece piece : pieces) {
            most = Math.max(most, room(piece));
        }
        @Nullable Place best = null;
        @Nullable Place run = null;
        for (Piece piece : pieces) {
            Place at = piece.place();
            if (!piece.bonded() || !piece.safe() || room(piece) < most - ROOM_MM) {
                run = null;
                continue;
            }
            double from = run != null && run.edge() == at.edge() ? run.fromMm() : at.fromMm();
            Place longer = new Place(at.edge(), from, at.toMm());
            run = longer;
            if (best == null
                    || longer.toMm() - longer.fromMm() > best.toMm() - best.fromMm() + 1e-9) {
                best = longer;
            }
        }
        return Optional.ofNullable(best)
                .map(
                        stretch -> {
                            double middle = (stretch.fromMm() + stretch.toMm()) / 2;
                            return new Place(stretch.edge(), middle, middle);
                        });
    }

    /** Room beyond this makes no difference; infinite without keep-outs. */
    private double room(Piece piece) {
        if (!piece.bonded() || !piece.safe()) {
            return 0;
        }
        Place at = piece.place();
        double depth = depthAt(at.edge(), (at.fromMm() + at.toMm()) / 2).orElse(piece.leastMm());
        return Math.min(AMPLE_MM, Math.max(0, piece.greatestMm() - depth));
    }

    /**
     * Returns the depth for the edge at a distance from its first corner; empty if nothing is cut
     * there.
     */
    public OptionalDouble depthAt(int edge, double atMm) {
        return passes.stream()
                .filter(
                        pass ->
                                pass.places().stream()
                                        .anyMatch(
                                                p ->
                                                        p.edge() == edge
                                                                && p.fromMm() <= atMm
                                                                && atMm <= p.toMm()))
                .mapToDouble(Pass::depthMm)
                .findFirst();
    }

    /** Returns the point on an edge of a bond at a distance from its first corner. */
    public static Point pointAt(Bond bond, int edge, double atMm) {
        Point a = bond.edge().get(edge);
        Point b = bond.edge().get((edge + 1) % bond.edge().size());
        double share = atMm / a.distanceMm(b);
        return new Point(
                a.xMm() + share * (b.xMm() - a.xMm()), a.yMm() + share * (b.yMm() - a.yMm()));
    }
}
