package reseat.fasten;

import java.util.List;
import java.util.Optional;

/**
 * The torque of one seat: given by the maker, stated without a source, taken from the family's
 * table, or estimated, in this order of preference.
 *
 * @param basis which of these
 * @param valueNm the torque in newton metres
 * @param lowNm lower end of its window in newton metres; the value itself where no window is known
 * @param highNm upper end of its window in newton metres; the value itself where no window is known
 * @param from its source, or what governs the estimate
 * @param estimate the estimate, also beside a given torque where one can be made
 * @param noEstimate why there is no estimate; empty if there is one
 * @param cautions warnings for the user
 */
public record TorqueAdvice(
        Basis basis,
        double valueNm,
        double lowNm,
        double highNm,
        String from,
        Optional<TorqueEstimate> estimate,
        String noEstimate,
        List<String> cautions) {

    public TorqueAdvice {
        cautions = List.copyOf(cautions);
    }

    /** The basis of a torque. */
    public enum Basis {
        /** Given for this seat by the maker, with the source stated. */
        MAKER,
        /** Stated for this seat in the device file, without a source. */
        STATED,
        /** Taken from the table of the device family. */
        FAMILY,
        /** Computed. */
        ESTIMATE
    }
}
