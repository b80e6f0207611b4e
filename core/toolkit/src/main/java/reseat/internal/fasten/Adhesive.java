package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import reseat.fasten.FastenerInputException;
import reseat.model.Bond;

/**
 * The adhesive of a bond, assigned to edges: a stretch of a strip that runs along an edge is cut
 * from that edge to its ends; the rest belongs, point by point, to the nearest edge.
 *
 * @param edge number of the edge that it is cut from, or -1 for the nearest
 */
record Adhesive(Geometry area, int edge) {

    private static final BufferParameters SQUARE =
            new BufferParameters(
                    16,
                    BufferParameters.CAP_FLAT,
                    BufferParameters.JOIN_MITRE,
                    BufferParameters.DEFAULT_MITRE_LIMIT);

    /** A stretch that turns from an edge by less than this runs along it, in radians. */
    private static final double ALONG = Math.toRadians(15);

    /** Assigns the strips of a bond to edges. */
    static List<Adhesive> of(Bond bond, Geometry part, List<LineSegment> edges) {
        GeometryFactory shapes = part.getFactory();
        List<Adhesive> shared = new ArrayList<>();
        List<Geometry> whole = new ArrayList<>();
        for (Bond.Strip strip : bond.strips()) {
            if (!(strip.widthMm() > 0) || strip.path().size() < 2) {
                throw new FastenerInputException(
                        "The strip \""
                                + strip.id()
                                + "\" needs a width above 0 and a path of two points or more.");
            }
            Coordinate[] path =
                    strip.path().stream()
                            .map(p -> new Coordinate(p.xMm(), p.yMm()))
                            .toArray(Coordinate[]::new);
            whole.add(
                    BufferOp.bufferOp(shapes.createLineString(path), strip.widthMm() / 2, SQUARE));
            for (int i = 0; i + 1 < path.length; i++) {
                LineSegment stretch = new LineSegment(path[i], path[i + 1]);
                int edge = runsAlong(stretch, edges);
                if (edge >= 0) {
                    Geometry area =
                            areas(
                                    BufferOp.bufferOp(
                                                    stretch.toGeometry(shapes),
                                                    strip.widthMm() / 2,
                                                    SQUARE)
                                            .intersection(part));
                    shared.add(new Adhesive(area, edge));
                }
            }
        }
        if (whole.isEmpty()) {
            return List.of();
        }
        Geometry rest = areas(UnaryUnionOp.union(whole).intersection(part));
        for (Adhesive each : shared) {
            rest = areas(rest.difference(each.area()));
        }
        shared.add(new Adhesive(rest, -1));
        return shared.stream().filter(each -> !each.area().isEmpty()).toList();
    }

    /** Leaves out the points and lines in which shapes merely touch. */
    private static Geometry areas(Geometry mixed) {
        List<?> polygons = PolygonExtracter.getPolygons(mixed);
        List<Polygon> all = new ArrayList<>();
        polygons.forEach(each -> all.add((Polygon) each));
        return mixed.getFactory().createMultiPolygon(all.toArray(Polygon[]::new));
    }

    /**
     * Returns the edge that a stretch runs along: the nearest overall, if it is almost parallel.
     */
    private static int runsAlong(LineSegment stretch, List<LineSegment> edges) {
        if (stretch.getLength() == 0) {
            return -1;
        }
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int e = 0; e < edges.size(); e++) {
            double sum = 0;
            for (int i = 0; i <= 4; i++) {
                sum += edges.get(e).distance(stretch.pointAlong(i / 4.0));
            }
            if (sum < least) {
                least = sum;
                best = e;
            }
        }
        double turn = Math.abs(Math.sin(stretch.angle() - edges.get(best).angle()));
        return turn <= Math.sin(ALONG) ? best : -1;
    }
}
