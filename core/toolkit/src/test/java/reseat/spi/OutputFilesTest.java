package reseat.spi;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Rebuild;

/** What outputs may write, and under which names. */
class OutputFilesTest {

    /** Writes files of some names, each with its name in it. */
    private record Writer(Files files, List<String> names) implements Output {
        @Override
        public String id() {
            return "writer";
        }

        @Override
        public String title() {
            return "writer";
        }

        @Override
        public String mediaType() {
            return "text/plain";
        }

        @Override
        public String fileName() {
            return "one.txt";
        }

        @Override
        public void write(Content content, Place place) throws IOException {
            for (String name : names) {
                try (OutputStream to = name.isEmpty() ? place.single() : place.file(name)) {
                    to.write(name.getBytes(UTF_8));
                }
            }
        }
    }

    private static Rebuild empty(Plan plan) {
        return Rebuild.of(plan, List.of(), 0, Plan.Ended.PROVED, plan.request().start());
    }

    private static Map<String, byte[]> written(Output.Files files, String... names)
            throws Exception {
        Device device = Toy.of("part lid", "joint lid-bond holds lid frame");
        PlanRequest request = PlanRequest.of(device, new Goal.Reach("lid-bond"));
        Plan idle =
                new Plan(request, List.of(), 0, 0, Plan.Ended.PROVED, 0, OutputFilesTest::empty);
        return OutputFiles.of(new Writer(files, List.of(names)), Output.Content.of(idle));
    }

    @Test
    void oneFileHasTheNameThatTheOutputGivesIt() throws Exception {
        assertEquals(List.of("one.txt"), List.copyOf(written(Output.Files.ONE, "").keySet()));
    }

    @Test
    void severalFilesComeInTheOrderInWhichTheyWereOpened() throws Exception {
        Map<String, byte[]> files = written(Output.Files.SEVERAL, "step-2.svg", "step-1.svg");

        assertEquals(List.of("step-2.svg", "step-1.svg"), List.copyOf(files.keySet()));
        assertArrayEquals("step-1.svg".getBytes(UTF_8), files.get("step-1.svg"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../x",
                "a/b",
                "a\\b",
                "..",
                ".",
                ".hidden",
                "a..b",
                "a.",
                "nul",
                "CON.svg",
                "com1.txt",
                "a b",
                "ä.svg",
                "a:b",
                "a\nb",
                "-x"
            })
    void namesThatAreNoPlainFileNamesAreRefused(String name) {
        assertThrows(IllegalArgumentException.class, () -> written(Output.Files.SEVERAL, name));
    }

    @Test
    void noNameIsUsedTwiceAndCaseMakesNoDifference() {
        IllegalArgumentException refused =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> written(Output.Files.SEVERAL, "a.svg", "A.svg"));

        assertEquals("two files are named \"A.svg\"", refused.getMessage());
    }

    @Test
    void anOutputKeepsToTheNumberOfFilesThatItSays() {
        for (String[] names :
                List.of(new String[] {"a.svg"}, new String[] {"", ""}, new String[0])) {
            assertThrows(IllegalStateException.class, () -> written(Output.Files.ONE, names));
        }
        assertThrows(IllegalStateException.class, () -> written(Output.Files.SEVERAL, ""));
        assertThrows(IllegalStateException.class, () -> written(Output.Files.SEVERAL));
    }
}
