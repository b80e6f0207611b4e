package reseat.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Question;
import reseat.testkit.PluginContract.Breaches;

/** The contract of device families. */
final class FamilyContract {

    private static final long QUICK = 5_000;

    private final DeviceFamily family;
    private final List<DeviceFamily> families;
    private final Breaches breaches;

    FamilyContract(DeviceFamily family, List<DeviceFamily> families, Breaches breaches) {
        this.family = family;
        this.families = families;
        this.breaches = breaches;
    }

    /** Verifies and returns a device of each template. */
    List<Device> verify() {
        if (!Arrays.equals(defaults(), defaults())) {
            breaches.add(family.id() + ": its data differs when opened again");
        }
        bare();
        family.fastenerRows()
                .forEach(
                        (name, text) -> {
                            try {
                                FastenerTables.standard().withRows(name, text);
                            } catch (BadInputException e) {
                                breaches.add(family.id() + ": " + name + ": " + e.getMessage());
                            }
                        });
        List<Device> made = new ArrayList<>();
        for (DeviceTemplate template :
                breaches.listed(
                        "template", family::templates, DeviceTemplate::id, DeviceTemplate::title)) {
            made.addAll(verify(template));
        }
        return made;
    }

    /** Reads a device of little but a plug that cuts all supplies of the family. */
    private void bare() {
        String text =
                "format: reseat-device/1\nid: bare\nfamily: "
                        + family.id()
                        + "\nbase: it\nparts: {it: {kind: frame}, lead: {kind: part}}\n"
                        + "joints: {plug: {kind: clip, holds: [lead, it], cuts: %s}}\n";
        List<String> supplies =
                read(text.replace("%s", "[]"), untold -> {})
                        .map(device -> List.copyOf(device.supplies().keySet()))
                        .orElse(List.of());
        read("its data", text.replace("%s", supplies.toString()));
    }

    private byte[] defaults() {
        try (InputStream in = family.openDefaults()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Device> verify(DeviceTemplate template) {
        Map<String, String> usual = new LinkedHashMap<>();
        usual.put("id", "made");
        usual.put("name", "Made");
        usual.put("maker", "\"\"");
        List<Question> questions = template.questions();
        questions.forEach(question -> usual.put(question.id(), question.usual()));
        List<Device> made = new ArrayList<>();
        made(template, usual).ifPresent(made::add);
        for (Question question : questions) {
            List<String> others =
                    question.choices().isEmpty()
                            ? List.of("" + question.least(), "" + question.most())
                            : question.choices();
            for (String other : others) {
                if (!other.equals(question.usual())) {
                    Map<String, String> answers = new LinkedHashMap<>(usual);
                    answers.put(question.id(), other);
                    made(template, answers);
                }
            }
        }
        return made;
    }

    private Optional<Device> made(DeviceTemplate template, Map<String, String> answers) {
        String text = template.write(answers);
        if (!text.equals(template.write(answers))) {
            breaches.add("template " + template.id() + " writes another file the second time");
        }
        String what = "template " + template.id() + " with " + answers;
        Optional<Device> device = read(what, text);
        device.ifPresent(
                some -> {
                    if (!some.family().equals(family.id())) {
                        breaches.add(what + " creates a device of another family");
                    }
                    for (String part : some.parts().keySet()) {
                        if (!part.equals(some.base())) {
                            plans(what, some, part);
                        }
                    }
                });
        return device;
    }

    private void plans(String what, Device device, String part) {
        PlanResult result =
                new Planner()
                        .plan(
                                PlanRequest.of(device, new Goal.Free(List.of(part)))
                                        .with(Effort.ofExpansions(QUICK)));
        if (!(result instanceof PlanResult.Found)) {
            breaches.add(what + ": no plan frees " + part + ": " + result);
        }
    }

    private Optional<Device> read(String what, String text) {
        return read(text, problem -> breaches.add(family.id() + ": " + what + ": " + problem));
    }

    private Optional<Device> read(String text, Consumer<String> told) {
        try {
            Path file = Files.createTempFile("reseat-contract", ".yaml");
            try {
                Files.writeString(file, text, StandardCharsets.UTF_8);
                Reading reading = DeviceFiles.read(file, Optional.empty(), families);
                reading.problems()
                        .forEach(
                                problem ->
                                        told.accept(
                                                problem.toString()
                                                        .replace(file.toString(), "file")));
                return reading.device();
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
