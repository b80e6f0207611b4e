package reseat.internal.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A JSON array to be written. */
final class JsonArray {

    private final List<Object> values = new ArrayList<>();

    JsonArray add(Object value) {
        values.add(value);
        return this;
    }

    JsonObject addObject() {
        JsonObject child = new JsonObject();
        values.add(child);
        return child;
    }

    JsonArray addArray() {
        JsonArray child = new JsonArray();
        values.add(child);
        return child;
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    List<Object> values() {
        return Collections.unmodifiableList(values);
    }
}
