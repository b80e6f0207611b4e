package reseat.console.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Shows that each rule bites: the package {@code wrong} breaks all of them, each where expected.
 */
class HouseRulesTest {

    private static final JavaClasses EXAMPLES =
            new ClassFileImporter().importPath(Path.of("target/test-classes/wrong"));

    private static final List<HouseRule> RULES =
            HouseRules.of(
                    new House("wrong", type -> type.getPackageName().startsWith("wrong.plugins")));

    private static final Map<String, Set<String>> BROKEN_BY =
            Map.ofEntries(
                    Map.entry("model knows nothing", Set.of("model.KnowsGraph")),
                    Map.entry("fasten knows those below", Set.of("fasten.KnowsGraph")),
                    Map.entry(
                            "graph knows those below",
                            Set.of("graph.KnowsPlan", "internal.graph.KnowsInsideOfPlan")),
                    Map.entry("time knows those below", Set.of("internal.time.KnowsPlan")),
                    Map.entry("order knows those below", Set.of("internal.order.KnowsModel")),
                    Map.entry("planner knows those below", Set.of("internal.planner.KnowsFiles")),
                    Map.entry(
                            "the search does not know the simulator",
                            Set.of("internal.planner.KnowsSimulate")),
                    Map.entry("plan knows those below", Set.of("plan.KnowsSimulate")),
                    Map.entry("sheet knows those below", Set.of("sheet.KnowsSimulate")),
                    Map.entry("simulate knows those below", Set.of("simulate.KnowsPlan")),
                    Map.entry("job knows those below", Set.of("job.KnowsReader")),
                    Map.entry("stock knows nothing", Set.of("stock.KnowsReader")),
                    Map.entry("query knows those below", Set.of("query.KnowsReader")),
                    Map.entry("check knows those below", Set.of("check.KnowsReader")),
                    Map.entry("text knows nothing", Set.of("text.KnowsModel")),
                    Map.entry(
                            "every package has its place",
                            Set.of("stray.Nowhere", "cycle.a.First", "cycle.b.Second")),
                    Map.entry(
                            "only the console talks to the standard streams",
                            Set.of("spi.Prints", "spi.PrintsTrace")),
                    Map.entry("only Main ends the process", Set.of("console.Exits")),
                    Map.entry("no dice without a seed", Set.of("spi.Dice", "spi.Shuffles")),
                    Map.entry("no default locale", Set.of("spi.Formats", "spi.Lowers")),
                    Map.entry("no default charset", Set.of("spi.Encodes", "spi.Reads")),
                    Map.entry("the toolkit asks no wall clock", Set.of("spi.AsksTheTime")),
                    Map.entry("no class loader by thread", Set.of("spi.LoadsByThread")),
                    Map.entry(
                            "no third-party type in an exported signature",
                            Set.of("spi.ShowsForeign", "spi.ShowsForeignList")));

    @Test
    void haveAnExampleEach() {
        Set<String> names = new TreeSet<>();
        RULES.forEach(rule -> names.add(rule.name()));

        assertEquals(new TreeSet<>(BROKEN_BY.keySet()), names);
    }

    @TestFactory
    Stream<DynamicTest> biteWhereExpectedAndNowhereElse() {
        return RULES.stream()
                .map(
                        rule ->
                                dynamicTest(
                                        rule.name(),
                                        () ->
                                                assertEquals(
                                                        expected(rule), rule.brokenBy(EXAMPLES))));
    }

    private static Set<String> expected(HouseRule rule) {
        Set<String> names = new TreeSet<>();
        BROKEN_BY.get(rule.name()).forEach(name -> names.add("wrong." + name));
        return names;
    }
}
