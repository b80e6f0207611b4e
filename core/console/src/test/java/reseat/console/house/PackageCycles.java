package reseat.console.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Finds packages that know each other, be it over others. An exported package and its inner one
 * ({@code root.x} and {@code root.internal.x}) count as one.
 */
final class PackageCycles {

    private final String root;

    /** For each package those it knows, each with one class that does. */
    private final SortedMap<String, SortedMap<String, String>> knows = new TreeMap<>();

    private PackageCycles(String root) {
        this.root = root;
    }

    /** Returns a line for each pair of packages that reach each other; empty if there is none. */
    static List<String> of(JavaClasses types, String root) {
        PackageCycles cycles = new PackageCycles(root);
        types.forEach(cycles::note);
        List<String> found = new ArrayList<>();
        for (Map.Entry<String, SortedMap<String, String>> from : cycles.knows.entrySet()) {
            for (Map.Entry<String, String> to : from.getValue().entrySet()) {
                if (cycles.reaches(to.getKey(), from.getKey(), new ArrayList<>())) {
                    found.add(from.getKey() + " -> " + to.getKey() + ": " + to.getValue());
                }
            }
        }
        return found;
    }

    private void note(JavaClass type) {
        if (!isOurs(type)) {
            return;
        }
        String from = place(type);
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
            JavaClass target = dependency.getTargetClass().getBaseComponentType();
            if (isOurs(target) && !place(target).equals(from)) {
                knows.computeIfAbsent(from, k -> new TreeMap<>())
                        .putIfAbsent(place(target), dependency.getDescription());
            }
        }
    }

    private boolean isOurs(JavaClass type) {
        return type.getPackageName().startsWith(root + ".");
    }

    private String place(JavaClass type) {
        return type.getPackageName().replace(root + ".internal.", root + ".");
    }

    private boolean reaches(String from, String to, List<String> seen) {
        if (from.equals(to)) {
            return true;
        }
        if (seen.contains(from)) {
            return false;
        }
        seen.add(from);
        return knows.getOrDefault(from, new TreeMap<>()).keySet().stream()
                .anyMatch(next -> reaches(next, to, seen));
    }
}
