package reseat.model;

/**
 * A point in the plane of the device, seen from the side that the seats are driven from.
 *
 * @param xMm millimetres to the right
 * @param yMm millimetres up
 */
public record Point(double xMm, double yMm) {

    public Point {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException("coordinates must be finite: " + xMm + ", " + yMm);
        }
    }

    /** Returns the distance to another point in millimetres. */
    public double distanceMm(Point other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
