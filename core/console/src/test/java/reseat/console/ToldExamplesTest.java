package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import reseat.console.command.ReseatCommand;

/** What our helps and pages tell people to type works as it stands. */
class ToldExamplesTest {

    private static final Path ROOT = Path.of("../..");

    /** A part of each sample that plan.json is made for, where an example reads one. */
    private static final Map<String, String> TARGETS =
            Map.of("quill", "fan", "sorrel", "cell", "bramble", "trigger", "tansy", "cell");

    @TempDir private static Path folder;

    @Test
    void everyHelpEndsWithExamples() {
        for (Map.Entry<String, String> help : helps().entrySet()) {
            String text = help.getValue();
            List<ToldExamples> examples = ToldExamples.ofHelp(text, help.getKey());

            assertFalse(examples.isEmpty(), help.getKey());
            String heading = examples.size() == 1 ? "\nExample:\n" : "\nExamples:\n";
            assertTrue(text.contains(heading + "  reseat " + help.getKey()), text);
        }
    }

    @Test
    void everyDeviceInAHelpIsASample() {
        for (ToldExamples example : inHelps()) {
            for (String word : example.words()) {
                if (word.endsWith(".yaml") && !word.equals("acts.yaml") && !makes(example)) {
                    assertTrue(Files.isRegularFile(ROOT.resolve(word)), example.toString());
                }
            }
        }
    }

    @Test
    void findsExamplesInPages() {
        String page =
                """
                Say `reseat schema > x.json` or `source <(reseat completion)`.

                ```
                mvn package && core/bin/reseat plan samples/a.yaml --free "big fan"  # exit 1
                reseat facts samples/a.yaml | less
                Reseat prints nothing.
                ```
                """;

        List<ToldExamples> found = ToldExamples.ofPage(page, "page");

        assertEquals(3, found.size(), found.toString());
        assertEquals(List.of("schema"), found.get(0).words());
        assertEquals(List.of("plan", "samples/a.yaml", "--free", "big fan"), found.get(1).words());
        assertEquals(1, found.get(1).code());
        assertEquals(List.of("facts", "samples/a.yaml"), found.get(2).words());
    }

    @TestFactory
    Stream<DynamicTest> runsAsTold() throws IOException {
        List<ToldExamples> examples = new ArrayList<>(inHelps());
        for (Path page : pages()) {
            ToldExamples.ofPage(Files.readString(page), ROOT.relativize(page).toString()).stream()
                    .filter(ToldExamples::runs)
                    .forEach(examples::add);
        }
        return examples.stream()
                .filter(example -> !waitsForAPerson(example))
                .map(example -> DynamicTest.dynamicTest(example.toString(), () -> run(example)));
    }

    /** ConsoleIT sits at the prompt instead. */
    private static boolean waitsForAPerson(ToldExamples example) {
        List<String> words = example.words();
        return words.get(0).equals("console") && !words.contains("-e");
    }

    private static void run(ToldExamples example) throws IOException {
        List<String> words = new ArrayList<>();
        for (String word : example.words()) {
            words.add(here(example, word));
        }

        Ran ran = Ran.reseat(words.toArray(String[]::new));

        assertEquals(example.code(), ran.code(), ran.err() + ran.out());
        assertFalse(ran.out().isEmpty(), "it prints nothing");
    }

    /** Puts a sample, a plan that is there, or a list of acts in place of what is told. */
    private static String here(ToldExamples example, String word) throws IOException {
        if (word.endsWith(".yaml") && makes(example)) {
            return folder.resolve(word).toString();
        }
        if (example.words().get(0).equals("console")) {
            return word.replace("samples/", ROOT.resolve("samples") + "/");
        }
        if (word.startsWith("samples/") || word.matches("scripts(/.*)?")) {
            return ROOT.resolve(word).toString();
        }
        if (word.matches("[a-z]+\\.json(:[0-9]+)?")) {
            return plan(example) + word.replaceFirst("[a-z]+\\.json", "");
        }
        if (word.equals("out")) {
            return folder.resolve(word).toString();
        }
        if (word.equals("acts.yaml")) {
            return Files.writeString(
                            folder.resolve(word),
                            "- prepare:switch-off\n- release:cover-screw.a/usual\n")
                    .toString();
        }
        return word;
    }

    /** Whether it makes the device file that it names. */
    private static boolean makes(ToldExamples example) {
        return example.words().get(0).equals("new");
    }

    private static Path plan(ToldExamples example) throws IOException {
        String device =
                example.words().stream()
                        .filter(word -> word.startsWith("samples/"))
                        .findFirst()
                        .orElseThrow();
        String id = Path.of(device).getFileName().toString().replace(".yaml", "");
        Path file = folder.resolve(id + "-plan.json");
        if (Files.notExists(file)) {
            Ran ran =
                    Ran.reseat(
                            "plan",
                            ROOT.resolve(device).toString(),
                            "--free",
                            String.valueOf(TARGETS.get(id)),
                            "--json");
            assertEquals(0, ran.code(), ran.err());
            Files.writeString(file, ran.out());
        }
        return file;
    }

    private static List<ToldExamples> inHelps() {
        List<ToldExamples> examples = new ArrayList<>();
        helps().forEach((name, text) -> examples.addAll(ToldExamples.ofHelp(text, name)));
        return examples;
    }

    private static Map<String, String> helps() {
        Map<String, String> helps = new TreeMap<>();
        for (String name : ReseatCommand.understanding().getSubcommands().keySet()) {
            Ran ran = Ran.reseat(name, "--help");
            assertEquals(0, ran.code(), ran.err());
            helps.put(name, ran.out());
        }
        return helps;
    }

    private static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md")));
        try (Stream<Path> docs = Files.list(ROOT.resolve("core/docs"))) {
            docs.filter(page -> page.toString().endsWith(".md"))
                    // FirstScriptIT follows that one, whose commands need what was saved before
                    .filter(page -> !page.endsWith("first-script.md"))
                    .sorted()
                    .forEach(pages::add);
        }
        return pages;
    }
}
