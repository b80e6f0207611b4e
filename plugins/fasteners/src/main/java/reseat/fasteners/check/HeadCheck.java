package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.Drive;
import reseat.fasten.HeadSize;
import reseat.fasten.ScrewThread;
import reseat.model.ScrewType;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Looks at whether thread, head and recess of a screw can belong together. */
final class HeadCheck extends JointCheck {

    private static final CheckInfo HEAD =
            new CheckInfo(
                    "head-implausible",
                    "Head and thread do not belong together",
                    "A head no wider than the thread or more than four times as wide; one that lies far from the head of its form and thread in the standard; one higher than two threads or than it is wide.",
                    "One of the sizes is wrong, and with it bearing, torque and what the screw is taken for. ISO 7045, 14583, 1207, 14580, 4762, 7380-1, 7046 and 10642, DIN 7984; the shares are common practice, no source.",
                    Severity.WARNING,
                    List.of("screws", "data"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "offPercent",
                                    "how far a head may be off the one of the standard",
                                    "%",
                                    "40")));

    private static final CheckInfo RECESS =
            new CheckInfo(
                    "recess-implausible",
                    "Recess does not belong to the screw",
                    "A recess that leaves the head no wall, or that is far larger or smaller than the recesses which screws of this thread are made with.",
                    "The drive or the head is stated wrongly: the bit that is laid out does not fit. Widths of ISO 10664, ISO 4757, ISO 4762 and ISO 2936 and drives by screw of the ISO, DIN and JIS tables; the shares are common practice, no source.",
                    Severity.WARNING,
                    List.of("screws", "tools", "data"),
                    List.of());

    /** A recess of this share of its head has no wall left; the standards stay below 0.6. */
    private static final double NO_WALL = 0.9;

    private static final double THIN_WALL = 0.75;

    private HeadCheck(CheckInfo info) {
        super(info);
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new HeadCheck(HEAD), new HeadCheck(RECESS));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (ScrewType type : input.device().screwTypes().values()) {
            Optional<ScrewThread> thread =
                    BoltedFacts.known(() -> input.tables().thread(type.thread()));
            Optional<HeadSize.Bearing> bearing =
                    BoltedFacts.known(() -> input.tables().bearing(type.head()));
            if (thread.isPresent() && bearing.isPresent()) {
                if (is(HEAD)) {
                    head(input, type, thread.get(), bearing.get(), found);
                } else {
                    recess(input, type, thread.get(), bearing.get(), found);
                }
            }
        }
        return found;
    }

    private void head(
            CheckInput input,
            ScrewType type,
            ScrewThread thread,
            HeadSize.Bearing bearing,
            List<Finding> found) {
        if (bearing == HeadSize.Bearing.NONE) {
            return;
        }
        double d = thread.diameterMm();
        type.headDiameterMm().ifPresent(head -> width(input, type, thread, head, found));
        OptionalDouble height = type.headHeightMm();
        if (height.isPresent()
                && (height.getAsDouble() > 2 * d
                        || height.getAsDouble()
                                > type.headDiameterMm().orElse(Double.POSITIVE_INFINITY))) {
            found.add(
                    about(
                            input,
                            type,
                            "headHeight",
                            HEAD.severity(),
                            "A head "
                                    + NumberText.mm(height.getAsDouble())
                                    + " high does not belong to "
                                    + thread.designation()
                                    + ".",
                            List.of()));
        }
    }

    private void width(
            CheckInput input,
            ScrewType type,
            ScrewThread thread,
            double head,
            List<Finding> found) {
        double d = thread.diameterMm();
        String message =
                "A head of " + NumberText.mm(head) + " does not belong to " + thread.designation();
        if (head <= 1.1 * d || head > 4 * d) {
            found.add(
                    about(
                            input,
                            type,
                            "headDiameter",
                            Severity.ERROR,
                            message + ".",
                            List.of("heads are 1.5 to 3 times as wide as their thread")));
            return;
        }
        double off = input.number("offPercent") / 100;
        BoltedFacts.known(() -> input.tables().headSize(type.head(), thread))
                .flatMap(size -> size)
                .filter(size -> size.headMm().isPresent())
                .filter(size -> Math.abs(head / size.headMm().getAsDouble() - 1) > off)
                .ifPresent(
                        size ->
                                found.add(
                                        about(
                                                input,
                                                type,
                                                "headDiameter",
                                                HEAD.severity(),
                                                message
                                                        + " with a head of the form "
                                                        + type.head()
                                                        + ".",
                                                List.of(
                                                        "the standard has "
                                                                + NumberText.mm(
                                                                        size.headMm()
                                                                                .getAsDouble()),
                                                        size.source()))));
    }

    private void recess(
            CheckInput input,
            ScrewType type,
            ScrewThread thread,
            HeadSize.Bearing bearing,
            List<Finding> found) {
        Optional<Drive> drive = input.tables().drives().find(type.drive());
        if (drive.isEmpty()) {
            return;
        }
        OptionalDouble head =
                bearing == HeadSize.Bearing.NONE
                        ? OptionalDouble.of(thread.diameterMm())
                        : type.headDiameterMm();
        Recesses recesses = new Recesses(input.tables());
        OptionalDouble across = recesses.leastAcrossMm(drive.get());
        if (head.isPresent()
                && across.isPresent()
                && across.getAsDouble() > THIN_WALL * head.getAsDouble()) {
            boolean none = across.getAsDouble() >= NO_WALL * head.getAsDouble();
            found.add(
                    about(
                            input,
                            type,
                            "drive",
                            none ? Severity.ERROR : RECESS.severity(),
                            "A recess "
                                    + drive.get().id()
                                    + ", "
                                    + NumberText.mm(across.getAsDouble())
                                    + " across, "
                                    + (none ? "does not go into" : "leaves hardly a wall in")
                                    + " a head of "
                                    + NumberText.mm(head.getAsDouble())
                                    + ".",
                            List.of("recesses of the standards take less than 0.6 of their head")));
            return;
        }
        recesses.unlike(drive.get(), thread)
                .ifPresent(
                        usual ->
                                found.add(
                                        about(
                                                input,
                                                type,
                                                "drive",
                                                RECESS.severity(),
                                                "A recess "
                                                        + drive.get().id()
                                                        + " does not belong to "
                                                        + thread.designation()
                                                        + ".",
                                                List.of("usual: " + String.join(", ", usual)))));
    }

    private Finding about(
            CheckInput input,
            ScrewType type,
            String field,
            Severity severity,
            String message,
            List<String> evidence) {
        String pointer = "/screwTypes/" + type.id();
        return new Finding(
                info().id(),
                severity,
                input.device().origin(pointer + "/" + field),
                pointer,
                info().title(),
                type.id() + ": " + message,
                evidence,
                "Measure the screw, and correct the type.");
    }
}
