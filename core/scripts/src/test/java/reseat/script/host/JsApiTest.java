package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.chrono.ChronoLocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.PolyglotException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.model.Device;
import reseat.planner.Planner;

/** What JavaScript can reach, and what it cannot. */
class JsApiTest {

    /** Packages of Java whose types may be named in a method that JavaScript can call. */
    private static final Set<String> HARMLESS =
            Set.of("java.lang", "java.util", "java.math", "java.time", "java.time.chrono");

    private static final ByteArrayOutputStream OUT = new ByteArrayOutputStream();
    private static JsContexts contexts;
    private static Context js;

    @BeforeAll
    static void open() throws Exception {
        Device tansy =
                DeviceFiles.read(
                                Path.of("../../samples/tansy/tansy.yaml"),
                                Optional.empty(),
                                List.of())
                        .orThrow();
        contexts = JsContexts.of(OUT, OUT);
        js = contexts.open();
        js.getBindings("js").putMember("input", CheckInput.of(tansy));
    }

    @AfterAll
    static void close() {
        contexts.close();
    }

    @Test
    void everyMethodTakesAndReturnsValues() {
        JsApi api = JsApi.of(List.of());
        Set<String> named = new TreeSet<>();
        for (Method method : api.methods().values()) {
            assertFalse(Modifier.isStatic(method.getModifiers()), method.toString());
            look(method.getReturnType(), named);
            for (Class<?> parameter : method.getParameterTypes()) {
                look(parameter, named);
                assertTrue(
                        !parameter.isInterface()
                                || parameter.isSealed()
                                || parameter == Collection.class
                                || parameter == ChronoLocalDate.class,
                        () -> "takes a function? " + method);
            }
        }
        for (String type : named) {
            String of = type.substring(0, type.lastIndexOf('.'));
            assertTrue(of.startsWith("reseat.") || HARMLESS.contains(of), type);
        }
        for (String never :
                List.of(
                        "java.lang.Class",
                        "java.lang.ClassLoader",
                        "java.lang.Module",
                        "java.lang.Thread",
                        "java.lang.Runnable",
                        "java.lang.Process",
                        "java.util.stream.Stream",
                        "java.util.function.Consumer")) {
            assertFalse(named.contains(never), never);
        }
        assertFalse(api.types().contains(Planner.class));
        assertFalse(api.types().contains(Device.Builder.class));
        assertTrue(api.methods().size() > 300, "saw only " + api.methods().size());
    }

    private static void look(Class<?> type, Set<String> named) {
        if (!type.isPrimitive()) {
            assertFalse(type.isArray(), type.toString());
            named.add(type.getName());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "input.device().id()|tansy",
                "input.device().joints().size|10",
                "input.jointsInView().length|10",
                "input.jointsInView().size()|10",
                "input.jointsInView().filter(j => j.seat().isPresent()).length|5",
                "[...input.device().joints().values()].length|10",
                "input.device().parts().get(input.device().base()).id() == input.device().base()|true",
                "Severity.WARNING.name()|WARNING",
                "Kind.Role.CELL.name()|CELL",
                "input.device().kindOf(input.jointsInView()[0]).role().isPresent()|true",
                "input.plan().isPresent()|false",
                "input.jointsInView().isEmpty()|false",
                "input.device().joints().containsKey('no')|false",
                "input.device().joints().isEmpty()|false",
                "input.jointsInView().get(0) == input.jointsInView()[0]|true",
                "input.jointsInView().contains(input.jointsInView()[1])|true",
            })
    void seesTheSameObjectsAsJava(String source, String value) {
        assertEquals(value, js.eval("js", source).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Java",
                "Packages",
                "java",
                "Polyglot",
                "Graal",
                "load",
                "loadWithNewGlobal",
                "quit",
                "exit",
                "read",
                "readFile",
                "require",
                "process",
                "setTimeout",
                "Worker",
                "Date",
                "Intl",
                "performance",
                "Atomics",
                "SharedArrayBuffer",
                "WebAssembly",
                "Math.random",
                "input.getClass",
                "input.hashCode",
                "input.wait",
                "input.notify",
                "input.device().getClass",
                "Severity.WARNING.getDeclaringClass",
                "Severity.WARNING.getClass",
                "input.device().parts().put",
                "input.jointsInView().stream",
                "input.jointsInView().add",
            })
    void hasNo(String name) {
        assertEquals("undefined", js.eval("js", "typeof " + name).asString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "input.jointsInView()[0] = 1",
                "input.jointsInView().push(1)",
                "input.jointsInView().length = 0",
                "input.device().parts().set('x', 1)",
                "input.device().parts().clear()",
                "input.device().parts().x = 1",
                "input.device = 1",
                "input.mine = 1",
                "Severity.WARNING = 1",
                "Severity.MINE = 1",
                "delete Severity.WARNING",
                "Kind.Role = 1",
                "Object.setPrototypeOf(input, {})",
                "eval('1')",
                "new Function('return 1')()",
                "(() => {}).constructor('return 1')()",
            })
    void refuses(String source) {
        PolyglotException refused =
                assertThrows(PolyglotException.class, () -> js.eval("js", source));
        assertFalse(refused.isInternalError(), refused.toString());
    }

    @Test
    void printsToTheGivenStream() {
        js.eval("js", "console.log('said', 1); print('too')");
        assertEquals("said 1\ntoo\n", OUT.toString(StandardCharsets.UTF_8));
    }
}
