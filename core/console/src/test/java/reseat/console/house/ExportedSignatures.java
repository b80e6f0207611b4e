package reseat.console.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What others compile against is made of our own types and of Java's. */
final class ExportedSignatures {

    private ExportedSignatures() {}

    static List<HouseRule> of(House house) {
        return List.of(
                HouseRule.of(
                        "no third-party type in an exported signature",
                        "whoever builds against us would be tied to a library and its version that"
                                + " we want to be free to replace",
                        (type, breach) -> {
                            if (isExported(house, type)) {
                                for (String foreign : foreignTypes(house, type)) {
                                    breach.accept(type.getName() + " shows " + foreign);
                                }
                            }
                        }));
    }

    private static boolean isExported(House house, JavaClass type) {
        if (!house.owns(type) || !isVisible(type.getModifiers())) {
            return false;
        }
        return house.areaOf(type).isExported();
    }

    private static Set<String> foreignTypes(House house, JavaClass type) {
        Set<String> foreign = new TreeSet<>();
        Stream<JavaType> above =
                Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
        Stream.concat(
                        above.flatMap(t -> t.getAllInvolvedRawTypes().stream()),
                        Stream.concat(
                                type.getTypeParameters().stream()
                                        .flatMap(t -> t.getAllInvolvedRawTypes().stream()),
                                members(type)))
                .map(JavaClass::getBaseComponentType)
                .filter(t -> !house.owns(t) && !isJava(t))
                .forEach(t -> foreign.add(t.getName()));
        return foreign;
    }

    private static Stream<JavaClass> members(JavaClass type) {
        Stream<JavaClass> signatures =
                type.getMembers().stream()
                        .filter(member -> isVisible(member.getModifiers()))
                        .map(JavaMember::getAllInvolvedRawTypes)
                        .flatMap(Set::stream);
        Stream<JavaClass> thrown =
                type.getCodeUnits().stream()
                        .filter(unit -> isVisible(unit.getModifiers()))
                        .flatMap(unit -> unit.getThrowsClause().getTypes().stream());
        return Stream.concat(signatures, thrown);
    }

    private static boolean isVisible(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC)
                || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static boolean isJava(JavaClass type) {
        return type.isPrimitive()
                || type.getPackageName().startsWith("java.")
                || type.getPackageName().startsWith("javax.");
    }
}
