package reseat.console.house;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds every class of core and plugins to the rules of the house. */
class OurHouseTest {

    private static final JavaClasses BUILT = BuiltClasses.all();

    private static final House HOUSE = new House("reseat", BuiltClasses::isOfPlugin);

    @Test
    void seesEveryModuleOfCore() {
        for (String name :
                List.of("toolkit", "files", "planner", "scripts", "testkit", "console")) {
            assertTrue(
                    BuiltClasses.folders().stream()
                            .anyMatch(p -> p.endsWith(name + "/target/classes")),
                    name + " is not built");
        }
        assertTrue(BUILT.contain("reseat.console.Main"));
        assertTrue(BUILT.contain("reseat.spi.ToolkitVersion"));
    }

    @TestFactory
    Stream<DynamicTest> keeps() {
        return HouseRules.of(HOUSE).stream()
                .map(rule -> dynamicTest(rule.name(), () -> rule.rule().check(BUILT)));
    }
}
