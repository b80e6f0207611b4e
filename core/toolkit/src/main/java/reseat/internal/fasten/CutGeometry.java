package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import reseat.fasten.CutPlan;
import reseat.fasten.CutPlan.Piece;
import reseat.fasten.CutPlan.Place;
import reseat.fasten.FastenerInputException;
import reseat.model.Bond;
import reseat.model.Point;

/**
 * Least and greatest depth along the edge of a bonded part.
 *
 * <p>Adhesive that does not belong to a single edge is divided into square cells, which are
 * quartered where more than one edge could be the nearest. A cell counts for every edge that may be
 * nearest to some point of it, with the distance of its farthest corner to the edge for which that
 * is least: the distance to a segment is convex, so no point of the cell lies farther from its
 * nearest edge.
 */
public final class CutGeometry {

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double CELL_MM = 1.0;
    private static final double FINEST_MM = 0.0625;
    private static final double TINY = 1e-9;

    private final Bond bond;
    private final List<LineSegment> edges = new ArrayList<>();
    private final List<double[]> least = new ArrayList<>();

    /** Creates the geometry of a bond. */
    public CutGeometry(Bond bond) {
        this.bond = bond;
    }

    /** Returns the pieces in order round the edge. */
    public List<Piece> pieces() {
        if (!(bond.marginMm() >= 0)) {
            throw new FastenerInputException(
                    "The margin of a cut must be 0 or more: " + bond.marginMm() + " mm.");
        }
        Polygon part = polygon("the edge of the bonded part", bond.edge());
        for (int i = 0; i < bond.edge().size(); i++) {
            LineSegment edge =
                    new LineSegment(
                            at(bond.edge().get(i)),
                            at(bond.edge().get((i + 1) % bond.edge().size())));
            edges.add(edge);
            least.add(
                    new double
                            [Math.max(
                                    1,
                                    (int) Math.ceil(edge.getLength() / CutPlan.PIECE_MM - TINY))]);
        }
        for (Adhesive adhesive : Adhesive.of(bond, part, edges)) {
            sever(adhesive);
        }
        return withKeepOuts();
    }

    private void sever(Adhesive adhesive) {
        Geometry area = adhesive.area();
        if (adhesive.edge() >= 0
                && area.getNumGeometries() == 1
                && area.getGeometryN(0).isRectangle()) {
            severRectangle(adhesive.edge(), area.getEnvelopeInternal());
            return;
        }
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(adhesive.area());
        Envelope box = adhesive.area().getEnvelopeInternal();
        for (double x = box.getMinX(); x < box.getMaxX(); x += CELL_MM) {
            for (double y = box.getMinY(); y < box.getMaxY(); y += CELL_MM) {
                cell(adhesive, prepared, new Envelope(x, x + CELL_MM, y, y + CELL_MM), false);
            }
        }
    }

    /** Handles a shape of any kind with the same cells; most strips lie along a straight edge. */
    private void severRectangle(int edge, Envelope area) {
        for (double x = area.getMinX(); x < area.getMaxX(); x += CELL_MM) {
            for (double y = area.getMinY(); y < area.getMaxY(); y += CELL_MM) {
                double right = Math.min(x + CELL_MM, area.getMaxX());
                double top = Math.min(y + CELL_MM, area.getMaxY());
                if ((right - x) * (top - y) > 1e-12) {
                    Coordinate[] points = {
                        new Coordinate(x, y),
                        new Coordinate(x, top),
                        new Coordinate(right, top),
                        new Coordinate(right, y)
                    };
                    deepen(edge, points, farthest(edge, points));
                }
            }
        }
    }

    /** Handles a cell; a cell within one that lies in the adhesive lies in it too. */
    private void cell(Adhesive adhesive, PreparedGeometry prepared, Envelope box, boolean known) {
        Geometry square = SHAPES.toGeometry(box);
        boolean whole = known || prepared.contains(square);
        if (!whole && !prepared.intersects(square)) {
            return;
        }
        boolean[] near = adhesive.edge() < 0 ? nearest(box) : only(adhesive.edge());
        int candidates = 0;
        for (boolean each : near) {
            candidates += each ? 1 : 0;
        }
        if (candidates > 1 && box.getWidth() > FINEST_MM + TINY) {
            double half = box.getWidth() / 2;
            for (int i = 0; i < 2; i++) {
                for (int j = 0; j < 2; j++) {
                    double x = box.getMinX() + i * half;
                    double y = box.getMinY() + j * half;
                    cell(adhesive, prepared, new Envelope(x, x + half, y, y + half), whole);
                }
            }
            return;
        }
        Geometry inside = whole ? square : adhesive.area().intersection(square);
        if (inside.getArea() > 1e-12) {
            Coordinate[] points = inside.getCoordinates();
            // every point is severed from its nearest edge, so the least of the farthest distances
            // is enough
            double depth = Double.POSITIVE_INFINITY;
            for (int i = 0; i < near.length; i++) {
                if (near[i]) {
                    depth = Math.min(depth, farthest(i, points));
                }
            }
            for (int i = 0; i < near.length; i++) {
                if (near[i]) {
                    deepen(i, points, depth);
                }
            }
        }
    }

    private boolean[] only(int edge) {
        boolean[] near = new boolean[edges.size()];
        near[edge] = true;
        return near;
    }

    private double farthest(int edge, Coordinate[] points) {
        double farthest = 0;
        for (Coordinate point : points) {
            farthest = Math.max(farthest, edges.get(edge).distance(point));
        }
        return farthest;
    }

    /** Returns which edges may be nearest to some point of a cell. */
    private boolean[] nearest(Envelope box) {
        Coordinate centre = new Coordinate(box.centre());
        double radius = Math.hypot(box.getWidth(), box.getHeight()) / 2;
        double[] distance = new double[edges.size()];
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < distance.length; i++) {
            distance[i] = edges.get(i).distance(centre);
            best = Math.min(best, distance[i]);
        }
        boolean[] near = new boolean[distance.length];
        for (int i = 0; i < near.length; i++) {
            near[i] = distance[i] - radius <= best + radius;
        }
        return near;
    }

    /** Records a depth for the pieces of an edge onto which the points of a cell project. */
    private void deepen(int edge, Coordinate[] points, double depth) {
        LineSegment segment = edges.get(edge);
        double from = 1;
        double to = 0;
        for (Coordinate point : points) {
            double along = Math.min(1, Math.max(0, segment.projectionFactor(point)));
            from = Math.min(from, along);
            to = Math.max(to, along);
        }
        double[] depths = least.get(edge);
        int first =
                (int) Math.min(depths.length - 1L, (long) Math.floor(from * depths.length + 1e-6));
        int last = (int) Math.max(first, Math.ceil(to * depths.length - 1e-6) - 1);
        for (int i = first; i <= last; i++) {
            depths[i] = Math.max(depths[i], depth);
        }
    }

    private List<Piece> withKeepOuts() {
        List<Coordinate[]> outlines = new ArrayList<>();
        for (Bond.KeepOut keepOut : bond.keepOuts()) {
            outlines.add(
                    polygon("the outline of keep-out \"" + keepOut.id() + "\"", keepOut.outline())
                            .getCoordinates());
        }
        List<Piece> pieces = new ArrayList<>();
        for (int edge = 0; edge < edges.size(); edge++) {
            double[] depths = least.get(edge);
            double length = edges.get(edge).getLength();
            for (int i = 0; i < depths.length; i++) {
                double from = length * i / depths.length;
                double to = length * (i + 1) / depths.length;
                Coordinate begin = edges.get(edge).pointAlong(from / length);
                Coordinate end = edges.get(edge).pointAlong(to / length);
                double greatest = Double.POSITIVE_INFINITY;
                String limiting = "";
                for (int k = 0; k < outlines.size(); k++) {
                    double room =
                            Math.max(0, distance(begin, end, outlines.get(k)) - bond.marginMm());
                    if (room < greatest) {
                        greatest = room;
                        limiting = bond.keepOuts().get(k).id();
                    }
                }
                pieces.add(
                        new Piece(
                                new Place(edge, from, to), rounded(depths[i]), greatest, limiting));
            }
        }
        return pieces;
    }

    /** Returns how far a piece of an edge lies from an area; 0 where it lies in it. */
    private static double distance(Coordinate begin, Coordinate end, Coordinate[] ring) {
        double distance = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < ring.length; i++) {
            distance =
                    Math.min(distance, Distance.segmentToSegment(begin, end, ring[i], ring[i + 1]));
        }
        return distance > 0 && PointLocation.isInRing(begin, ring) ? 0 : distance;
    }

    /** Rounds floating-point noise off to a nanometre, upwards; zero stays 0, not -0. */
    private static double rounded(double mm) {
        return Math.max(0, Math.ceil(mm * 1e6 - 1e-3) / 1e6);
    }

    private static Polygon polygon(String what, List<Point> corners) {
        if (corners.size() < 3) {
            throw new FastenerInputException(
                    capital(what) + " needs three corners or more; found " + corners.size() + ".");
        }
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            ring[i] = at(corners.get(i % corners.size()));
        }
        Polygon polygon = SHAPES.createPolygon(ring);
        if (!polygon.isValid() || !(polygon.getArea() > 0)) {
            throw new FastenerInputException(
                    capital(what)
                            + " crosses or touches itself; list its corners in order round it.");
        }
        return polygon;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static Coordinate at(Point point) {
        return new Coordinate(point.xMm(), point.yMm());
    }
}
