package reseat.internal.fasten;

import java.util.List;
import java.util.Optional;
import reseat.fasten.ScrewThread.HoleLimits;
import reseat.fasten.ScrewThread.ScrewLimits;
import reseat.fasten.TableRow;

/**
 * Tolerances of ISO 965-1 by formula. The tolerance of the pitch diameter of the screw, grade 6, is
 * 90 P^0.4 D^0.1 micrometres, D being the geometric mean of the range of diameters, rounded to the
 * R40 series; that of the hole is five steps of R40 larger. The limits of M1 to M6 that were read
 * are reproduced exactly. One value of the standard departs from its formula: pitch 0.5 from 2.8 to
 * 5.6 mm has 75, not 80.
 */
final class ThreadTolerance {

    private static final double[] R40 = {
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265,
        280, 300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750,
        800, 850, 900, 950
    };

    private static final double[] RANGES = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4};

    private final double diameterMm;
    private final double pitchMm;
    private final TableRow pitch;

    private ThreadTolerance(double diameterMm, double pitchMm, TableRow pitch) {
        this.diameterMm = diameterMm;
        this.pitchMm = pitchMm;
        this.pitch = pitch;
    }

    static Optional<ThreadTolerance> of(double diameterMm, double pitchMm, List<TableRow> pitches) {
        if (diameterMm < RANGES[0] || diameterMm > RANGES[RANGES.length - 1]) {
            return Optional.empty();
        }
        return pitches.stream()
                .filter(row -> Math.abs(row.required("pitchMm") - pitchMm) < 1e-9)
                .findFirst()
                .map(row -> new ThreadTolerance(diameterMm, pitchMm, row));
    }

    ScrewLimits screw(boolean allowance) {
        double es = allowance ? pitch.required("allowanceGUm") / 1000 : 0;
        double d2 = micron(diameterMm - 0.649519 * pitchMm);
        return new ScrewLimits(
                micron(diameterMm - es),
                micron(diameterMm - es - pitch.required("majorTolerance6Um") / 1000),
                micron(d2 - es),
                micron(d2 - es - r40(step()) / 1000));
    }

    Optional<HoleLimits> hole() {
        if (pitch.number("minorTolerance6HUm").isEmpty()) {
            return Optional.empty();
        }
        double d1 = micron(diameterMm - 1.082532 * pitchMm);
        double d2 = micron(diameterMm - 0.649519 * pitchMm);
        return Optional.of(
                new HoleLimits(
                        micron(d1 + pitch.required("minorTolerance6HUm") / 1000),
                        micron(d2 + r40(step() + 5) / 1000)));
    }

    private int step() {
        int i = 1;
        while (diameterMm > RANGES[i]) {
            i++;
        }
        double mean = Math.sqrt(RANGES[i - 1] * RANGES[i]);
        if (pitchMm == 0.5 && i == 3) {
            return -5; // 75 micrometres
        }
        double micrometres = 90 * Math.pow(pitchMm, 0.4) * Math.pow(mean, 0.1);
        int best = 0;
        for (int s = -40; s < 80; s++) {
            if (Math.abs(r40(s) - micrometres) < Math.abs(r40(best) - micrometres)) {
                best = s;
            }
        }
        return best;
    }

    private static double r40(int step) {
        return R40[Math.floorMod(step, 40)] * Math.pow(10, Math.floorDiv(step, 40));
    }

    private static double micron(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
