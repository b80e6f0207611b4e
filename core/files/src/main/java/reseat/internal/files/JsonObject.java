package reseat.internal.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A JSON object to be written: keys in the order in which they are put. Values are text, numbers,
 * flags and collections.
 */
final class JsonObject {

    private static final JsonFactory FACTORY = new JsonFactory();

    private final Map<String, Object> values = new LinkedHashMap<>();

    JsonObject put(String key, String value) {
        return set(key, value);
    }

    JsonObject put(String key, long value) {
        return set(key, value);
    }

    JsonObject put(String key, double value) {
        return set(key, value);
    }

    JsonObject put(String key, boolean value) {
        return set(key, value);
    }

    JsonObject put(String key, BigDecimal value) {
        return set(key, value);
    }

    JsonObject set(String key, Object value) {
        values.put(key, value);
        return this;
    }

    JsonObject putObject(String key) {
        JsonObject child = new JsonObject();
        values.put(key, child);
        return child;
    }

    JsonArray putArray(String key) {
        JsonArray child = new JsonArray();
        values.put(key, child);
        return child;
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /**
     * Writes the object identically on every system: indented by two spaces, with line feeds, one
     * at the end.
     */
    String text() {
        StringWriter out = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(out)) {
            Separators separators =
                    Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER);
            generator.setPrettyPrinter(
                    new DefaultPrettyPrinter(separators)
                            .withObjectIndenter(new DefaultIndenter("  ", "\n")));
            write(generator, this);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return out.append('\n').toString();
    }

    private static void write(JsonGenerator out, Object value) throws IOException {
        if (value instanceof JsonObject object) {
            out.writeStartObject();
            for (Map.Entry<String, Object> each : object.values.entrySet()) {
                out.writeFieldName(each.getKey());
                write(out, each.getValue());
            }
            out.writeEndObject();
        } else if (value instanceof JsonArray array) {
            out.writeStartArray();
            for (Object each : array.values()) {
                write(out, each);
            }
            out.writeEndArray();
        } else if (value instanceof String text) {
            out.writeString(text);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof Long whole) {
            out.writeNumber(whole);
        } else if (value instanceof Double real) {
            out.writeNumber(real);
        } else {
            out.writeNumber((BigDecimal) value);
        }
    }
}
