package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.internal.check.CutDepthCheck;
import reseat.internal.check.DriveCheck;
import reseat.internal.check.ReachCheck;
import reseat.internal.check.ReuseCheck;
import reseat.internal.check.TorqueAgreementCheck;
import reseat.internal.check.TorqueLimitCheck;
import reseat.internal.check.TorqueMissingCheck;
import reseat.internal.check.UnknownNamesCheck;
import reseat.internal.check.WrongScrewCheck;

/** The checks included in the toolkit. */
public final class Checks {

    private static final List<Check> BUILT_IN = make();

    private Checks() {}

    /**
     * Returns the checks included in the toolkit, in the order best suited to readers. They use the
     * {@linkplain CheckInput#tables() tables of their input}.
     */
    public static List<Check> builtIn() {
        return BUILT_IN;
    }

    private static List<Check> make() {
        List<Check> checks = new ArrayList<>();
        checks.add(new UnknownNamesCheck());
        checks.add(new WrongScrewCheck());
        checks.addAll(ReachCheck.all());
        checks.add(new TorqueLimitCheck());
        checks.add(new TorqueMissingCheck());
        checks.add(new TorqueAgreementCheck());
        checks.addAll(DriveCheck.all());
        checks.addAll(ReuseCheck.all());
        checks.addAll(CutDepthCheck.all());
        return List.copyOf(checks);
    }
}
