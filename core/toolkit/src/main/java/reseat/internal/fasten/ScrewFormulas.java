package reseat.internal.fasten;

import reseat.fasten.HeadSize;
import reseat.fasten.ScrewThread;
import reseat.fasten.StrengthClass;

/**
 * Preload and torque of a screw. Lengths in millimetres, forces in newtons, stresses in newtons per
 * square millimetre, torques in newton metres, unless a method says otherwise. Nothing here checks
 * its input or makes assumptions: {@link TorqueAdvisor} does.
 *
 * <p>Sources: VDI 2230 in the form F · X that Bossard prints, the torsion section fully plastic
 * (editions of 2001 and later); ISO 898-7:1992 for breaking in torsion; MISUMI's starting torque;
 * the screw equation of Shigley's text.
 */
public final class ScrewFormulas {

    /** Estimate of the ISO 898-7 ratio for classes that the standard does not cover. */
    public static final double TORSION_RATIO_ESTIMATE = 0.84;

    private ScrewFormulas() {}

    /**
     * Returns the preload at which tension and torsion together reach a share of the yield stress:
     * F = share · Rp · As / sqrt(1 + 3 [1.5 (d2/d0) (P/(pi d2) + 1.155 mu)]²) with d0 = (d2 +
     * d3)/2.
     *
     * @param yield yield stress
     * @param share share of it, 0.9 in VDI 2230
     * @param mu friction of the thread
     * @return newtons
     */
    public static double assemblyPreloadN(
            ScrewThread thread, double yield, double share, double mu) {
        double d2 = thread.pitchDiameterMm();
        double d0 = (d2 + thread.rootDiameterMm()) / 2;
        double slope = thread.pitchMm() / (Math.PI * d2) + mu / cosHalfFlank(thread);
        double torsion = 1.5 * (d2 / d0) * slope;
        return share * yield * thread.stressAreaMm2() / Math.sqrt(1 + 3 * torsion * torsion);
    }

    /**
     * Returns the arm of the torque in the thread in millimetres: 0.16 P + 0.58 d2 mu (0.52 for 15
     * degree flanks).
     */
    public static double threadArmMm(ScrewThread thread, double mu) {
        double half =
                thread.series() == ScrewThread.Series.FORMING ? 0.5 / cosHalfFlank(thread) : 0.58;
        return 0.16 * thread.pitchMm() + half * thread.pitchDiameterMm() * mu;
    }

    /**
     * Returns the arm of the torque under the head in millimetres: mu · (dw + dh)/4, over sin 45
     * degrees for a cone of 90 degrees, 0 where the head does not bear.
     *
     * @param bearing how the head bears
     * @param bearingMm outer diameter of the bearing face, dw
     * @param holeMm diameter of the hole under it, dh
     * @param mu friction under the head
     */
    public static double headArmMm(
            HeadSize.Bearing bearing, double bearingMm, double holeMm, double mu) {
        double flat = (bearingMm + holeMm) / 4 * mu;
        return switch (bearing) {
            case FLAT -> flat;
            case CONE -> flat / Math.sin(Math.PI / 4);
            case NONE -> 0;
        };
    }

    /**
     * Returns the tightening torque on a flat head: M = F (0.16 P + 0.58 d2 mu + (dw + dh)/4 mu).
     *
     * @return newton metres
     */
    public static double tighteningTorqueNm(
            ScrewThread thread, double preloadN, double mu, double bearingMm, double holeMm) {
        double arm =
                threadArmMm(thread, mu) + headArmMm(HeadSize.Bearing.FLAT, bearingMm, holeMm, mu);
        return preloadN * arm / 1000;
    }

    /** Returns the nut factor K = arm/d that makes M = K d F the same torque. */
    public static double nutFactor(ScrewThread thread, double mu, double bearingMm, double holeMm) {
        double arm =
                threadArmMm(thread, mu) + headArmMm(HeadSize.Bearing.FLAT, bearingMm, holeMm, mu);
        return arm / thread.diameterMm();
    }

    /** Returns M = K d F in newton metres. */
    public static double nutFactorTorqueNm(double k, double diameterMm, double preloadN) {
        return k * diameterMm * preloadN / 1000;
    }

    /**
     * Returns the least breaking torque in pure torsion: X · Rm · pi/16 · d3min³ with d3min = d2min
     * - 0.616025 P (ISO 898-7). Compare with the torque that passes through the thread, not with
     * the whole tightening torque. Classes that the standard does not cover take X = 0.84, an
     * estimate; threads without limits their nominal root.
     *
     * @return newton metres
     */
    public static double breakingTorqueNm(ScrewThread thread, StrengthClass strength) {
        double core =
                thread.limits()
                        .filter(limits -> thread.series().metricProfile())
                        .map(limits -> limits.pitchMinMm() - 0.616025 * thread.pitchMm())
                        .orElse(thread.rootDiameterMm());
        double ratio = strength.torsionRatio().orElse(TORSION_RATIO_ESTIMATE);
        return ratio * strength.rmMin() * Math.PI / 16 * core * core * core / 1000;
    }

    /**
     * Returns MISUMI's fastening torque T = 0.35 k (1 + 1/Q) sy As d.
     *
     * @param k torque coefficient
     * @param q tightening coefficient, 1 or more
     * @param yield yield stress
     * @param stressAreaMm2 stress area
     * @param diameterMm nominal diameter
     * @return newton metres
     */
    public static double fasteningTorqueNm(
            double k, double q, double yield, double stressAreaMm2, double diameterMm) {
        return 0.35 * k * (1 + 1 / q) * yield * stressAreaMm2 * diameterMm / 1000;
    }

    /** Returns the axial force at 70 % of yield, F = 0.7 sy As, in newtons. */
    public static double fasteningForceN(double yield, double stressAreaMm2) {
        return 0.7 * yield * stressAreaMm2;
    }

    /**
     * Returns the torque of the full screw equation, T = F d2/2 (tan l + f sec a)/(1 - f tan l sec
     * a) + F fc dc/2, in any consistent units.
     *
     * @param force axial force
     * @param pitchDiameter pitch diameter
     * @param pitch pitch (single start)
     * @param halfAngleDegrees half the flank angle
     * @param thread friction of the thread
     * @param collar friction under the head
     * @param collarDiameter mean diameter of the bearing face
     */
    public static double screwEquationTorque(
            double force,
            double pitchDiameter,
            double pitch,
            double halfAngleDegrees,
            double thread,
            double collar,
            double collarDiameter) {
        double lead = pitch / (Math.PI * pitchDiameter);
        double friction = thread / Math.cos(Math.toRadians(halfAngleDegrees));
        return force * pitchDiameter / 2 * (lead + friction) / (1 - lead * friction)
                + force * collar * collarDiameter / 2;
    }

    /**
     * Returns the preload that is left, given the scatter of the tool: greatest over the tightening
     * factor alphaA.
     *
     * @param greatestN preload at the lowest friction
     * @param alphaA tightening factor, 1 or more
     */
    public static double leastPreloadN(double greatestN, double alphaA) {
        return greatestN / alphaA;
    }

    private static double cosHalfFlank(ScrewThread thread) {
        return Math.cos(Math.toRadians(thread.halfFlankDegrees()));
    }
}
