package reseat.console.prompt;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.jspecify.annotations.Nullable;
import reseat.script.Bench;
import reseat.script.BenchException;

/** Offers each method of the bench as a JavaScript function. */
final class JsBench {

    private JsBench() {}

    /** Returns the methods of the bench by name, those with few parameters first. */
    static Map<String, List<Method>> methods() {
        return Arrays.stream(Bench.class.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .sorted(
                        Comparator.comparing(Method::getName)
                                .thenComparing(Method::getParameterCount)
                                .thenComparing(Method::toGenericString))
                .collect(
                        Collectors.groupingBy(
                                Method::getName, LinkedHashMap::new, Collectors.toList()));
    }

    static void bind(Bench bench, Value globals) {
        methods()
                .forEach(
                        (name, methods) ->
                                globals.putMember(
                                        name,
                                        (ProxyExecutable)
                                                args -> call(bench, name, methods, args)));
    }

    /** Calls the method that accepts these values; returns its result as JavaScript may see it. */
    static @Nullable Object call(Object bench, String name, List<Method> methods, Value[] given) {
        Object[] values = Arrays.stream(given).map(JsValues::of).toArray();
        for (Method method : methods) {
            Object[] args = fitted(method, values);
            if (args != null) {
                return JsFace.of(invoke(bench, method, args));
            }
        }
        throw new BenchException(
                name
                        + " does not take these arguments. It takes: "
                        + methods.stream()
                                .map(JsBench::signature)
                                .collect(Collectors.joining("; ")));
    }

    private static @Nullable Object invoke(Object bench, Method method, Object[] args) {
        try {
            return method.invoke(bench, args);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            Throwable cause = e.getCause();
            throw new BenchException(String.valueOf(cause == null ? e : cause.getMessage()), e);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Converts arguments for a method; null if it does not accept them. */
    private static Object @Nullable [] fitted(Method method, Object[] values) {
        Class<?>[] types = method.getParameterTypes();
        int fixed = method.isVarArgs() ? types.length - 1 : types.length;
        if (values.length < fixed || (!method.isVarArgs() && values.length > fixed)) {
            return null;
        }
        List<Object> args = new ArrayList<>();
        for (int i = 0; i < fixed; i++) {
            if (values[i] != null && !types[i].isInstance(values[i])) {
                return null;
            }
            args.add(values[i]);
        }
        if (method.isVarArgs()) {
            Object rest = rest(values, fixed);
            if (rest == null) {
                return null;
            }
            args.add(rest);
        }
        return args.toArray();
    }

    /** The trailing names, one by one or as one list. */
    private static String @Nullable [] rest(Object[] values, int fixed) {
        List<Object> rest = Arrays.asList(values).subList(fixed, values.length);
        if (rest.size() == 1 && rest.get(0) instanceof List<?> list) {
            rest = new ArrayList<>(list);
        }
        return rest.stream().allMatch(String.class::isInstance)
                ? rest.toArray(String[]::new)
                : null;
    }

    static String signature(Method method) {
        List<String> parameters = new ArrayList<>();
        for (int i = 0; i < method.getParameterCount(); i++) {
            boolean many = method.isVarArgs() && i == method.getParameterCount() - 1;
            parameters.add(method.getParameters()[i].getName() + (many ? "..." : ""));
        }
        return method.getName() + "(" + String.join(", ", parameters) + ")";
    }
}
