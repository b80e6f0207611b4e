package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.script.ApiIndex;
import reseat.script.ApiIndex.Entry;
import reseat.script.Bench;

/** The index behind {@code help} and the API page is what the Javadoc says, for both languages. */
class ApiIndexTest {

    private static final String BENCH = Bench.class.getName();

    private final ApiIndex index = ApiIndex.standard();

    @Test
    void everyTypeThatAScriptCanReachHasJavadocInTheIndex() {
        Set<String> missing = new TreeSet<>();
        Set<String> types =
                JsApi.of(List.of(Bench.class)).methods().keySet().stream()
                        .map(signature -> signature.substring(0, signature.indexOf('(')))
                        .map(method -> method.substring(0, method.lastIndexOf('.')))
                        .filter(type -> type.startsWith("reseat."))
                        .map(type -> type.replace('$', '.'))
                        .collect(Collectors.toCollection(TreeSet::new));
        for (String type : types) {
            if (index.member(type, "").stream().allMatch(entry -> entry.text().isBlank())) {
                missing.add(type);
            }
        }
        assertTrue(types.contains("reseat.model.Device"), "the types were found: " + types);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyExportedTypeInTheIndexHasJavadoc() {
        List<String> without =
                index.all().stream()
                        .filter(entry -> entry.member().isEmpty() && entry.text().isBlank())
                        .map(Entry::type)
                        .toList();
        assertEquals(List.of(), without);
    }

    @Test
    void everyFunctionOfTheConsoleIsDescribed() {
        Set<String> described =
                index.membersOf(BENCH).stream()
                        .filter(entry -> !entry.text().isBlank())
                        .map(Entry::member)
                        .collect(Collectors.toSet());
        for (var method : Bench.class.getDeclaredMethods()) {
            if (Modifier.isPublic(method.getModifiers())) {
                assertTrue(described.contains(method.getName()), method.getName());
            }
        }
    }

    @Test
    void namesAreFoundShortAndLong() {
        assertEquals("reseat.model.Device", index.find("Device").get(0).type());
        assertEquals("reseat.model.Act.Release", index.find("Act.Release").get(0).type());
        assertEquals("joint", index.find("Device.joint").get(0).member());
        assertFalse(index.find("release").isEmpty());
    }
}
