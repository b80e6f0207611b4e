package reseat.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.check.Severity;
import reseat.fasten.FastenerInputException;
import reseat.model.Device;
import reseat.model.ScrewType;

/** Finds names of threads, heads, drives, classes and materials that no table has. */
public final class UnknownNamesCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "fastener-name-unknown",
                    "Unknown fastener name",
                    "A thread, head, drive, strength class or material that no table has.",
                    "Nothing can be computed for the screws it belongs to, and other checks pass them over.",
                    Severity.ERROR,
                    List.of("screws", "data"),
                    List.of());

    private final BoltedFacts facts;

    /** Makes the check. */
    public UnknownNamesCheck(BoltedFacts facts) {
        this.facts = facts;
    }

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        Device device = input.device();
        for (ScrewType type : device.screwTypes().values()) {
            String at = "/screwTypes/" + type.id();
            look(found, device, at, "/thread", () -> facts.tables().thread(type.thread()));
            look(found, device, at, "/head", () -> facts.tables().headForm(type.head()));
            look(found, device, at, "/drive", () -> facts.tables().drives().drive(type.drive()));
            type.strengthClass()
                    .ifPresent(
                            name ->
                                    look(
                                            found,
                                            device,
                                            at,
                                            "/class",
                                            () -> facts.tables().strengthClass(name)));
        }
        for (BoltedFacts.Screwed screw : facts.screws(input)) {
            String id = screw.joint().id();
            screw.seat()
                    .thread()
                    .ifPresent(
                            name ->
                                    seat(
                                            found,
                                            device,
                                            id,
                                            "thread",
                                            () -> facts.tables().thread(name)));
            screw.seat()
                    .material()
                    .ifPresent(
                            name ->
                                    seat(
                                            found,
                                            device,
                                            id,
                                            "material",
                                            () -> facts.tables().material(name)));
        }
        return found;
    }

    private static void look(
            List<Finding> found, Device device, String pointer, String field, Supplier<?> lookUp) {
        try {
            Objects.requireNonNull(lookUp.get());
        } catch (FastenerInputException e) {
            found.add(
                    new Finding(
                            INFO.id(),
                            INFO.severity(),
                            device.origin(pointer + field),
                            pointer,
                            INFO.title(),
                            String.valueOf(e.getMessage()),
                            List.of(),
                            "Correct the name, or add a row to the shop's tables."));
        }
    }

    private static void seat(
            List<Finding> found, Device device, String joint, String field, Supplier<?> lookUp) {
        try {
            Objects.requireNonNull(lookUp.get());
        } catch (FastenerInputException e) {
            found.add(
                    BoltedFacts.finding(
                            INFO,
                            INFO.severity(),
                            device,
                            joint,
                            field,
                            String.valueOf(e.getMessage()),
                            List.of(),
                            "Correct the name, or add a row to the shop's tables."));
        }
    }
}
