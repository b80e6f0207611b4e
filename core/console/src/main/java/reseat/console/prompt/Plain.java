package reseat.console.prompt;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import reseat.check.Finding;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.TableRow;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Origin;

/** Breaks values down for display. */
final class Plain {

    private static final int LONGEST = 60;

    private Plain() {}

    static @Nullable Object of(@Nullable Object value) {
        return View.unwrapped(value);
    }

    /**
     * Returns the fields of a record by name; null if the value is not a record, or is not
     * accessible.
     */
    static @Nullable Map<String, Object> fields(@Nullable Object value) {
        if (value == null || !value.getClass().isRecord() || value instanceof Origin) {
            return null;
        }
        if (value instanceof TableRow row) {
            return new LinkedHashMap<>(row.cells());
        }
        if (value instanceof Finding finding) {
            return finding(finding);
        }
        if (value instanceof CostedAct act) {
            Map<String, Object> fields = open(act);
            if (fields != null) {
                fields.put("act", act.act().id());
            }
            return fields;
        }
        return open(value);
    }

    private static @Nullable Map<String, Object> open(Object value) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            Method accessor = component.getAccessor();
            try {
                if (!accessor.canAccess(value) && !accessor.trySetAccessible()) {
                    return null;
                }
                fields.put(component.getName(), accessor.invoke(value));
            } catch (IllegalAccessException | InvocationTargetException e) {
                return null;
            }
        }
        return fields;
    }

    /** The fields of a finding in reading order: severity, place, message, remedy. */
    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("severity", finding.severity());
        fields.put("subject", finding.subject());
        fields.put("title", finding.title());
        fields.put("message", finding.message());
        fields.put("evidence", finding.evidence());
        fields.put("remedy", finding.remedy());
        fields.put("check", finding.check());
        fields.put("at", finding.at());
        return fields;
    }

    /** The fields of a finding in a table; a single finding is shown in full. */
    static Map<String, Object> inShort(Finding finding) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("severity", finding.severity());
        fields.put("subject", finding.subject());
        fields.put("title", finding.title());
        fields.put("remedy", finding.remedy());
        return fields;
    }

    /** Returns a summary of a device. */
    static Map<String, Object> device(Device device) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("id", device.id());
        fields.put("variant", device.variant());
        fields.put("name", device.name());
        fields.put("maker", device.maker());
        fields.put("base", device.base());
        fields.put("parts", device.parts().size());
        fields.put("joints", device.joints().size());
        fields.put(
                "screws",
                device.joints().values().stream().filter(j -> j.seat().isPresent()).count());
        fields.put("supplies", device.supplies().size());
        return fields;
    }

    /** Returns a summary of the fastener tables. */
    static List<Map<String, Object>> tables(FastenerTables tables) {
        return Arrays.stream(FastenerTable.values())
                .map(
                        table -> {
                            Map<String, Object> row = new LinkedHashMap<>();
                            row.put("table", table.title());
                            row.put("rows", tables.rows(table).size());
                            row.put(
                                    "columns",
                                    table.columns().stream()
                                            .map(FastenerTable.Column::name)
                                            .filter(n -> !n.equals("source") && !n.equals("tag"))
                                            .collect(Collectors.joining(", ")));
                            return row;
                        })
                .toList();
    }

    /** Returns the readable name of a type, with its enclosing type. */
    static String typeName(Object value) {
        Class<?> type = value.getClass();
        String name = type.getSimpleName();
        Class<?> outer = type.getEnclosingClass();
        return outer == null || outer.getName().startsWith("REPL.")
                ? name
                : outer.getSimpleName() + "." + name;
    }

    /** Returns a value in a few words on one line. */
    static String words(@Nullable Object value) {
        Object plain = of(value);
        if (plain == null) {
            return "";
        }
        if (plain instanceof Double || plain instanceof Float) {
            return number(((Number) plain).doubleValue());
        }
        if (plain instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        if (plain instanceof Act act) {
            return act.id();
        }
        if (plain instanceof Collection<?> values) {
            String joined = values.stream().map(Plain::words).collect(Collectors.joining(", "));
            return joined.length() <= LONGEST ? joined : values.size() + ": " + joined;
        }
        if (plain instanceof Map<?, ?> map) {
            String keys = map.keySet().stream().map(Plain::words).collect(Collectors.joining(", "));
            return keys.length() <= LONGEST ? keys : map.size() + ": " + keys;
        }
        Map<String, Object> fields = plain instanceof Device ? null : fields(plain);
        Object id = fields == null ? null : fields.get("id");
        if (id instanceof String text && !text.isEmpty()) {
            return text;
        }
        String text =
                fields == null
                        ? String.valueOf(plain)
                        : fields.values().stream()
                                .map(Plain::words)
                                .filter(word -> !word.isEmpty())
                                .collect(Collectors.joining(" "));
        return text.replace("\n", " ").replace('\t', ' ');
    }

    private static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        double size = Math.abs(value);
        if (size >= 1e-4 && size < 1e9) {
            return String.format(Locale.ROOT, "%.6f", value).replaceAll("0+$", "");
        }
        return Double.toString(value);
    }
}
