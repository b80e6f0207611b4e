package reseat.internal.files;

import java.util.List;
import reseat.internal.files.Scalars.ScalarType;
import reseat.internal.files.Shape.FormatKey;
import reseat.model.Ids;

/**
 * Writes the JSON Schema (2020-12) of the {@link Format}. The schema covers keys, types, patterns
 * and ranges. References and the consistency of facts are covered only by {@link ShapeCheck} and
 * {@link Soundness}.
 */
public final class SchemaWriter {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private final JsonObject definitions = new JsonObject();

    private SchemaWriter() {}

    /** Returns the schema as indented JSON, the same text at each call. */
    public static String json() {
        SchemaWriter writer = new SchemaWriter();
        JsonObject schema = new JsonObject();
        schema.put("$schema", DIALECT);
        schema.put("$id", "urn:reseat:" + Format.NAME);
        schema.put("title", "Reseat device file, " + Format.NAME);
        JsonObject isResolved = new JsonObject();
        isResolved.putObject("properties").putObject("resolved").put("const", true);
        isResolved.putArray("required").add("resolved");
        schema.set("if", isResolved);
        schema.set("then", writer.write(Format.DEVICE, true));
        schema.set("else", writer.write(Format.DEVICE, false));
        schema.set("$defs", writer.definitions);
        return schema.text();
    }

    private JsonObject write(Shape shape, boolean resolved) {
        if (shape instanceof Shape.Group group) {
            return group(group, resolved);
        }
        if (shape instanceof Shape.Either either) {
            return anyOf(write(either.brief(), resolved), write(either.full(), resolved));
        }
        if (shape instanceof Shape.Table table) {
            JsonObject node = type("object");
            node.putObject("propertyNames").put("pattern", "^" + Ids.PATTERN + "$");
            node.set("additionalProperties", write(table.value(), resolved));
            return node;
        }
        if (shape instanceof Shape.Several several) {
            return several(several, resolved);
        }
        if (shape instanceof Shape.Corner) {
            JsonObject node = type("array");
            node.put("minItems", 2L).put("maxItems", 2L);
            node.set("items", value(ScalarType.COORDINATE));
            return node;
        }
        if (shape instanceof Shape.Choice choice) {
            JsonObject node = new JsonObject();
            JsonArray words = node.putArray("enum");
            choice.words().forEach(words::add);
            return node;
        }
        if (shape instanceof Shape.Ref) {
            return value(ScalarType.ID);
        }
        return shape instanceof Shape.Value value ? value(value.type()) : type("object");
    }

    /**
     * Writes a group once, under its name; resolved files have definitions of their own, as they
     * need other keys.
     */
    private JsonObject group(Shape.Group group, boolean resolved) {
        String name = group.name() + (resolved ? "-resolved" : "");
        if (!definitions.has(name)) {
            JsonObject node = type("object");
            definitions.set(name, node);
            JsonObject properties = node.putObject("properties");
            JsonArray required = new JsonArray();
            JsonArray all = new JsonArray();
            for (FormatKey key : group.keys().values()) {
                if (key.need() == Shape.Need.ONLY_RESOLVED && !resolved) {
                    continue;
                }
                properties.set(key.name(), property(key, resolved));
                if (key.need().required(resolved) && key.instead().isEmpty()) {
                    required.add(key.name());
                } else if (key.need().required(resolved)) {
                    all.add(anyOf(requires(key.name()), requires(key.instead())));
                }
                if (!key.instead().isEmpty() && key.name().compareTo(key.instead()) < 0) {
                    JsonObject both = new JsonObject();
                    both.putArray("required").add(key.name()).add(key.instead());
                    all.add(new JsonObject().set("not", both));
                }
            }
            if (!required.isEmpty()) {
                node.set("required", required);
            }
            if (!all.isEmpty()) {
                node.set("allOf", all);
            }
            node.put("additionalProperties", false);
        }
        return new JsonObject().put("$ref", "#/$defs/" + name);
    }

    /** An empty value counts as not given, unless the key is required. */
    private JsonObject property(FormatKey key, boolean resolved) {
        JsonObject written = write(key.shape(), resolved);
        JsonObject node =
                key.need().required(resolved) && key.instead().isEmpty()
                        ? written
                        : anyOf(written, type("null"));
        return node.put("description", key.help());
    }

    private JsonObject several(Shape.Several several, boolean resolved) {
        JsonObject list = type("array");
        if (several.least() > 0) {
            list.put("minItems", several.least());
        }
        if (several.distinct()) {
            list.put("uniqueItems", true);
        }
        JsonObject item = write(several.item(), resolved);
        list.set("items", item);
        return several.soleItemWillDo() && several.least() < 2 ? anyOf(item, list) : list;
    }

    private static JsonObject value(ScalarType type) {
        return switch (type) {
            // an id of digits alone may be written without quotes
            case ID -> types("string", "integer").put("pattern", "^" + Ids.PATTERN + "$");
            case TEXT -> types("string", "number");
            case FORMAT -> new JsonObject().put("const", Format.NAME);
            case BOOL -> type("boolean");
            case COUNT, MS -> type("integer").put("minimum", 0);
            case COORDINATE -> type("number");
            case MM, NM -> type("number").put("minimum", 0);
            case QUANTITY -> type("number").put("exclusiveMinimum", 0);
            case LENGTH, TORQUE -> type("string").put("pattern", "^\\s*[+]?[0-9.]");
            case SEAT_LENGTH -> anyOf(value(ScalarType.MM), value(ScalarType.LENGTH));
            case SEAT_TORQUE -> anyOf(value(ScalarType.NM), value(ScalarType.TORQUE));
            case TIME, DWELL, TABLE_TIME ->
                    anyOf(type("integer").put("minimum", 0), type("string"));
        };
    }

    private static JsonObject requires(String key) {
        JsonObject node = new JsonObject();
        node.putArray("required").add(key);
        return node;
    }

    private static JsonObject type(String name) {
        return new JsonObject().put("type", name);
    }

    private static JsonObject types(String... names) {
        JsonObject node = new JsonObject();
        JsonArray all = node.putArray("type");
        List.of(names).forEach(all::add);
        return node;
    }

    private static JsonObject anyOf(JsonObject... shapes) {
        JsonObject node = new JsonObject();
        JsonArray all = node.putArray("anyOf");
        List.of(shapes).forEach(all::add);
        return node;
    }
}
