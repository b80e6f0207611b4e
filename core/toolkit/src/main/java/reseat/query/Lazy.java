package reseat.query;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is computed on first use, by one thread. */
final class Lazy<T> {

    private final Supplier<T> compute;
    private @Nullable T value;

    Lazy(Supplier<T> compute) {
        this.compute = compute;
    }

    synchronized T get() {
        T known = value;
        if (known == null) {
            known = compute.get();
            value = known;
        }
        return known;
    }
}
