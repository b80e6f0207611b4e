package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.fasten.FastenerTables;
import reseat.internal.check.BoltedFacts;
import reseat.internal.check.CutDepthCheck;
import reseat.internal.check.DriveCheck;
import reseat.internal.check.ReachCheck;
import reseat.internal.check.ReuseCheck;
import reseat.internal.check.TorqueAgreementCheck;
import reseat.internal.check.TorqueLimitCheck;
import reseat.internal.check.TorqueMissingCheck;
import reseat.internal.check.UnknownNamesCheck;
import reseat.internal.check.WrongScrewCheck;

/** The checks of screws, seats, drives and cuts. */
public final class FastenerChecks {

    private FastenerChecks() {}

    /**
     * Returns the checks, in the order in which they are best read.
     *
     * @param tables tables to look up in
     */
    public static List<Check> all(FastenerTables tables) {
        BoltedFacts facts = new BoltedFacts(tables);
        List<Check> checks = new ArrayList<>();
        checks.add(new UnknownNamesCheck(facts));
        checks.add(new WrongScrewCheck(facts));
        checks.addAll(ReachCheck.all(facts));
        checks.add(new TorqueLimitCheck(facts));
        checks.add(new TorqueMissingCheck(facts));
        checks.add(new TorqueAgreementCheck(facts));
        checks.addAll(DriveCheck.all(facts));
        checks.addAll(ReuseCheck.all(facts));
        checks.addAll(CutDepthCheck.all());
        return List.copyOf(checks);
    }

    /**
     * Runs all of them.
     *
     * @param tables tables to look up in
     * @param input what to look at
     * @return findings, worst first
     */
    public static List<Finding> run(FastenerTables tables, CheckInput input) {
        return all(tables).stream().flatMap(check -> check.on(input).stream()).sorted().toList();
    }
}
