package reseat.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies of maps that keep their order; {@link Map#copyOf} does not. */
final class Ordered {

    private Ordered() {}

    static <V> Map<String, V> copyOf(Map<String, V> map) {
        if (map.size() == 1) {
            // as most joints have one way
            Map.Entry<String, V> only = map.entrySet().iterator().next();
            return Collections.singletonMap(only.getKey(), only.getValue());
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
