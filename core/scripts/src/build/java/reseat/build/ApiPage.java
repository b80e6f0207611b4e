package reseat.build;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import reseat.script.ApiIndex;
import reseat.script.ApiIndex.Entry;
import reseat.script.Bench;

/**
 * Writes the reference for script authors from the index that {@link ApiIndexer} made. Run by the build, with the
 * modules on the module path and the package of the hosts opened: the file to write.
 */
public final class ApiPage {

    private static final String BENCH = Bench.class.getName();

    private static final String OPENING =
            """
            # What scripts can call

            Every exported type and its members, as the Javadoc describes them. Read script-guide.md first.
            In the console, `help NAME` shows the same, with the parameters.

            Names are the same in JavaScript and in Java. The differences:

            | | JavaScript | Java |
            |---|---|---|
            | a list | is an array: `list[0]`, `list.length`, `list.filter(...)` | `list.get(0)`, `list.size()`, streams |
            | a map | is a Map: `map.get("fan")`, `map.size`, `[...map.values()]` | `map.get("fan")`, `map.size()` |
            | an optional value | `x.isPresent()`, `x.orElse(0)`, `x.get()` (`getAsDouble()` of a number) | the same |
            | a constant | `Severity.WARNING` | the same |
            | a member marked (Java) | is not available | is available |

            """;

    private final ApiIndex index = ApiIndex.standard();
    private final Set<String> reached;
    private final StringBuilder page = new StringBuilder(OPENING);

    private ApiPage(Set<String> reached) {
        this.reached = reached;
    }

    public static void main(String[] args) throws IOException, ReflectiveOperationException {
        Path out = Path.of(args[0]);
        Files.createDirectories(out.toAbsolutePath().getParent());
        Files.writeString(out, new ApiPage(reached()).text(), UTF_8);
    }

    /** The methods that JavaScript can call; what decides that is not exported, so it is asked by reflection. */
    private static Set<String> reached() throws ReflectiveOperationException {
        Class<?> type = Class.forName("reseat.script.host.JsApi");
        Method of = type.getDeclaredMethod("of", List.class);
        of.setAccessible(true);
        Object api = of.invoke(null, List.of(Bench.class));
        Method methods = type.getDeclaredMethod("methods");
        methods.setAccessible(true);
        Set<String> names = new TreeSet<>();
        for (Object signature : ((Map<?, ?>) methods.invoke(api)).keySet()) {
            String words = signature.toString();
            names.add(words.substring(0, words.indexOf('(')));
        }
        return names;
    }

    private String text() {
        page.append("## Functions of the console\n\n");
        for (Entry entry : index.membersOf(BENCH)) {
            if (!entry.signature().startsWith("new ")) {
                row(entry, true);
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
                    types.forEach(this::type);
                });
        return page.toString();
    }

    private static String packageOf(Entry type) {
        return type.type().substring(0, type.type().length() - type.shortType().length() - 1);
    }

    private void type(Entry type) {
        page.append("\n### ").append(type.shortType()).append("\n\n");
        if (!type.text().isEmpty()) {
            page.append(escaped(type.summary())).append("\n\n");
        }
        List<Entry> members = index.membersOf(type.type());
        List<Entry> constants = members.stream().filter(e -> e.signature().equals(e.member())).toList();
        members.stream().filter(e -> !constants.contains(e)).forEach(e -> row(e, isReached(e)));
        for (Entry constant : constants) {
            page.append("- `").append(constant.member()).append('`');
            page.append(constant.text().isEmpty() ? "" : ": " + escaped(constant.summary())).append('\n');
        }
    }

    private boolean isReached(Entry entry) {
        String type = entry.type();
        String binary =
                type.substring(0, type.length() - entry.shortType().length()) + entry.shortType().replace('.', '$');
        return reached.contains(binary + "." + entry.member());
    }

    private void row(Entry entry, boolean everywhere) {
        page.append("- `").append(entry.signature()).append('`').append(everywhere ? "" : " (Java)");
        page.append(entry.text().isEmpty() ? "" : ": " + escaped(entry.summary())).append('\n');
    }

    private static String escaped(String words) {
        return words.replace("<", "&lt;").replace("|", "\\|");
    }
}
