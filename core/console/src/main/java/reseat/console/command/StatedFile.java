package reseat.console.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file of statements: one {@code name = value} per line, # starts a comment. */
final class StatedFile {

    private StatedFile() {}

    /** Reads it; reports all invalid lines together and fails the command. */
    static Map<String, String> read(Path file) throws IOException {
        Map<String, String> stated = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        int number = 0;
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            number++;
            String text = line.replaceFirst("(^|\\s)#.*", "").strip();
            if (text.isEmpty()) {
                continue;
            }
            int equals = text.indexOf('=');
            String name = equals < 0 ? text : text.substring(0, equals).strip();
            String at = file + ":" + number + ":1: ";
            if (equals < 1) {
                faults.add(at + "found \"" + text + "\", expected name = value");
            } else if (stated.containsKey(name)) {
                faults.add(at + name + " is stated twice");
            } else {
                stated.put(name, text.substring(equals + 1).strip());
            }
        }
        if (!faults.isEmpty()) {
            throw new BadInput(String.join("\n", faults));
        }
        return stated;
    }
}
