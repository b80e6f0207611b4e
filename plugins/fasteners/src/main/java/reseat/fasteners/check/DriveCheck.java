package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.Drive;
import reseat.fasten.DriverFit;
import reseat.model.Severity;
import reseat.model.Tool;
import reseat.model.Way;

/** Looks at whether the driver fits the recess, and whether the shop has it. */
final class DriveCheck extends JointCheck {

    private static final CheckInfo MISMATCH =
            new CheckInfo(
                    "drive-mismatch",
                    "Driver does not fit the recess",
                    "A way to release a screw whose tool does not fit the recess, or looks as if it did and cams out.",
                    "A rounded recess turns a five-minute job into drilling.",
                    Severity.ERROR,
                    List.of("screws", "tools"),
                    List.of());

    private static final CheckInfo NOT_THERE =
            new CheckInfo(
                    "driver-not-in-shop",
                    "Driver not in the shop",
                    "A screw for which the shop's list has no driver that fits.",
                    "The job stops with the device open.",
                    Severity.ERROR,
                    List.of("screws", "tools", "stock"),
                    List.of(),
                    Set.of(CheckInfo.Need.DRIVES),
                    CheckInfo.API);

    private DriveCheck(CheckInfo info) {
        super(info);
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new DriveCheck(MISMATCH), new DriveCheck(NOT_THERE));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            Optional<Drive> recess = input.tables().drives().find(screw.type().drive());
            if (recess.isEmpty()) {
                continue;
            }
            if (is(MISMATCH)) {
                screw.joint()
                        .ways()
                        .values()
                        .forEach(way -> mismatch(input, screw, way, recess.get(), found));
            } else if (told.add(screw.type().id())) {
                notThere(input, screw, recess.get(), found);
            }
        }
        return found;
    }

    private void mismatch(
            CheckInput input,
            BoltedFacts.Screwed screw,
            Way way,
            Drive recess,
            List<Finding> found) {
        Tool tool = input.device().tools().get(way.tool());
        Optional<Drive> driver =
                tool == null
                        ? Optional.empty()
                        : tool.drive().flatMap(d -> input.tables().drives().find(d));
        if (driver.isEmpty()) {
            return;
        }
        DriverFit fit = input.tables().drives().fit(driver.get(), recess);
        if (!fit.good()) {
            found.add(
                    finding(
                            input,
                            fit.verdict() == DriverFit.Verdict.LOOSE
                                    ? Severity.WARNING
                                    : MISMATCH.severity(),
                            screw.joint().id(),
                            "ways/" + way.id() + "/tool",
                            way.tool()
                                    + " ("
                                    + driver.get().id()
                                    + ") in the "
                                    + recess.id()
                                    + " recess of "
                                    + screw.type().id()
                                    + ": "
                                    + fit.why()
                                    + ".",
                            List.of(
                                    "driver " + driver.get().title() + " " + driver.get().size(),
                                    "recess " + recess.title() + " " + recess.size(),
                                    fit.source()),
                            "Use a " + recess.id() + " driver."));
        }
    }

    private void notThere(
            CheckInput input, BoltedFacts.Screwed screw, Drive recess, List<Finding> found) {
        List<DriverFit> fits = new ArrayList<>();
        for (String id : input.drives().orElseThrow()) {
            input.tables()
                    .drives()
                    .find(id)
                    .ifPresent(d -> fits.add(input.tables().drives().fit(d, recess)));
        }
        if (fits.stream().anyMatch(DriverFit::good)) {
            return;
        }
        List<String> near =
                fits.stream()
                        .filter(fit -> fit.verdict() != DriverFit.Verdict.BLOCKED)
                        .map(fit -> fit.driver().id() + " is there, but " + fit.why())
                        .toList();
        found.add(
                finding(
                        input,
                        screw.joint().id(),
                        "screw",
                        "The shop has no driver for the "
                                + recess.id()
                                + " recess of "
                                + screw.type().id()
                                + ".",
                        near,
                        "Get a " + recess.id() + " driver before the device is opened."));
    }
}
