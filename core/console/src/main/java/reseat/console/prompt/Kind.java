package reseat.console.prompt;

import java.util.Map;

/**
 * The static type of a value, for completion.
 *
 * @param type its Java type; null if only its members are known
 * @param members names that may follow a dot, each with its description
 */
record Kind(
        java.lang.reflect.@org.jspecify.annotations.Nullable Type type,
        Map<String, String> members) {

    static final Kind UNKNOWN = new Kind(null, Map.of());
}
