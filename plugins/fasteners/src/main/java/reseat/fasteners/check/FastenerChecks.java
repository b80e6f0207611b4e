package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInput;

/** The checks of screws and of cuts. */
public final class FastenerChecks {

    private FastenerChecks() {}

    /**
     * Returns the checks, in the order in which they are best read. They look up in the {@linkplain
     * CheckInput#tables() tables of their input}.
     */
    public static List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(new UnknownNamesCheck());
        checks.addAll(HeadCheck.all());
        checks.add(new ThreadMatchCheck());
        checks.add(new WrongScrewCheck());
        checks.addAll(ReachCheck.all());
        checks.add(new TorqueLimitCheck());
        checks.add(new TorqueNeedCheck());
        checks.add(new TorqueMissingCheck());
        checks.add(new TorqueAgreementCheck());
        checks.addAll(DriveCheck.all());
        checks.addAll(ReuseCheck.all());
        checks.addAll(BossCheck.all());
        checks.addAll(CutDepthCheck.all());
        checks.add(new CutExtentCheck());
        checks.addAll(BondCheck.all());
        return List.copyOf(checks);
    }
}
