package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.model.BadInputException;
import reseat.model.Origin;

class KnownFilesTest {

    private static final String FILE =
            """
            # what we live with
            format: reseat-known/1
            known:
              # asked twice
              - check: torque-missing
                device: tin
                subject: /joints/lid-screw.a
                reason: The maker gives none.
                until: 2027-03-01   # then ask again
            """;

    @TempDir private Path folder;

    @Test
    void readsEntriesWithTheirPlaces() throws Exception {
        KnownFinding entry = read(FILE).get(0);

        assertEquals("torque-missing", entry.check());
        assertEquals("tin", entry.device());
        assertEquals("/joints/lid-screw.a", entry.subject());
        assertEquals("The maker gives none.", entry.reason());
        assertEquals(LocalDate.of(2027, 3, 1), entry.until());
        assertEquals(5, entry.at().line());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "until: 2027-03-01 | until: soon | 9:12: error: until: found \"soon\", expected a date such as 2027-03-01",
                "until: 2027-03-01 | until: 2027-02-30 | 9:12: error: until: found \"2027-02-30\"",
                "    until: 2027-03-01 | '' | known: the key \"until\" is missing",
                "reason: The maker gives none. | reason: ' ' | 8:13: error: reason: found only spaces",
                "    reason: The maker gives none. | '' | known: the key \"reason\" is missing",
                "device: tin | devise: tin | 6:5: error: known: unknown key \"devise\". Did you mean \"device\"?",
                "reseat-known/1 | reseat-known/9 | 2:9: error: format: found \"reseat-known/9\"",
                "known: | none: | 3:1: error: known: unknown key \"none\""
            })
    void saysWhatIsWrongAndWhere(String found, String put, String message) {
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () -> read(FILE.replace(found.strip(), put == null ? "" : put)));

        assertTrue(e.getMessage().contains(message), e.getMessage());
    }

    @Test
    void addsAtTheEndAndLeavesTheRestAsItIs() throws Exception {
        Path file = file(FILE);
        KnownFiles.add(file, List.of(entry("Say \"when\": #1 \\ {x}\nand \u0007 more")));

        String text = Files.readString(file);
        assertTrue(text.startsWith(FILE), text);
        List<KnownFinding> all = KnownFiles.read(file);
        assertEquals(2, all.size());
        assertEquals("Say \"when\": #1 \\ {x}\nand \u0007 more", all.get(1).reason());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "format: reseat-known/1\nknown:\n- {check: a, device: b, subject: /c,"
                        + " reason: d, until: 2027-01-01}",
                "format: reseat-known/1\nknown:\n    - check: a\n      device: b\n    "
                        + "  subject: ''\n      reason: d\n      until: 2027-01-01\n# end",
                "format: reseat-known/1\nknown:\n",
                "format: reseat-known/1\nknown: # none yet\n",
                ""
            })
    void addsToWhateverCanBeAddedTo(String before) throws Exception {
        Path file = file(before);
        int there = before.isEmpty() ? 0 : KnownFiles.read(file).size();
        KnownFiles.add(file, List.of(entry("One."), entry("Two.")));

        assertEquals(there + 2, KnownFiles.read(file).size());
        assertTrue(Files.readString(file).startsWith(before));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "known: [{check: a, device: b, subject: /c, reason: d, until:"
                        + " 2027-01-01}]\nformat: reseat-known/1\n",
                "{\"format\": \"reseat-known/1\", \"known\": []}",
                "format: reseat-known/1\nknown: []\n",
                "known:\n  - {check: a, device: b, subject: /c, reason: d, until:"
                        + " 2027-01-01}\nformat: reseat-known/1\n"
            })
    void refusesWhereItCannotAddAtTheEnd(String before) throws Exception {
        Path file = file(before);
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () -> KnownFiles.add(file, List.of(entry("One."))));

        assertTrue(e.getMessage().contains("make \"known\" its last key"), e.getMessage());
        assertEquals(before, Files.readString(file));
    }

    @Test
    void makesAFileThatIsNotThere() throws Exception {
        Path file = folder.resolve("known.yaml");
        assertFalse(Files.exists(file));
        KnownFiles.add(file, List.of(entry("One.")));

        assertEquals("One.", KnownFiles.read(file).get(0).reason());
    }

    private static KnownFinding entry(String reason) {
        return new KnownFinding(
                "torque-missing",
                "true",
                "/joints/lid-screw.b",
                reason,
                LocalDate.of(2027, 1, 31),
                Origin.MEMORY);
    }

    private Path file(String text) throws Exception {
        return Files.writeString(folder.resolve("known.yaml"), text);
    }

    private List<KnownFinding> read(String text) throws Exception {
        return KnownFiles.read(file(text));
    }
}
