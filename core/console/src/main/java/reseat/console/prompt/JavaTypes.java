package reseat.console.prompt;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of types, as Java code can write them. */
final class JavaTypes {

    private JavaTypes() {}

    /** Returns the narrowest type for a variable with this value. */
    static String of(Object value) {
        if (value instanceof List<?> list) {
            return "java.util.List<" + common(list) + ">";
        }
        if (value instanceof Set<?> set) {
            return "java.util.Set<" + common(set) + ">";
        }
        if (value instanceof Map<?, ?> map) {
            return "java.util.Map<" + common(map.keySet()) + ", " + common(map.values()) + ">";
        }
        return visible(value.getClass());
    }

    /** Returns the common type of all elements, else Object. */
    private static String common(Collection<?> values) {
        String found = "";
        for (Object each : values) {
            String type = each == null ? "Object" : visible(each.getClass());
            if (!found.isEmpty() && !found.equals(type)) {
                return "Object";
            }
            found = type;
        }
        return found.isEmpty() ? "Object" : found;
    }

    private static String visible(Class<?> type) {
        List<Class<?>> open = new ArrayList<>(List.of(type));
        while (!open.isEmpty()) {
            Class<?> each = open.remove(0);
            if (isVisible(each)) {
                return each.getCanonicalName() + wildcards(each);
            }
            if (each.getSuperclass() != null && each.getSuperclass() != Object.class) {
                open.add(each.getSuperclass());
            }
            open.addAll(List.of(each.getInterfaces()));
        }
        return "Object";
    }

    private static boolean isVisible(Class<?> type) {
        for (Class<?> at = type; at != null; at = at.getEnclosingClass()) {
            if (!Modifier.isPublic(at.getModifiers())) {
                return false;
            }
        }
        return type.getCanonicalName() != null
                && type.getModule().isNamed()
                && type.getModule().isExported(type.getPackageName());
    }

    private static String wildcards(Class<?> type) {
        int count = type.getTypeParameters().length;
        return count == 0 ? "" : "<" + "?, ".repeat(count - 1) + "?>";
    }
}
