package reseat.console.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** One rule of the house: what holds, and why. */
record HouseRule(String name, ArchRule rule) {

    /** Makes a rule from a look at one class that reports each breach in words. */
    static HouseRule of(String name, String why, BiConsumer<JavaClass, Consumer<String>> look) {
        ArchCondition<JavaClass> condition =
                new ArchCondition<>("keep to: " + name) {
                    @Override
                    public void check(JavaClass type, ConditionEvents events) {
                        look.accept(
                                type,
                                breach -> events.add(SimpleConditionEvent.violated(type, breach)));
                    }
                };
        return new HouseRule(name, classes().should(condition).because(why).allowEmptyShould(true));
    }

    /** Returns the full names of the classes that break this rule. */
    Set<String> brokenBy(JavaClasses types) {
        Set<String> names = new TreeSet<>();
        rule.evaluate(types)
                .handleViolations(
                        (java.util.Collection<JavaClass> broken, String message) ->
                                broken.forEach(type -> names.add(type.getName())));
        return names;
    }
}
