package reseat.console.prompt;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import reseat.script.Bench;
import reseat.script.host.OpenModules;

/** The start-up code of each Java session: imports, and the methods of the bench as functions. */
final class JavaPrelude {

    /** The variable that holds the bench. */
    static final String BENCH = "bench";

    private JavaPrelude() {}

    /** Returns imports of the exported packages; ambiguous simple names must be qualified. */
    static List<String> imports() {
        List<String> lines = new ArrayList<>();
        lines.add("import java.util.*;");
        lines.add("import java.util.function.*;");
        lines.add("import java.util.stream.*;");
        lines.add("import java.nio.file.*;");
        lines.addAll(OpenModules.imports());
        // another package may have a Plan, too; this one is meant
        lines.add("import reseat.plan.Plan;");
        return lines;
    }

    /** Returns the declaration of the variable that holds the bench. */
    static String bench() {
        return "reseat.script.Bench " + BENCH + ";";
    }

    /** Returns one function for each method of the bench. */
    static List<String> functions() {
        return Arrays.stream(Bench.class.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .sorted(Comparator.comparing(Method::toGenericString))
                .map(JavaPrelude::function)
                .toList();
    }

    private static String function(Method method) {
        List<String> declared = new ArrayList<>();
        List<String> passed = new ArrayList<>();
        Parameter[] parameters = method.getParameters();
        for (int i = 0; i < parameters.length; i++) {
            String type = name(parameters[i].getParameterizedType().getTypeName());
            if (method.isVarArgs() && i == parameters.length - 1) {
                type = type.substring(0, type.length() - 2) + "...";
            }
            declared.add(type + " " + parameters[i].getName());
            passed.add(parameters[i].getName());
        }
        String returned = name(method.getGenericReturnType().getTypeName());
        return returned
                + " "
                + method.getName()
                + "("
                + String.join(", ", declared)
                + ") { "
                + (returned.equals("void") ? "" : "return ")
                + BENCH
                + "."
                + method.getName()
                + "("
                + String.join(", ", passed)
                + "); }";
    }

    private static String name(String binary) {
        return binary.replace('$', '.');
    }
}
