package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;

/** The checks of hazards, power, covers, wear and tests. */
public final class DeviceChecks {

    private DeviceChecks() {}

    /** Returns the checks, in the order in which they are best read. */
    public static List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(new CellHazardCheck());
        checks.add(new CellKindCheck());
        checks.add(new SignalWordCheck());
        checks.add(new MagnetCheck());
        checks.add(new CellToolCheck());
        checks.addAll(PowerCheck.all());
        checks.add(new IsolatorCheck());
        checks.add(new CoverCheck());
        checks.add(new WornConnectorCheck());
        checks.add(new UntestedCheck());
        return List.copyOf(checks);
    }
}
