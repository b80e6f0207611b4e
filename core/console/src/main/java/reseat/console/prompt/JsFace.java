package reseat.console.prompt;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyObject;
import org.jspecify.annotations.Nullable;
import reseat.stock.Stock;
import reseat.stock.StockSource;

/**
 * An object of a plugin as JavaScript sees it: by the methods of the interface that it serves,
 * since its own class is internal.
 */
final class JsFace implements ProxyObject {

    private static final List<Class<?>> FACES = List.of(Stock.class, StockSource.class);

    private final Object held;
    private final Class<?> face;

    private JsFace(Object held, Class<?> face) {
        this.held = held;
        this.face = face;
    }

    /** Returns the JavaScript form of a value. */
    static @Nullable Object of(@Nullable Object value) {
        if (value instanceof List<?> list && !list.isEmpty() && of(list.get(0)) instanceof JsFace) {
            return list.stream().map(JsFace::of).toList();
        }
        return FACES.stream()
                .filter(face -> face.isInstance(value))
                .findFirst()
                .<Object>map(face -> new JsFace(java.util.Objects.requireNonNull(value), face))
                .orElse(value);
    }

    /** Returns the object itself. */
    Object held() {
        return held;
    }

    @Override
    public Object getMember(String key) {
        List<Method> methods =
                Arrays.stream(face.getMethods()).filter(m -> m.getName().equals(key)).toList();
        return (ProxyExecutable) args -> JsBench.call(held, key, methods, args);
    }

    @Override
    public Object getMemberKeys() {
        return Arrays.stream(face.getMethods()).map(Method::getName).distinct().sorted().toList();
    }

    @Override
    public boolean hasMember(String key) {
        return Arrays.stream(face.getMethods()).anyMatch(method -> method.getName().equals(key));
    }

    @Override
    public void putMember(String key, Value value) {
        throw new UnsupportedOperationException("it is read-only");
    }
}
