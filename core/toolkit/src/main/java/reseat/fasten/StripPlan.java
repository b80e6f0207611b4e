package reseat.fasten;

import java.util.ArrayList;
import java.util.List;
import reseat.model.Bond;
import reseat.model.Point;

/**
 * The adhesive of a bond in pieces to cut to length.
 *
 * @param pieces the pieces, in the order of the strips
 */
public record StripPlan(List<Piece> pieces) {

    public StripPlan {
        pieces = List.copyOf(pieces);
    }

    /**
     * A piece.
     *
     * @param strip id of the strip
     * @param lengthMm length of its middle line in millimetres
     * @param widthMm its width in millimetres
     */
    public record Piece(String strip, double lengthMm, double widthMm) {}

    /** Returns the pieces of a bond. */
    public static StripPlan of(Bond bond) {
        List<Piece> pieces = new ArrayList<>();
        for (Bond.Strip strip : bond.strips()) {
            double length = 0;
            List<Point> path = strip.path();
            for (int i = 0; i + 1 < path.size(); i++) {
                length += path.get(i).distanceMm(path.get(i + 1));
            }
            pieces.add(new Piece(strip.id(), length, strip.widthMm()));
        }
        return new StripPlan(pieces);
    }

    /** Returns the length of all pieces in millimetres. */
    public double lengthMm() {
        return pieces.stream().mapToDouble(Piece::lengthMm).sum();
    }
}
