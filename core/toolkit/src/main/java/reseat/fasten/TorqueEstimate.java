package reseat.fasten;

import java.util.List;

/**
 * A torque that was computed, not given; in newton metres.
 *
 * @param valueNm the torque: the least of all limits at their cautious share
 * @param lowNm lower end of the window: what a hand driver set to the value may give
 * @param highNm upper end of the window: the least of all limits at their utmost share
 * @param governing the limit that decides the value
 * @param limits every limit, the lowest first
 * @param preloadLowN preload at the value where friction is high, in newtons
 * @param preloadHighN preload at the value where friction is low, in newtons
 * @param inputs what went in, each with where it comes from
 * @param assumptions inputs that nobody told and that were assumed; a sentence each
 * @param cautions what a person must know; the first says that this is an estimate
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

    /** The caution of every torque that its maker did not give. */
    public static final String CAUTION =
            "This torque is an estimate computed from tables, not a value of the maker. The maker's service document"
                    + " and local codes come first, and the work belongs to qualified people.";

    public TorqueEstimate {
        limits = List.copyOf(limits);
        inputs = List.copyOf(inputs);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    /**
     * Something that gives way first.
     *
     * @param kind what
     * @param cautiousNm torque at the cautious share of it, in newton metres
     * @param utmostNm torque at the utmost share of it, in newton metres
     * @param told how it was computed, with numbers
     */
    public record Limit(Kind kind, double cautiousNm, double utmostNm, String told) {

        /** What gives way. */
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
            /** The driver or the recess gives way. */
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
     * Something that went in.
     *
     * @param name what
     * @param value number with unit, or name
     * @param from where it comes from
     */
    public record Input(String name, String value, String from) {}
}
