package reseat.model;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Where the facts of a device were read. There are thousands of locations and most are never
 * requested, so they can be supplied lazily.
 */
final class Origins {

    private final Map<String, Origin> stated = new LinkedHashMap<>();
    private @Nullable Supplier<Map<String, Origin>> later;
    private volatile @Nullable Map<String, Origin> all;

    void put(String pointer, Origin origin) {
        stated.put(pointer, origin);
    }

    void add(Supplier<Map<String, Origin>> supplier) {
        later = supplier;
    }

    /**
     * Returns all locations. Two threads that call at the same time may both collect them; both get
     * the same result, and neither waits.
     */
    Map<String, Origin> all() {
        Map<String, Origin> known = all;
        if (known == null) {
            Map<String, Origin> collected = new LinkedHashMap<>(stated);
            if (later != null) {
                collected.putAll(later.get());
            }
            known = Ordered.copyOf(collected);
            all = known;
        }
        return known;
    }
}
