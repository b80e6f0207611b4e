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
            SCREW_YIELD("the screw yields"),
            /** The screw is twisted off; counts the torque in the thread alone. */
            SCREW_TORSION("the screw is twisted off"),
            /** The thread of the screw strips. */
            SCREW_THREAD("the thread of the screw strips"),
            /** The thread of the seat strips. */
            SEAT_THREAD("the thread of the seat strips"),
            /** The insert is pulled out of its part. */
            INSERT("the insert is pulled out"),
            /** The driver or the recess fails. */
            DRIVE("the driver or the recess gives way");

            private final String words;

            Kind(String words) {
                this.words = words;
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
