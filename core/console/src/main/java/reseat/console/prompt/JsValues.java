package reseat.console.prompt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;

/** Converts JavaScript values to Java; toolkit objects stay the same. */
final class JsValues {

    private static final int DEEPEST = 12;
    private static final int MOST = 100_000;

    private JsValues() {}

    static @Nullable Object of(Value value) {
        return of(value, 0);
    }

    private static @Nullable Object of(Value value, int depth) {
        if (value.isNull()) {
            return null;
        }
        if (value.isHostObject()) {
            return value.asHostObject();
        }
        if (value.isProxyObject() && value.asProxyObject() instanceof JsFace face) {
            return face.held();
        }
        if (value.isString()) {
            return value.asString();
        }
        if (value.isBoolean()) {
            return value.asBoolean();
        }
        if (value.isNumber()) {
            return number(value);
        }
        if (value.canExecute() || depth > DEEPEST) {
            return value.toString().lines().findFirst().orElse("") + (depth > DEEPEST ? "…" : "");
        }
        if (value.hasArrayElements()) {
            List<Object> list = new ArrayList<>();
            for (long i = 0; i < Math.min(MOST, value.getArraySize()); i++) {
                list.add(of(value.getArrayElement(i), depth + 1));
            }
            return list;
        }
        if (value.hasHashEntries()) {
            Map<Object, Object> map = new LinkedHashMap<>();
            Value entries = value.getHashEntriesIterator();
            while (entries.hasIteratorNextElement()) {
                Value entry = entries.getIteratorNextElement();
                map.put(
                        of(entry.getArrayElement(0), depth + 1),
                        of(entry.getArrayElement(1), depth + 1));
            }
            return map;
        }
        if (value.hasMembers() && !value.isMetaObject()) {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (String key : value.getMemberKeys()) {
                map.put(key, of(value.getMember(key), depth + 1));
            }
            return map;
        }
        return value.toString();
    }

    private static Object number(Value value) {
        if (value.fitsInInt()) {
            return value.asInt();
        }
        if (value.fitsInLong()) {
            return value.asLong();
        }
        return value.asDouble();
    }
}
