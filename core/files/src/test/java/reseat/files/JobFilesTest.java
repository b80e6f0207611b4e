package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.job.Job;
import reseat.model.BadInputException;
import reseat.model.Problem;

class JobFilesTest {

    private static final String JOB =
            """
            format: reseat-job/1
            unit: 004217
            device: tin
            cycles:
              lid-screw.a: 9
              board-screw: 0
            """;

    @TempDir private Path folder;

    @Test
    void readsAJob() throws Exception {
        Job job = read(JOB).job();

        assertEquals("j-17", job.id(), "the name of the file");
        assertEquals("004217", job.unit(), "a number of a unit is a text");
        assertEquals(Optional.empty(), job.variant());
        assertEquals(Map.of("lid-screw.a", 9, "board-screw", 0), job.cycles());
        assertEquals("J 18", read(JOB + "id: J 18\nvariant: glued\n").job().id());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit: 004217 | '' | 1:1: error: job: the key \"unit\" is missing",
                "unit: 004217 | unit: ' ' | 2:7: error: unit: found only spaces",
                "board-screw: 0 | board-screw: -1 | 6:16: error: board-screw: found \"-1\"",
                "board-screw: 0 | board-screw: often | 6:16: error: board-screw: found \"often\", expected a whole number",
                "device: tin | devise: tin | 3:1: error: job: unknown key \"devise\". Did you mean \"device\"?",
                "reseat-job/1 | reseat-plan/1 | 1:9: error: format: found \"reseat-plan/1\""
            })
    void saysWhatIsWrongAndWhere(String found, String put, String message) {
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () -> read(JOB.replace(found, put == null ? "" : put)));

        assertTrue(e.getMessage().contains(message), e.getMessage());
    }

    @Test
    void isHeldAgainstItsDevice() throws Exception {
        Path tin = TinDevice.tin(folder, "id: tin", "id: tin");

        assertEquals(List.of(), read(JOB).problems(TinDevice.device(tin)));
        List<Problem> joint =
                read(JOB.replace("lid-screw.a", "lid-screw.x")).problems(TinDevice.device(tin));
        assertEquals(1, joint.size());
        assertTrue(
                joint.get(0)
                        .toString()
                        .contains("5:3: error: cycles: there is no joint \"lid-screw.x\""),
                joint.toString());
        List<Problem> other = read(JOB.replace("tin", "can")).problems(TinDevice.device(tin));
        assertTrue(other.get(0).toString().contains("this job is for \"can\""), other.toString());
    }

    private JobFile read(String text) throws Exception {
        return JobFiles.read(TinDevice.file(folder, "j-17.yaml", text));
    }
}
