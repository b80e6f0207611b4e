package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import reseat.model.Bond;
import reseat.model.Point;
import reseat.text.NumberText;

/** Names the edges of a bonded part by the strips of adhesive that run along them. */
public final class EdgeNames {

    /** A strip that turns from an edge by less than this runs along it, in radians. */
    private static final double ALONG = Math.toRadians(15);

    private EdgeNames() {}

    /**
     * Returns the names of the edges in order: that of the strip that runs along it, else its ends.
     */
    public static List<String> of(Bond bond) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < bond.edge().size(); i++) {
            Point from = bond.edge().get(i);
            Point to = bond.edge().get((i + 1) % bond.edge().size());
            String strip = strip(bond, new LineSegment(at(from), at(to)));
            names.add(
                    strip.isEmpty()
                            ? "edge from " + text(from) + " to " + text(to)
                            : strip.replace('-', ' ').replace('_', ' ') + " edge");
        }
        return names.stream().distinct().count() == names.size() ? names : byEnds(bond);
    }

    private static List<String> byEnds(Bond bond) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < bond.edge().size(); i++) {
            names.add(
                    "edge from "
                            + text(bond.edge().get(i))
                            + " to "
                            + text(bond.edge().get((i + 1) % bond.edge().size())));
        }
        return names;
    }

    private static String strip(Bond bond, LineSegment edge) {
        String best = "";
        double least = edge.getLength() / 4;
        for (Bond.Strip strip : bond.strips()) {
            for (int i = 0; i + 1 < strip.path().size(); i++) {
                LineSegment stretch =
                        new LineSegment(at(strip.path().get(i)), at(strip.path().get(i + 1)));
                double turn = Math.abs(Math.sin(stretch.angle() - edge.angle()));
                double away = edge.distance(stretch.midPoint());
                if (turn <= Math.sin(ALONG) && away < least) {
                    least = away;
                    best = strip.id();
                }
            }
        }
        return best;
    }

    private static Coordinate at(Point point) {
        return new Coordinate(point.xMm(), point.yMm());
    }

    private static String text(Point point) {
        return "(" + NumberText.of(point.xMm()) + ", " + NumberText.of(point.yMm()) + ")";
    }
}
