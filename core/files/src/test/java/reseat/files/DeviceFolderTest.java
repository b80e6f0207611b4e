package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.given.Samples;

class DeviceFolderTest {

    @TempDir private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "a.yaml | format: reseat-device/1 | true",
                "a.yml | # a device\\nformat :  \"reseat-device/1\" | true",
                "a.YAML | 'format': 'reseat-device/2' | true",
                "a.json | {\"format\": \"reseat-device/1\"} | true",
                "a.yaml | {format: reseat-device/1} | true",
                "a.json | \\n  { \"id\": \"x\", \"format\" : \"reseat-device/1\" } | true",
                "a.yaml | id: x\\njoints:\\n  a: {} | true",
                "a.yaml | format: reseat-device/1\\n  : [ broken | true",
                "a.txt | format: reseat-device/1 | false",
                ".a.yaml | format: reseat-device/1 | false",
                "a.yaml | # format: reseat-device/1 | false",
                "a.yaml | fixture:\\n  format: reseat-device/1 | false",
                "a.json | {\"format\": \"reseat-plan/1\", \"of\": {\"format\": \"reseat-device/1\"}} | false",
                "a.yaml | format: reseat-job/1\\njoints: [] | false",
                "a.yaml | formats: reseat-device/1 | false",
                "a.yaml | ~~ | false"
            })
    void isADeviceFileByWhatItSays(String name, String text, boolean device) throws Exception {
        Path file = Files.writeString(folder.resolve(name), text.replace("\\n", "\n"));

        assertEquals(device ? List.of(file) : List.of(), DeviceFolder.files(folder));
    }

    @Test
    void walksThroughFoldersInOrder() throws Exception {
        for (String name :
                List.of("b.yaml", "a/z.yaml", "a/deep/c.json", ".git/d.yaml", "a.yaml")) {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    name.endsWith("n") ? "{format: reseat-device/1}" : "format: reseat-device/1");
        }

        assertEquals(
                List.of("a.yaml", "a/deep/c.json", "a/z.yaml", "b.yaml"),
                DeviceFolder.files(folder).stream()
                        .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                        .toList());
    }

    @Test
    void aFolderThatIsNamedMayBeginWithADot() throws Exception {
        Path hidden = Files.createDirectory(folder.resolve(".shop"));
        Files.writeString(hidden.resolve("a.yaml"), "format: reseat-device/1");

        assertEquals(1, DeviceFolder.files(hidden).size());
    }

    @Test
    void passesOverAProjectOfItsOwn() throws Exception {
        Path deep = Files.createDirectories(folder.resolve("plugin/src/test"));
        Files.writeString(deep.resolve("a.yaml"), "format: reseat-device/1");
        Files.writeString(folder.resolve("plugin/pom.xml"), "<project/>");

        assertEquals(List.of(), DeviceFolder.files(folder));
        assertEquals(1, DeviceFolder.files(folder.resolve("plugin")).size());
    }

    @Test
    void findsEverySample() throws Exception {
        List<Path> found = DeviceFolder.files(Samples.folder());

        assertTrue(found.containsAll(Samples.devices()), found.toString());
    }
}
