package reseat.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies maps and keeps their order, which {@link Map#copyOf} does not. */
public final class Ordered {

    private Ordered() {}

    /** Returns an unmodifiable copy in the same order. */
    public static <V> Map<String, V> copyOf(Map<String, V> map) {
        if (map.size() == 1) {
            // most joints have one way
            Map.Entry<String, V> only = map.entrySet().iterator().next();
            return Collections.singletonMap(only.getKey(), only.getValue());
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
