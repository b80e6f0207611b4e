package reseat.internal.fasten;

import reseat.fasten.FastenerTables;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueRequest;

/** The way in from the exported package. */
public final class TorqueEstimates {

    private TorqueEstimates() {}

    /** Estimates, or throws with all that is missing. */
    public static TorqueEstimate estimate(FastenerTables tables, TorqueRequest request) {
        return CompleteRequest.estimate(tables, request);
    }
}
