package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.model.ScrewType;
import reseat.model.Severity;

/** Finds names of threads, heads, drives, classes and materials that no table has. */
final class UnknownNamesCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "fastener-name-unknown",
                    "Unknown fastener name",
                    "A thread, head, drive, strength class or material that no table has.",
                    "Nothing can be computed for the screws it belongs to, and other checks pass them over.",
                    Severity.ERROR,
                    List.of("screws", "data"),
                    List.of());

    private static final String REMEDY = "Correct the name, or add a row to the shop's tables.";

    UnknownNamesCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        FastenerTables tables = input.tables();
        for (ScrewType type : input.device().screwTypes().values()) {
            look(found, input, type, "thread", () -> tables.thread(type.thread()));
            look(found, input, type, "head", () -> tables.headForm(type.head()));
            look(found, input, type, "drive", () -> tables.drives().drive(type.drive()));
            type.strengthClass()
                    .ifPresent(
                            name ->
                                    look(
                                            found,
                                            input,
                                            type,
                                            "class",
                                            () -> tables.strengthClass(name)));
        }
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            screw.seat()
                    .thread()
                    .ifPresent(
                            name -> look(found, input, screw, "thread", () -> tables.thread(name)));
            screw.seat()
                    .material()
                    .ifPresent(
                            name ->
                                    look(
                                            found,
                                            input,
                                            screw,
                                            "material",
                                            () -> tables.material(name)));
        }
        return found;
    }

    private static void look(
            List<Finding> found,
            CheckInput input,
            ScrewType type,
            String field,
            Supplier<?> lookUp) {
        String pointer = "/screwTypes/" + type.id();
        unknown(lookUp)
                .ifPresent(
                        why ->
                                found.add(
                                        new Finding(
                                                INFO.id(),
                                                INFO.severity(),
                                                input.device().origin(pointer + "/" + field),
                                                pointer,
                                                INFO.title(),
                                                why,
                                                List.of(),
                                                REMEDY)));
    }

    private void look(
            List<Finding> found,
            CheckInput input,
            BoltedFacts.Screwed screw,
            String field,
            Supplier<?> lookUp) {
        unknown(lookUp)
                .ifPresent(
                        why ->
                                found.add(
                                        finding(
                                                input,
                                                screw.joint().id(),
                                                field,
                                                why,
                                                List.of(),
                                                REMEDY)));
    }

    private static Optional<String> unknown(Supplier<?> lookUp) {
        try {
            Objects.requireNonNull(lookUp.get());
            return Optional.empty();
        } catch (FastenerInputException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
