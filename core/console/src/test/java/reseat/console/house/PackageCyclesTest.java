package reseat.console.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No two packages know each other but the two sides of one area. */
class PackageCyclesTest {

    @Test
    void ourPackagesHaveNoCycle() {
        assertEquals("", String.join("\n", PackageCycles.of(BuiltClasses.all(), "reseat")));
    }

    @Test
    void findsTheTwoThatKnowEachOther() {
        List<String> found =
                PackageCycles.of(
                        new ClassFileImporter().importPath(Path.of("target/test-classes/wrong")),
                        "wrong.cycle");

        assertEquals(
                List.of("wrong.cycle.a -> wrong.cycle.b", "wrong.cycle.b -> wrong.cycle.a"),
                found.stream().map(line -> line.substring(0, line.indexOf(':'))).toList());
    }
}
