package reseat.internal.files;

import reseat.model.Origin;

/**
 * A line and a column in one number. A tree has thousands of places, of which hardly one is ever
 * told: an {@link Origin} is made of those alone.
 */
final class Spot {

    private Spot() {}

    static long of(int line, int column) {
        return (long) line << 32 | column;
    }

    static long of(Origin at) {
        return of(at.line(), at.column());
    }

    static Origin origin(String file, long spot) {
        return new Origin(file, (int) (spot >>> 32), (int) spot);
    }
}
