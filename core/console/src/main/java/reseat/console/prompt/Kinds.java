package reseat.console.prompt;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;

/** Infers the type of a chain of names from method signatures alone. */
final class Kinds {

    private static final List<String> ARRAY =
            List.of(
                    "at(",
                    "concat(",
                    "entries()",
                    "every(",
                    "filter(",
                    "find(",
                    "findIndex(",
                    "flatMap(",
                    "forEach(",
                    "includes(",
                    "indexOf(",
                    "join(",
                    "length",
                    "map(",
                    "reduce(",
                    "slice(",
                    "some(");
    private static final List<String> MAP =
            List.of("entries()", "forEach(", "get(", "has(", "keys()", "size", "values()");
    private static final List<String> TEXT =
            List.of(
                    "endsWith(",
                    "includes(",
                    "indexOf(",
                    "length",
                    "match(",
                    "padEnd(",
                    "padStart(",
                    "replace(",
                    "slice(",
                    "split(",
                    "startsWith(",
                    "toLowerCase()",
                    "toUpperCase()",
                    "trim()");
    private static final Set<String> SAME = Set.of("filter", "slice", "concat");
    private static final Set<String> ELEMENT = Set.of("at", "find", "get", "orElse");

    private final Value globals;

    Kinds(Value globals) {
        this.globals = globals;
    }

    Kind of(JsChain chain) {
        if (chain.links().isEmpty()) {
            return Kind.UNKNOWN;
        }
        JsChain.Link root = chain.links().get(0);
        List<JsChain.Link> rest = chain.links().subList(1, chain.links().size());
        List<Method> functions = JsBench.methods().get(root.name());
        if (root.called() && functions != null) {
            return along(functions.get(0).getGenericReturnType(), rest);
        }
        Value value = root.called() ? null : globals.getMember(root.name());
        if (value == null || value.isNull()) {
            return Kind.UNKNOWN;
        }
        if (value.isHostObject()) {
            Object held = value.asHostObject();
            return along(typeOf(held, rest), rest);
        }
        return ofScript(value, rest);
    }

    /** JavaScript objects: their own members, as far as names can be followed. */
    private Kind ofScript(Value value, List<JsChain.Link> rest) {
        if (value.isString()) {
            return along(String.class, rest);
        }
        if (rest.isEmpty()) {
            Map<String, String> members = new TreeMap<>();
            if (value.hasArrayElements()) {
                ARRAY.forEach(name -> members.put(name, ""));
            } else if (value.hasMembers()) {
                value.getMemberKeys().forEach(name -> members.put(name, ""));
            }
            return new Kind(null, members);
        }
        JsChain.Link next = rest.get(0);
        Value inner =
                next.called()
                        ? null
                        : next.name().isEmpty()
                                        && value.hasArrayElements()
                                        && value.getArraySize() > 0
                                ? value.getArrayElement(0)
                                : value.hasMembers() ? value.getMember(next.name()) : null;
        if (inner == null || inner.isNull()) {
            return Kind.UNKNOWN;
        }
        List<JsChain.Link> more = rest.subList(1, rest.size());
        return inner.isHostObject()
                ? along(typeOf(inner.asHostObject(), more), more)
                : ofScript(inner, more);
    }

    /** The type of an existing value; for lists and maps, that of their first element counts. */
    private static Type typeOf(Object held, List<JsChain.Link> rest) {
        if (held instanceof List<?> list && !list.isEmpty() && list.get(0) != null) {
            return new Of(List.class, List.of(typeOf(list.get(0), rest)));
        }
        if (held instanceof Map<?, ?> map && !map.isEmpty()) {
            Object first = map.values().iterator().next();
            return new Of(
                    Map.class,
                    List.of(String.class, first == null ? Object.class : first.getClass()));
        }
        return held.getClass();
    }

    private Kind along(@Nullable Type type, List<JsChain.Link> rest) {
        Type at = type;
        for (JsChain.Link link : rest) {
            at = at == null ? null : step(at, link);
        }
        return at == null ? Kind.UNKNOWN : new Kind(at, members(at));
    }

    private static @Nullable Type step(Type from, JsChain.Link link) {
        Class<?> raw = raw(from);
        boolean holder =
                Collection.class.isAssignableFrom(raw)
                        || Map.class.isAssignableFrom(raw)
                        || raw == Optional.class;
        if (holder) {
            if (SAME.contains(link.name())) {
                return from;
            }
            return link.name().isEmpty() || ELEMENT.contains(link.name()) ? last(from) : null;
        }
        return Arrays.stream(raw.getMethods())
                .filter(method -> method.getName().equals(link.name()) && link.called())
                .map(Method::getGenericReturnType)
                .findFirst()
                .orElse(null);
    }

    private Map<String, String> members(Type type) {
        Class<?> raw = raw(type);
        Map<String, String> members = new TreeMap<>();
        if (Collection.class.isAssignableFrom(raw)) {
            ARRAY.forEach(name -> members.put(name, ""));
        } else if (Map.class.isAssignableFrom(raw)) {
            MAP.forEach(name -> members.put(name, ""));
        } else if (raw == String.class) {
            TEXT.forEach(name -> members.put(name, ""));
        } else {
            Arrays.stream(raw.getMethods())
                    .filter(method -> !Modifier.isStatic(method.getModifiers()))
                    .filter(method -> isWorthNaming(method.getName()))
                    .filter(method -> method.getDeclaringClass() != Object.class)
                    .collect(Collectors.groupingBy(Method::getName))
                    .forEach(
                            (name, methods) ->
                                    members.put(
                                            JsOffers.call(name, methods), ApiWords.of(raw, name)));
        }
        return members;
    }

    private static boolean isWorthNaming(String name) {
        return !Set.of(
                        "equals",
                        "hashCode",
                        "compareTo",
                        "toString",
                        "describeConstable",
                        "getDeclaringClass")
                .contains(name);
    }

    private static Class<?> raw(Type type) {
        if (type instanceof Class<?> plain) {
            return plain;
        }
        if (type instanceof ParameterizedType generic) {
            return raw(generic.getRawType());
        }
        return type instanceof WildcardType wild ? raw(wild.getUpperBounds()[0]) : Object.class;
    }

    private static @Nullable Type last(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            return arguments[arguments.length - 1];
        }
        return null;
    }

    /** A parameterized type, built from existing values. */
    private record Of(Class<?> raw, List<Type> arguments) implements ParameterizedType {
        @Override
        public Type[] getActualTypeArguments() {
            return arguments.toArray(Type[]::new);
        }

        @Override
        public Type getRawType() {
            return raw;
        }

        @Override
        public @Nullable Type getOwnerType() {
            return null;
        }
    }
}
