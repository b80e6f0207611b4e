package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.script.ApiIndex;
import reseat.script.ApiIndex.Entry;
import reseat.script.Bench;
import reseat.testkit.KeptText;

/** The reference for scripters is what the Javadoc says, told once for both languages. */
class ScriptApiPageTest {

    private static final Path PAGE = Path.of("../docs/script-api.md");
    private static final String BENCH = Bench.class.getName();

    private static final String OPENING =
            """
            # What scripts can ask

            Made from the Javadoc of the exported packages by `ScriptApiPageTest`; after a change of the API run it
            once with `-Dreseat.keep=true`. In the console `help NAME` tells the same, and more.

            Names are the same in JavaScript and in Java. What differs:

            | | JavaScript | Java |
            |---|---|---|
            | a list | is an array: `list[0]`, `list.length`, `list.filter(...)` | `list.get(0)`, `list.size()`, streams |
            | a map | is a Map: `map.get("fan")`, `map.size`, `[...map.values()]` | `map.get("fan")`, `map.size()` |
            | an optional value | `x.isPresent()`, `x.get()`, `x.orElse(0)` | the same |
            | a constant | `Severity.WARNING` | the same |
            | a member marked (Java) | is not there | is there |

            """;

    private final ApiIndex index = ApiIndex.standard();
    private final Set<String> reached = reached();

    private static Set<String> reached() {
        Set<String> names = new TreeSet<>();
        JsApi api = JsApi.of(List.of(Bench.class));
        api.methods().keySet().forEach(sig -> names.add(sig.substring(0, sig.indexOf('('))));
        return names;
    }

    @Test
    void thePageIsFresh() {
        StringBuilder page = new StringBuilder(OPENING);
        page.append("## Functions of the console\n\n");
        for (Entry entry : index.membersOf(BENCH)) {
            if (!entry.signature().startsWith("new ")) {
                row(page, entry, true);
            }
        }
        Map<String, List<Entry>> packages = new LinkedHashMap<>();
        for (Entry type : index.all()) {
            if (type.member().isEmpty() && !type.type().equals(BENCH)) {
                packages.computeIfAbsent(packageOf(type), p -> new ArrayList<>()).add(type);
            }
        }
        packages.forEach(
                (name, types) -> {
                    page.append("\n## ").append(name).append('\n');
                    types.forEach(type -> type(page, type));
                });
        KeptText.matches(PAGE, page.toString());
    }

    private static String packageOf(Entry type) {
        return type.type().substring(0, type.type().length() - type.shortType().length() - 1);
    }

    private void type(StringBuilder page, Entry type) {
        page.append("\n### ").append(type.shortType()).append("\n\n");
        if (!type.text().isEmpty()) {
            page.append(escaped(type.summary())).append("\n\n");
        }
        List<Entry> members = index.membersOf(type.type());
        List<Entry> constants =
                members.stream().filter(e -> e.signature().equals(e.member())).toList();
        members.stream()
                .filter(entry -> !constants.contains(entry))
                .forEach(entry -> row(page, entry, isReached(entry)));
        for (Entry constant : constants) {
            page.append("- `").append(constant.member()).append('`');
            page.append(constant.text().isEmpty() ? "" : ": " + escaped(constant.summary()));
            page.append('\n');
        }
    }

    private boolean isReached(Entry entry) {
        String type = entry.type();
        String binary =
                type.substring(0, type.length() - entry.shortType().length())
                        + entry.shortType().replace('.', '$');
        return reached.contains(binary + "." + entry.member());
    }

    private static void row(StringBuilder page, Entry entry, boolean everywhere) {
        page.append("- `").append(entry.signature()).append('`');
        page.append(everywhere ? "" : " (Java)");
        page.append(entry.text().isEmpty() ? "" : ": " + escaped(entry.summary())).append('\n');
    }

    private static String escaped(String words) {
        return words.replace("<", "&lt;").replace("|", "\\|");
    }

    @Test
    void everyFunctionOfTheBenchIsTold() {
        Set<String> told =
                index.membersOf(BENCH).stream().map(Entry::member).collect(Collectors.toSet());
        for (var method : Bench.class.getDeclaredMethods()) {
            if (java.lang.reflect.Modifier.isPublic(method.getModifiers())) {
                assertTrue(told.contains(method.getName()), method.getName());
            }
        }
        assertTrue(
                index.membersOf(BENCH).stream().noneMatch(entry -> entry.text().isEmpty()),
                "each says what it does");
    }

    @Test
    void namesAreFoundShortAndLong() {
        assertEquals("reseat.model.Device", index.find("Device").get(0).type());
        assertEquals("reseat.model.Act.Release", index.find("Act.Release").get(0).type());
        assertEquals("joint", index.find("Device.joint").get(0).member());
        assertFalse(index.find("release").isEmpty());
    }
}
