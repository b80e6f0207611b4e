package reseat.internal.files;

import static reseat.internal.files.FormatParts.group;
import static reseat.internal.files.FormatParts.idKeyed;
import static reseat.internal.files.FormatParts.may;
import static reseat.internal.files.FormatParts.must;
import static reseat.internal.files.FormatParts.value;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.files.JobFile;
import reseat.internal.files.Scalars.ScalarType;
import reseat.job.Job;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.text.QuoteText;

/** Reads job files. */
public final class JobReader {

    private static final Shape.Group JOB =
            group(
                    "job",
                    List.of(
                            must(
                                    "format",
                                    new Shape.Choice(List.of("reseat-job/1")),
                                    "The format."),
                            may("id", value(ScalarType.TEXT), "Id of the job."),
                            must("unit", value(ScalarType.TEXT), "Number of the unit."),
                            must("device", value(ScalarType.ID), "Id of the device."),
                            may("variant", value(ScalarType.ID), "Id of its variant."),
                            may(
                                    "cycles",
                                    idKeyed(value(ScalarType.COUNT), "a number of cycles"),
                                    "How often joints have been made.")));

    private JobReader() {}

    /** Reads a file; see {@code JobFiles.read}. */
    public static JobFile read(Path path) throws BadInputException {
        String file = path.toString();
        Problems problems = new Problems(file);
        Node.Fields fields = SmallFile.read(path, "job", JOB, problems);
        Look look = new Look(fields, fields.at());
        Look made = new Look(fields.get("cycles"), fields.at());
        Map<String, Integer> cycles = new LinkedHashMap<>();
        Map<String, Origin> origins = new LinkedHashMap<>();
        origins.put("", fields.at());
        fields.entries().forEach((key, entry) -> origins.put("/" + key, entry.value().at()));
        if (fields.get("cycles") instanceof Node.Fields map) {
            map.entries()
                    .forEach(
                            (joint, entry) -> {
                                made.count(joint).ifPresent(n -> cycles.put(joint, n));
                                origins.put("/cycles/" + joint, entry.keyAt());
                            });
        }
        for (String key : List.of("id", "unit")) {
            if (look.text(key).filter(String::isBlank).isPresent()) {
                problems.error(look.at(key), key + ": found only spaces, expected text");
            }
        }
        if (problems.hasErrors()) {
            throw new BadInputException(problems.sorted());
        }
        return new JobFile(
                new Job(
                        look.text("id", stem(path)),
                        look.text("unit", ""),
                        look.text("device", ""),
                        look.text("variant"),
                        cycles),
                origins);
    }

    private static String stem(Path path) {
        String name = String.valueOf(path.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** Checks a job against a device; see {@code JobFile.problems}. */
    public static List<Problem> problems(JobFile file, Device device) {
        Job job = file.job();
        List<Problem> problems = new ArrayList<>();
        if (!job.device().equals(device.id())) {
            problems.add(
                    Problem.error(
                            at(file, "/device"),
                            "device: this job is for "
                                    + QuoteText.of(job.device())
                                    + ", and the device is "
                                    + QuoteText.of(device.id())));
            return problems;
        }
        for (String joint : job.cycles().keySet()) {
            if (!device.joints().containsKey(joint)) {
                problems.add(
                        Problem.error(
                                at(file, "/cycles/" + joint),
                                "cycles: there is no joint "
                                        + QuoteText.of(joint)
                                        + " in "
                                        + device
                                        + "."
                                        + Words.hint(joint, device.joints().keySet(), "joints")));
            }
        }
        return problems;
    }

    private static Origin at(JobFile file, String pointer) {
        Origin whole = file.origins().getOrDefault("", Origin.MEMORY);
        return file.origins().getOrDefault(pointer, whole);
    }
}
