package reseat.fasten;

import java.util.Objects;
import java.util.Optional;

/**
 * A thread and its basic geometry.
 *
 * <p>Metric (ISO 724): d2 = d - 0.649519 P, d1 = d - 1.082532 P; root d3 = d - 1.226869 P; stress
 * area As = pi/4 ((d2 + d3)/2)² (ISO 898-1). Miniature S (ISO 1501): d2 as metric, d1 = d - 0.96 P,
 * root and area at d - 1.28 P. Forming screws: core and area follow from the least breaking load of
 * the screw; see {@link FastenerTables#thread}.
 *
 * @param designation as it is written, such as M2, M8x1, S0.8, ST1.8
 * @param diameterMm nominal diameter, above 0
 * @param pitchMm pitch, above 0
 * @param coarse whether the pitch is the coarse one of the diameter
 * @param limits limits of the screw thread (6g, or 6h up to M1.4); empty if no tolerance is known
 * @param hole limits of the tapped hole (6H); empty if no tolerance is known
 * @param formedAreaMm2 area of the core of a forming screw from its breaking load; 0 for others
 * @param source where the row comes from
 */
public record ScrewThread(
        String designation,
        Series series,
        double diameterMm,
        double pitchMm,
        boolean coarse,
        Optional<ScrewLimits> limits,
        Optional<HoleLimits> hole,
        double formedAreaMm2,
        String source) {

    public ScrewThread {
        Objects.requireNonNull(designation, "designation");
        if (!(diameterMm > 0) || !(pitchMm > 0) || pitchMm >= diameterMm) {
            throw new IllegalArgumentException(
                    "the diameter of a thread must exceed its pitch, and both must be above 0: "
                            + diameterMm
                            + ", "
                            + pitchMm);
        }
    }

    /** Series of threads. */
    public enum Series {
        /** ISO metric, M. */
        METRIC,
        /** Miniature, S, ISO 1501. */
        MINIATURE,
        /** Metric profile in sizes that no standard lists any more. */
        OLD,
        /** Screws that form their thread in plastic, 30 degree flanks. */
        FORMING;

        /** Returns whether the profile is that of ISO metric threads. */
        public boolean metricProfile() {
            return this == METRIC || this == OLD;
        }
    }

    /**
     * Limits of a screw thread, in millimetres.
     *
     * @param majorMaxMm largest outer diameter
     * @param majorMinMm smallest outer diameter
     * @param pitchMaxMm largest pitch diameter
     * @param pitchMinMm smallest pitch diameter
     */
    public record ScrewLimits(
            double majorMaxMm, double majorMinMm, double pitchMaxMm, double pitchMinMm) {}

    /**
     * Limits of a tapped hole, in millimetres.
     *
     * @param minorMaxMm largest minor diameter
     * @param pitchMaxMm largest pitch diameter
     */
    public record HoleLimits(double minorMaxMm, double pitchMaxMm) {}

    /** Returns the pitch diameter d2 in millimetres. */
    public double pitchDiameterMm() {
        return series == Series.FORMING
                ? (diameterMm + rootDiameterMm()) / 2
                : diameterMm - 0.649519 * pitchMm;
    }

    /** Returns the minor diameter d1 = D1 of the basic profile in millimetres. */
    public double minorDiameterMm() {
        return switch (series) {
            case METRIC, OLD -> diameterMm - 1.082532 * pitchMm;
            case MINIATURE -> diameterMm - 0.96 * pitchMm;
            case FORMING -> rootDiameterMm();
        };
    }

    /** Returns the root diameter d3 of the screw in millimetres. */
    public double rootDiameterMm() {
        return switch (series) {
            case METRIC, OLD -> diameterMm - 1.226869 * pitchMm;
            case MINIATURE -> diameterMm - 1.28 * pitchMm;
            case FORMING -> Math.sqrt(4 * formedAreaMm2 / Math.PI);
        };
    }

    /** Returns the area that tension is counted on, in square millimetres. */
    public double stressAreaMm2() {
        double diameter =
                series.metricProfile()
                        ? (pitchDiameterMm() + rootDiameterMm()) / 2
                        : rootDiameterMm();
        return Math.PI / 4 * diameter * diameter;
    }

    /** Returns half the flank angle in degrees: 30, or 15 for forming screws. */
    public double halfFlankDegrees() {
        return series == Series.FORMING ? 15 : 30;
    }

    /** Returns the number of turns in a length, which may be 0. */
    public double turns(double lengthMm) {
        return lengthMm / pitchMm;
    }
}
