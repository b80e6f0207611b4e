package reseat.fasten;

import java.util.List;

/**
 * A torque that was computed, not given; in newton metres.
 *
 * @param valueNm the torque: the least of all limits at their cautious share
 * @param lowNm lower end of the window: what a hand driver set to the value may deliver
 * @param highNm upper end of the window: the least of all limits at their utmost share
 * @param governing the limit that decides the value
 * @param limits every limit, the lowest first
 * @param preloadLowN preload at the value where friction is high, in newtons
 * @param preloadHighN preload at the value where friction is low, in newtons
 * @param inputs the inputs, each with its source
 * @param assumptions inputs that were not given and were assumed; a sentence each
 * @param cautions warnings for the user; the first says that this is an estimate
 */
public record TorqueEstimate(
        double valueNm,
        double lowNm,
        double highNm,
        Limit governing,
        List<Limit> limits,
        double preloadLowN,
        double preloadHighN,
        List<Input> inputs,
        List<String> assumptions,
        List<String> cautions) {

    /** The caution for every torque that is not given by the maker. */
    public static final String CAUTION =
            "This torque is an estimate computed from tables, not a value from the maker. The"
                    + " maker's service document and local codes take precedence, and"
                    + " the work must be"
                    + " done by qualified people.";

    public TorqueEstimate {
        limits = List.copyOf(limits);
        inputs = List.copyOf(inputs);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    /**
     * A limit: something that fails first.
     *
     * @param kind what
     * @param cautiousNm torque at the cautious share of it, in newton metres
     * @param utmostNm torque at the utmost share of it, in newton metres
     * @param told how it was computed, with numbers
     */
    public record Limit(Kind kind, double cautiousNm, double utmostNm, String told) {

        /** What fails. */
        public enum Kind {
            /** The screw yields under tension and torsion together. */
            SCREW_YIELD(
                    "the screw yields",
                    "VDI 2230: M = F (0.16 P + 0.58 d2 µ + (dw + dh)/4 µ), F at a share of yield"),
            /** The screw is twisted off; counts the torque in the thread alone. */
            SCREW_TORSION(
                    "the screw is twisted off",
                    "ISO 898-7: X Rm π/16 d3³, or the table of its standard, over the share of M"
                            + " in the thread"),
            /** The thread of the screw strips. */
            SCREW_THREAD(
                    "the thread of the screw strips",
                    "FED-STD-H28: shear area of the screw's thread times 0.6 Rm"),
            /** The thread of the seat strips. */
            SEAT_THREAD(
                    "the thread of the seat strips",
                    "FED-STD-H28: shear area of the hole's thread times its shear strength; formed"
                            + " in plastic π d L τ times a share"),
            /** The insert is pulled out of its part. */
            INSERT(
                    "the insert is pulled out",
                    "the pull-out load given, or π D L τ of the plastic times a share (common"
                            + " practice, no source)"),
            /** The part under the head is crushed. */
            HEAD_BEARING(
                    "the part under the head gives way",
                    "π/4 (dw² - dh²) times the tensile strength (common practice, no source)"),
            /** The driver or the recess fails. */
            DRIVE(
                    "the driver or the recess gives way",
                    "the least torque that drivers of this size are sold or tested for");

            private final String words;
            private final String formula;

            Kind(String words, String formula) {
                this.words = words;
                this.formula = formula;
            }

            /** Returns the formula and whose it is; core/docs/fasteners.md explains the letters. */
            public String formula() {
                return formula;
            }

            /** Returns what happens, as a clause. */
            public String words() {
                return words;
            }
        }
    }

    /**
     * An input of the estimate.
     *
     * @param name what
     * @param value number with unit, or name
     * @param from where it comes from
     */
    public record Input(String name, String value, String from) {}
}
