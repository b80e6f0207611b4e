package reseat.model;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The geometry of a bond that is cut from its edge.
 *
 * @param edge outline of the bonded part, as corners of a closed polygon, in order round it
 * @param strips the adhesive, strip by strip
 * @param keepOuts what a blade or pick must not touch
 * @param marginMm distance to keep from every keep-out, in millimetres
 * @param thicknessMm thickness of the adhesive in millimetres; empty if unknown
 * @param givenDepths depths that the maker's document gives, by edge
 */
public record Bond(
        List<Point> edge,
        List<Strip> strips,
        List<KeepOut> keepOuts,
        double marginMm,
        OptionalDouble thicknessMm,
        List<GivenDepth> givenDepths) {

    public Bond {
        edge = List.copyOf(edge);
        strips = List.copyOf(strips);
        keepOuts = List.copyOf(keepOuts);
        givenDepths = List.copyOf(givenDepths);
    }

    /**
     * A strip of adhesive.
     *
     * @param path its middle line
     * @param widthMm its width in millimetres
     */
    public record Strip(String id, List<Point> path, double widthMm) {
        public Strip {
            path = List.copyOf(path);
        }
    }

    /**
     * Something that must not be touched.
     *
     * @param part id of the part it belongs to
     * @param outline its outline, as corners of a closed polygon
     */
    public record KeepOut(String id, String part, List<Point> outline) {
        public KeepOut {
            outline = List.copyOf(outline);
        }
    }

    /**
     * A depth that a document gives for one edge.
     *
     * @param edge number of the edge, counted from 0; edge i runs from corner i to the next
     * @param depthMm depth in millimetres
     */
    public record GivenDepth(int edge, double depthMm) {}
}
