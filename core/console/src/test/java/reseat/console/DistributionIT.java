package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import reseat.script.ApiIndex;

/** What the distribution carries beside the program: licences and pages. */
class DistributionIT {

    private static final Path BUILT = Path.of("target/reseat");
    private static final Path LICENCES = BUILT.resolve("licences");
    private static final Path DOCS = BUILT.resolve("docs");

    /** A link to a file of ours, without its heading. */
    private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:)([^)#]+)(?:#[^)]*)?\\)");

    /** The rows of the notice by jar name, each with the texts that it names. */
    private static Map<String, List<Path>> notice() throws IOException {
        Map<String, List<Path>> rows = new TreeMap<>();
        for (String line : Files.readAllLines(LICENCES.resolve("NOTICE.md"))) {
            List<String> cells = Stream.of(line.split("\\|")).map(String::strip).toList();
            if (cells.size() == 7 && !cells.get(1).equals("name") && !line.startsWith("|---")) {
                for (String cell : cells.subList(1, 7)) {
                    assertFalse(cell.isEmpty(), "a cell is empty: " + line);
                }
                rows.put(cells.get(1) + "-" + cells.get(2) + ".jar", links(cells.get(6), LICENCES));
            }
        }
        return rows;
    }

    private static List<Path> links(String text, Path from) {
        return LINK.matcher(text).results().map(link -> from.resolve(link.group(1))).toList();
    }

    private static Set<String> jarsOfOthers() throws IOException {
        Set<String> jars = new TreeSet<>();
        try (Stream<Path> files = Files.walk(BUILT.resolve("lib"))) {
            files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar") && !name.startsWith("reseat-"))
                    .forEach(jars::add);
        }
        return jars;
    }

    @Test
    void everyJarOfOthersHasItsLineAndItsLicenceText() throws IOException {
        Map<String, List<Path>> notice = notice();
        Set<String> jars = jarsOfOthers();
        List<String> wrong = new ArrayList<>();
        for (String jar : jars) {
            List<Path> texts = notice.getOrDefault(jar, List.of());
            if (texts.isEmpty()) {
                wrong.add(jar + " has no line with a text in NOTICE.md");
            }
            for (Path text : texts) {
                if (!Files.isRegularFile(text) || Files.size(text) < 500) {
                    wrong.add(jar + ": no licence text in " + text);
                }
            }
        }

        assertTrue(jars.size() > 10, "the jars were found: " + jars);
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyLicenceTextBelongsToALine() throws IOException {
        Set<String> named =
                notice().values().stream()
                        .flatMap(List::stream)
                        .map(text -> text.getFileName().toString())
                        .collect(Collectors.toCollection(TreeSet::new));
        named.add("NOTICE.md");
        try (Stream<Path> files = Files.list(LICENCES)) {
            Set<String> there =
                    files.map(file -> file.getFileName().toString())
                            .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(named, there);
        }
    }

    @Test
    void linksBetweenThePagesWork() throws IOException {
        List<String> broken = new ArrayList<>();
        try (Stream<Path> pages = Files.list(DOCS)) {
            for (Path page : (Iterable<Path>) pages.sorted()::iterator) {
                for (Path target : links(Files.readString(page), DOCS)) {
                    if (!Files.isRegularFile(target)) {
                        broken.add(page.getFileName() + " -> " + DOCS.relativize(target));
                    }
                }
            }
        }
        assertTrue(Files.isRegularFile(DOCS.resolve("script-guide.md")), "the pages are there");
        assertEquals(List.of(), broken);
    }

    @Test
    void theApiPageHasEveryTypeAndTellsWhatJavaScriptCannotCall() throws IOException {
        String page = Files.readString(DOCS.resolve("script-api.md"));
        for (ApiIndex.Entry entry : ApiIndex.standard().all()) {
            if (entry.member().isEmpty() && !entry.shortType().equals("Bench")) {
                assertTrue(page.contains("### " + entry.shortType() + "\n"), entry.type());
            }
        }
        assertTrue(page.contains("- `List<ScrewRow> screws()`: "), "JavaScript can call it");
        assertTrue(page.contains("static CheckInput of(Device device)` (Java)"), "and not this");
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "runs the launcher for POSIX shells")
    void helpOpensTheApiPageAndSaysWhereItIs() throws IOException {
        String said = console("help\nhelp api\n");

        Path page = DOCS.resolve("script-api.md").toRealPath();
        assertTrue(said.contains("help api shows every type and member, from\n" + page), said);
        assertTrue(said.contains(Files.readString(page).strip()), "the whole page");
    }

    private static String console(String typed) throws IOException {
        ProcessBuilder builder =
                new ProcessBuilder(BUILT.resolve("bin/reseat").toString(), "console");
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("RESEAT_CACHE", "");
        builder.redirectErrorStream(true);
        Process process = builder.start();
        process.getOutputStream().write(typed.getBytes(UTF_8));
        process.getOutputStream().close();
        return new String(process.getInputStream().readAllBytes(), UTF_8).replace("\r\n", "\n");
    }
}
