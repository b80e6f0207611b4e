package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.PluginFiles;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;

/** The scripts that ship, on their fixtures. */
class ShippedScriptsTest {

    @TempDir Path shop;

    @Test
    void findWhatIsMarkedAndNothingElse() throws Exception {
        ScriptFolder folder = ScriptFolder.read(List.of(Path.of("../../scripts")));
        assertEquals(List.of(), folder.problems());
        assertEquals(10, folder.scripts().size());
        Approvals approvals = Approvals.in(shop);
        List<ScriptHost.Task> tasks = new ArrayList<>();
        List<Fixture> fixtures = new ArrayList<>();
        int javaScripts = 0;
        for (ScriptFile script : folder.scripts()) {
            approvals = approvals.approve(script, "test", LocalDate.of(2026, 3, 2));
            javaScripts += script.language() == Language.JAVA ? 1 : 0;
            List<Fixture> own = Fixture.of(script, PluginFiles.bundled().families());
            assertTrue(own.stream().anyMatch(Fixture::hasFinding), script.file());
            assertTrue(own.stream().anyMatch(Fixture::hasNearMiss), script.file());
            for (Fixture each : own) {
                tasks.add(new ScriptHost.Task(script, each.input()));
                fixtures.add(each);
            }
        }
        assertEquals(5, javaScripts);

        ScriptHost.Ran ran = new ScriptHost(ScriptLimits.USUAL, approvals).run(tasks);

        List<String> complaints = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            complaints.addAll(fixtures.get(i).complaints(ran.outcomes().get(i)));
        }
        assertEquals("", String.join("\n", complaints));
    }
}
