package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** core/docs/lookups-json.md against what the commands print. */
class LookupsJsonTest {

    private static final Pattern EXAMPLE =
            Pattern.compile("```sh\nreseat ([^\n]*)\n```\n\n```json\n(.*?)\n```\n", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir private Path folder;

    @Test
    void documentsWhatIsPrinted() throws Exception {
        Path device = folder.resolve("tile.yaml");
        Files.writeString(device, FastenerCommandsTest.DEVICE);
        Matcher example =
                EXAMPLE.matcher(
                        Files.readString(Path.of("../docs/lookups-json.md")).replace("\r\n", "\n"));
        Set<String> formats = new TreeSet<>();
        while (example.find()) {
            Ran ran = Ran.reseat(words(example.group(1), device));
            assertTrue(ran.code() <= 1, ran.err());
            Map<String, Object> told = PlainJson.object(example.group(2));
            Map<String, Object> printed = PlainJson.object(ran.out());
            assertEquals(told.get("format"), printed.get("format"), example.group(1));
            Set<String> documented = members("", told, new TreeSet<>());
            assertEquals(
                    documented, members("", printed, new TreeSet<>()), "" + told.get("format"));
            formats.add(String.valueOf(told.get("format")));
        }
        assertEquals(
                Set.of(
                        "reseat-torque/1",
                        "reseat-torque-units/1",
                        "reseat-driver/1",
                        "reseat-drives/1",
                        "reseat-swap/1",
                        "reseat-trays/1",
                        "reseat-cut/1",
                        "reseat-findings/2",
                        "reseat-checks/1"),
                formats);
    }

    private static String[] words(String command, Path device) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            String text = word.group(1) == null ? word.group(2) : word.group(1);
            words.add(text.equals("tile.yaml") ? device.toString() : text);
        }
        return words.toArray(new String[0]);
    }

    /** Paths of all members; items of a list share one. */
    private static Set<String> members(String at, Object value, Set<String> all) {
        if (value instanceof Map<?, ?> map) {
            map.forEach(
                    (key, item) -> {
                        all.add(at + "/" + key);
                        members(at + "/" + key, item, all);
                    });
        } else if (value instanceof List<?> list) {
            list.forEach(item -> members(at + "[]", item, all));
        }
        return all;
    }
}
