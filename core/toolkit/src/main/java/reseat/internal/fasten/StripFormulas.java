package reseat.internal.fasten;

/**
 * Stripping of threads. Lengths in millimetres, stresses in newtons per square millimetre, forces
 * in newtons.
 *
 * <p>Sources: FED-STD-H28/2B as Machinery's Handbook prints it; Bickford and Nassar for the worked
 * example; the NASA-origin pull-out with one third of the pitch cylinder.
 */
public final class StripFormulas {

    private static final double TAN_30 = 0.57735;

    private StripFormulas() {}

    /**
     * Returns the shear area of the hole's thread: pi/P · Le · Ds (P/2 + 0.57735 (Ds - En)).
     *
     * @param pitchMm pitch P
     * @param engagementMm length of engagement Le
     * @param screwMajorMm outer diameter of the screw Ds, the least for a safe answer
     * @param holePitchMm pitch diameter of the hole En, the largest for a safe answer
     * @return square millimetres
     */
    public static double holeShearAreaMm2(
            double pitchMm, double engagementMm, double screwMajorMm, double holePitchMm) {
        return Math.PI
                / pitchMm
                * engagementMm
                * screwMajorMm
                * (pitchMm / 2 + TAN_30 * (screwMajorMm - holePitchMm));
    }

    /**
     * Returns the shear area of the screw's thread: pi/P · Le · Kn (P/2 + 0.57735 (Es - Kn)).
     *
     * @param pitchMm pitch P
     * @param engagementMm length of engagement Le
     * @param holeMinorMm minor diameter of the hole Kn, the largest for a safe answer
     * @param screwPitchMm pitch diameter of the screw Es, the least for a safe answer
     * @return square millimetres
     */
    public static double screwShearAreaMm2(
            double pitchMm, double engagementMm, double holeMinorMm, double screwPitchMm) {
        return Math.PI
                / pitchMm
                * engagementMm
                * holeMinorMm
                * (pitchMm / 2 + TAN_30 * (screwPitchMm - holeMinorMm));
    }

    /**
     * Returns the engagement at which a screw of the same strength as the hole breaks before it
     * strips: Le = 2 At / (pi Kn (1/2 + 0.57735/P (Es - Kn))).
     *
     * @return millimetres
     */
    public static double equalStrengthEngagementMm(
            double stressAreaMm2, double pitchMm, double holeMinorMm, double screwPitchMm) {
        return 2
                * stressAreaMm2
                / (Math.PI * holeMinorMm * (0.5 + TAN_30 / pitchMm * (screwPitchMm - holeMinorMm)));
    }

    /**
     * Returns J, the strength of the screw's thread over that of the hole's; where it is above 1
     * the engagement needed is J times that for equal strength.
     */
    public static double strengthRatio(
            double screwShearAreaMm2, double screwRm, double holeShearAreaMm2, double holeRm) {
        return screwShearAreaMm2 * screwRm / (holeShearAreaMm2 * holeRm);
    }

    /**
     * Returns the engagement at which the thread of the hole bears a load.
     *
     * @param loadN load
     * @param shear shear strength of the hole's material
     * @param pitchMm pitch
     * @param screwMajorMm outer diameter of the screw
     * @param holePitchMm pitch diameter of the hole
     * @return millimetres
     */
    public static double engagementForLoadMm(
            double loadN, double shear, double pitchMm, double screwMajorMm, double holePitchMm) {
        return loadN / (shear * holeShearAreaMm2(pitchMm, 1, screwMajorMm, holePitchMm));
    }

    /**
     * Returns the cautious pull-out load: pi d2 tau L / 3, L counting full threads alone.
     *
     * @return newtons
     */
    public static double pullOutN(double pitchDiameterMm, double shear, double engagementMm) {
        return Math.PI * pitchDiameterMm * shear * engagementMm / 3;
    }

    /**
     * Returns the load that strips a thread formed in thermoplastic: share · tau pi d Le.
     *
     * @param share share of the cylinder that shears, about 0.5 to 0.6
     * @return newtons
     */
    public static double formedThreadN(
            double diameterMm, double shear, double engagementMm, double share) {
        return share * shear * Math.PI * diameterMm * engagementMm;
    }
}
