package reseat.console.prompt;

import java.util.Map;

/**
 * What is known of a value without having it: what can be asked of it.
 *
 * @param type its type in Java, for going on; null where only its members are known
 * @param members names that may follow a dot, each with what it is
 */
record Kind(
        java.lang.reflect.@org.jspecify.annotations.Nullable Type type,
        Map<String, String> members) {

    static final Kind UNKNOWN = new Kind(null, Map.of());
}
