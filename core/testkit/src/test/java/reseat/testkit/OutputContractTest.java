package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.spi.Output;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** The contract notices outputs that are broken. */
class OutputContractTest {

    /** What a faulty output does. */
    private interface Writing {
        void write(Output.Place place) throws IOException;
    }

    private record Faulty(Output.Files files, String mediaType, Writing writing) implements Output {
        @Override
        public String id() {
            return "faulty";
        }

        @Override
        public String title() {
            return "faulty output";
        }

        @Override
        public void write(Content content, Place place) throws IOException {
            writing.write(place);
        }
    }

    private record Only(Output output) implements Plugin {
        @Override
        public PluginInfo info() {
            return new PluginInfo("only", "1", "Only");
        }

        @Override
        public List<Output> outputs() {
            return List.of(output);
        }
    }

    private static void assertNotices(String breach, Output.Files files, Writing writing) {
        assertNotices(breach, new Faulty(files, "text/plain", writing));
    }

    private static void assertNotices(String breach, Output output) {
        String said =
                String.valueOf(
                        assertThrows(
                                        AssertionError.class,
                                        () -> PluginContract.verify(new Only(output)))
                                .getMessage());
        assertTrue(said.contains(breach), breach + " is not in\n" + said);
    }

    private static void text(OutputStream opened, int number) throws IOException {
        try (OutputStream to = opened) {
            to.write('0' + number);
        }
    }

    @Test
    void noticesOtherBytesWhenAskedAgain() {
        int[] runs = {0};

        assertNotices(
                "output faulty writes other bytes into faulty the second time",
                Output.Files.ONE,
                place -> text(place.single(), runs[0]++ % 10));
    }

    @Test
    void noticesOtherFilesWhenAskedAgain() {
        int[] runs = {0};

        assertNotices(
                "output faulty writes other files the second time",
                Output.Files.SEVERAL,
                place -> text(place.file("step-" + runs[0]++ + ".svg"), 0));
    }

    @Test
    void noticesNamesThatAreNone() {
        assertNotices(
                "\"../step.svg\" is not a plain file name",
                Output.Files.SEVERAL,
                place -> text(place.file("../step.svg"), 0));
    }

    @Test
    void noticesAnEmptyFileAndNoFile() {
        assertNotices(
                "output faulty writes nothing into faulty",
                Output.Files.ONE,
                place -> place.single().close());
        assertNotices("it wrote no file", Output.Files.ONE, place -> {});
    }

    @Test
    void noticesAnOutputThatKeepsAFailureToItself() {
        assertNotices(
                "output faulty hides that its destination fails when it is written to",
                Output.Files.ONE,
                place -> {
                    try {
                        text(place.single(), 0);
                    } catch (IOException e) {
                        assertTrue(String.valueOf(e.getMessage()).startsWith("no space"));
                    }
                });
    }

    @Test
    void noticesAMediaTypeThatIsNone() {
        assertNotices(
                "\"html\" is not a media type",
                new Faulty(Output.Files.ONE, "html", place -> text(place.single(), 0)));
    }
}
