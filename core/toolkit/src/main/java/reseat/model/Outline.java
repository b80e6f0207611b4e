package reseat.model;

import java.util.OptionalDouble;

/**
 * The outline of the device; a rectangle with its corner at the origin.
 *
 * @param widthMm extent in x, in millimetres
 * @param heightMm extent in y, in millimetres
 * @param thicknessMm thickness in millimetres; empty if not stated
 */
public record Outline(double widthMm, double heightMm, OptionalDouble thicknessMm) {

    /** Returns whether a point lies inside or on the edge. */
    public boolean contains(Point point) {
        return point.xMm() >= 0
                && point.yMm() >= 0
                && point.xMm() <= widthMm
                && point.yMm() <= heightMm;
    }
}
