package reseat.internal.sheet;

import java.util.List;

/**
 * Something to look at or to measure before the work goes on.
 *
 * @param kind what it is about
 * @param parts ids of the parts that it is about, at least one
 */
record CheckPoint(Kind kind, List<String> parts) {

    CheckPoint {
        parts = List.copyOf(parts);
    }

    /** What it is about. */
    enum Kind {
        /** The closed device shows no swollen cell. */
        CLOSED,
        /** A cell that has just been uncovered is not swollen. */
        CELL_SEEN,
        /** What stores charge is discharged. */
        DEAD
    }
}
