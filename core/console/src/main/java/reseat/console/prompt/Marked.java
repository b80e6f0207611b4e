package reseat.console.prompt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import reseat.check.Finding;
import reseat.files.DeviceFiles;
import reseat.files.ResolvedJson;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;

/** A device as the fixture of a check, with marks for the expected findings. */
final class Marked {

    /** An expected finding: its place, and words in its message. */
    private record Told(String pointer, String words) {
        static Told at(String pointer) {
            return new Told(pointer, pointer);
        }
    }

    private Marked() {}

    /**
     * Returns the device file with its marks.
     *
     * @param values the values found on the device
     */
    static String text(Device device, Collection<?> values) throws IOException {
        String plain = ResolvedJson.write(device);
        Device read = readAgain(plain);
        Map<Integer, List<String>> marks = new TreeMap<>();
        for (Object each : values) {
            Told told = told(each);
            int line = read.origin(told.pointer()).line();
            marks.computeIfAbsent(line, l -> new ArrayList<>()).add(told.words());
        }
        List<String> lines = new ArrayList<>();
        lines.add("# " + device + ", as it was in the console when the check was kept.");
        int number = 0;
        for (String line : plain.lines().toList()) {
            number++;
            String indent = " ".repeat(line.length() - line.stripLeading().length());
            for (String words : marks.getOrDefault(number, List.of())) {
                lines.add(indent + "# FINDING: " + words);
            }
            lines.add(line);
        }
        return String.join("\n", lines) + "\n";
    }

    /** The locations of facts in the new text, not in the original file. */
    private static Device readAgain(String text) throws IOException {
        Path file = Files.createTempFile("reseat-kept", ".json");
        try {
            Files.writeString(file, text, UTF_8);
            return DeviceFiles.read(file, Optional.empty(), List.of())
                    .device()
                    .orElseThrow(() -> new IOException("the device cannot be written"));
        } finally {
            Files.delete(file);
        }
    }

    private static Told told(Object value) {
        if (value instanceof Finding finding) {
            return new Told(finding.subject(), finding.message());
        }
        if (value instanceof Part part) {
            return Told.at("/parts/" + part.id());
        }
        if (value instanceof Joint joint) {
            return Told.at("/joints/" + joint.id());
        }
        Map<String, Object> fields = Plain.fields(value);
        return Told.at(fields == null ? "" : String.valueOf(fields.get("pointer")));
    }

    /** Returns whether a row has the location of its fact. */
    static boolean hasPointer(Object row) {
        return row.getClass().isRecord()
                && Arrays.stream(row.getClass().getRecordComponents())
                        .anyMatch(component -> component.getName().equals("pointer"));
    }
}
