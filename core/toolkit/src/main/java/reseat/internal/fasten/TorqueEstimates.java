package reseat.internal.fasten;

import reseat.fasten.FastenerTables;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueRequest;

/** Entry point from the exported package. */
public final class TorqueEstimates {

    private TorqueEstimates() {}

    /** Estimates, or throws an exception that names all missing input. */
    public static TorqueEstimate estimate(FastenerTables tables, TorqueRequest request) {
        return CompleteRequest.estimate(tables, request);
    }
}
