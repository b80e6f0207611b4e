package reseat.internal.sheet;

import java.util.List;
import java.util.OptionalInt;

/** Words for what is looked at or measured before the work goes on. */
record CheckWords(Source source) {

    /**
     * Signs and what to do: NFPA tip sheet and University of Washington EHS, as listed in the
     * project's facts on lithium-ion cells; "do not press" is common practice, no source.
     */
    private static final String SWOLLEN =
            "If so, stop: do not press, bend, charge or pry it. Into a metal container, away from"
                    + " anything that burns; a trained person takes over.";

    String text(CheckPoint check) {
        String parts = source.names().parts(check.parts());
        return switch (check.kind()) {
            case CLOSED ->
                    "Look at the closed device for a swollen cell ("
                            + parts
                            + "): lifted cover, open seam, bowed face, rocking on a flat table,"
                            + " warmth, smell.";
            case CELL_SEEN ->
                    "Look at " + parts + ": swelling, dents, stains, corrosion, warmth, smell.";
            case DEAD ->
                    "Measure across the terminals of " + parts + ": below 60\u00a0V and falling.";
        };
    }

    String aside(CheckPoint check) {
        return check.kind() == CheckPoint.Kind.DEAD ? "______ V" : "no / stop";
    }

    List<String> details(CheckPoint check, OptionalInt cutAt) {
        if (check.kind() != CheckPoint.Kind.DEAD) {
            return List.of(SWOLLEN);
        }
        // 60 V within 5 s of disconnection: IEC 60204-1, clause 6.2.4 (machines), read at
        // cmph-safety.tech; it is the nearest published limit for a portable device
        return List.of(
                "First wait 5\u00a0s or longer after the last supply is cut"
                        + (cutAt.isPresent() ? " (step\u00a0" + cutAt.getAsInt() + ")" : "")
                        + "; touch nothing meanwhile. Limit after IEC 60204-1, 6.2.4.",
                "Prove the meter on a known voltage before and after.",
                "Above it: discharge through a resistor, never with a screwdriver, and measure"
                        + " again.");
    }
}
