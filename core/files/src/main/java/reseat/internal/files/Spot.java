package reseat.internal.files;

import reseat.model.Origin;

/**
 * A line and a column packed into one number. A tree has thousands of locations, hardly any of
 * which is reported: an {@link Origin} is created only for those.
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
