package reseat.script.host;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.graalvm.polyglot.HostAccess;
import reseat.check.CheckInput;

/**
 * The part of Java that JavaScript can access: the exported toolkit types reachable from some
 * roots, and of these only the methods that take and return values. Everything else is denied.
 *
 * <p>Only the plain types below are listed by hand. A method that takes or returns anything else
 * (files, streams, classes, loaders, threads, functions) is left out, so that a method added to the
 * toolkit later cannot open a hole.
 */
final class JsApi {

    /** Java types of values. */
    private static final Set<Class<?>> PLAIN =
            Set.of(
                    String.class,
                    Boolean.class,
                    Integer.class,
                    Long.class,
                    Double.class,
                    BigDecimal.class,
                    LocalDate.class);

    /** Java types of containers. */
    private static final Set<Class<?>> HOLDERS =
            Set.of(
                    Optional.class,
                    OptionalInt.class,
                    OptionalLong.class,
                    OptionalDouble.class,
                    List.class,
                    Set.class,
                    Collection.class,
                    Map.class,
                    Map.Entry.class);

    /**
     * The callable methods of the Java types; none of them changes anything or takes a function.
     */
    private static final Map<Class<?>, Set<String>> ASKED =
            Map.ofEntries(
                    Map.entry(Optional.class, Set.of("isPresent", "isEmpty", "get", "orElse")),
                    Map.entry(
                            OptionalInt.class,
                            Set.of("isPresent", "isEmpty", "getAsInt", "orElse")),
                    Map.entry(
                            OptionalLong.class,
                            Set.of("isPresent", "isEmpty", "getAsLong", "orElse")),
                    Map.entry(
                            OptionalDouble.class,
                            Set.of("isPresent", "isEmpty", "getAsDouble", "orElse")),
                    Map.entry(Collection.class, Set.of("size", "isEmpty", "contains")),
                    Map.entry(List.class, Set.of("size", "isEmpty", "contains", "get", "indexOf")),
                    Map.entry(Set.class, Set.of("size", "isEmpty", "contains")),
                    Map.entry(Map.class, Set.of("containsKey", "get", "keySet", "values")),
                    Map.entry(Map.Entry.class, Set.of("getKey", "getValue")),
                    Map.entry(
                            BigDecimal.class,
                            Set.of(
                                    "doubleValue",
                                    "intValue",
                                    "signum",
                                    "toPlainString",
                                    "compareTo")),
                    Map.entry(
                            LocalDate.class,
                            Set.of("isBefore", "isAfter", "isEqual", "toEpochDay", "plusDays")));

    /** Hash codes differ between runs; the language does its own comparisons. */
    private static final Set<String> NOT_ASKED = Set.of("hashCode", "equals");

    private final Set<Class<?>> types = new LinkedHashSet<>();
    private final Map<String, Method> methods = new TreeMap<>();

    private JsApi(List<Class<?>> roots) {
        Deque<Class<?>> open = new ArrayDeque<>(roots);
        while (!open.isEmpty()) {
            Class<?> type = open.removeFirst();
            if (isOurs(type) && types.add(type)) {
                reached(type).forEach(open::addLast);
            }
        }
        types.forEach(this::allow);
        ASKED.keySet().forEach(this::allowAsked);
    }

    /** What is reached from the input of a check and from further types of the toolkit. */
    static JsApi of(List<Class<?>> more) {
        List<Class<?>> roots = new ArrayList<>(List.of(CheckInput.class));
        roots.addAll(more);
        return new JsApi(roots);
    }

    /** Returns the reachable toolkit types. */
    Set<Class<?>> types() {
        return Collections.unmodifiableSet(types);
    }

    /** Returns the callable methods, sorted by signature. */
    Map<String, Method> methods() {
        return Collections.unmodifiableMap(methods);
    }

    /** Returns the reachable enums, by their Java names. */
    Map<String, Class<?>> enums() {
        Map<String, Class<?>> named = new TreeMap<>();
        for (Class<?> type : types) {
            if (type.isEnum()) {
                named.put(name(type), type);
            }
        }
        return new LinkedHashMap<>(named);
    }

    /** Returns the host access: only the callable methods, and read access to lists and maps. */
    HostAccess access() {
        HostAccess.Builder access =
                HostAccess.newBuilder()
                        .allowListAccess(true)
                        .allowMapAccess(true)
                        .allowIterableAccess(true)
                        .allowIteratorAccess(true)
                        .allowMutableTargetMappings();
        methods.values().forEach(access::allowAccess);
        return access.build();
    }

    private static String name(Class<?> type) {
        Class<?> outer = type.getEnclosingClass();
        return outer == null ? type.getSimpleName() : name(outer) + "." + type.getSimpleName();
    }

    private static Set<Class<?>> reached(Class<?> type) {
        Set<Class<?>> next = new LinkedHashSet<>();
        for (Method method : type.getMethods()) {
            if (!Modifier.isStatic(method.getModifiers()) && isOurs(method.getDeclaringClass())) {
                named(method.getGenericReturnType(), next);
                for (Class<?> parameter : method.getParameterTypes()) {
                    if (parameter.isEnum()) {
                        next.add(parameter);
                    }
                }
            }
        }
        if (type.isSealed()) {
            Collections.addAll(next, type.getPermittedSubclasses());
        }
        return next;
    }

    private static void named(Type type, Set<Class<?>> found) {
        if (type instanceof Class<?> plain) {
            found.add(plain);
        } else if (type instanceof ParameterizedType generic) {
            named(generic.getRawType(), found);
            for (Type argument : generic.getActualTypeArguments()) {
                named(argument, found);
            }
        } else if (type instanceof WildcardType wild) {
            for (Type bound : wild.getUpperBounds()) {
                named(bound, found);
            }
        }
    }

    private void allow(Class<?> type) {
        for (Method method : type.getMethods()) {
            boolean own =
                    isOurs(method.getDeclaringClass())
                            || (method.getDeclaringClass() == Enum.class
                                    && method.getName().equals("name"));
            if (own && isHarmless(method)) {
                methods.put(signature(method), method);
            }
        }
    }

    private void allowAsked(Class<?> type) {
        Set<String> names = ASKED.getOrDefault(type, Set.of());
        for (Method method : type.getMethods()) {
            if (names.contains(method.getName()) && !Modifier.isStatic(method.getModifiers())) {
                methods.put(signature(method), method);
            }
        }
    }

    private boolean isHarmless(Method method) {
        if (Modifier.isStatic(method.getModifiers())
                || method.isBridge()
                || NOT_ASKED.contains(method.getName())) {
            return false;
        }
        Set<Class<?>> mentioned = new LinkedHashSet<>();
        named(method.getGenericReturnType(), mentioned);
        for (Class<?> parameter : method.getParameterTypes()) {
            if (HOLDERS.contains(parameter)) {
                return false; // no JavaScript object is ever treated as a list
            }
            mentioned.add(parameter);
        }
        return mentioned.stream().allMatch(this::isValue);
    }

    private boolean isValue(Class<?> type) {
        return type.isPrimitive()
                || PLAIN.contains(type)
                || HOLDERS.contains(type)
                || types.contains(type);
    }

    /** Exported by our modules, and public with all enclosing types. */
    private static boolean isOurs(Class<?> type) {
        return Modifier.isPublic(type.getModifiers()) && OpenModules.export(type);
    }

    private static String signature(Method method) {
        StringBuilder text = new StringBuilder();
        text.append(method.getDeclaringClass().getName()).append('.').append(method.getName());
        text.append('(');
        for (Class<?> parameter : method.getParameterTypes()) {
            text.append(text.charAt(text.length() - 1) == '(' ? "" : ", ");
            text.append(parameter.getSimpleName());
        }
        return text.append(')').toString();
    }
}
