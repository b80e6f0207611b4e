package reseat.console.house;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A code base built like ours: the real one, or the one of wrong examples.
 *
 * @param root the package that everything of ours is in
 * @param plugin tells classes of plugins from those of core
 */
record House(String root, Predicate<JavaClass> plugin) {

    /** Where a class lives: the name of its area, and whether that is the closed side of it. */
    record Area(String name, boolean inside) {

        /** Tells whether output must be the same on every day: all but programs and plugins. */
        boolean isTimeless() {
            return !Set.of("console", "script", "testkit", "plugins").contains(name);
        }

        /** Tells whether others compile against it. */
        boolean isExported() {
            return !inside && !name.equals("console") && !name.equals("plugins");
        }

        @Override
        public String toString() {
            return inside ? "the inside of " + name : name;
        }
    }

    boolean owns(JavaClass type) {
        return type.getPackageName().startsWith(root + ".");
    }

    /** Returns the area of one of our classes: {@code x} for root.x and root.internal.x. */
    Area areaOf(JavaClass type) {
        if (plugin.test(type)) {
            return new Area("plugins", false);
        }
        String[] names = type.getPackageName().substring(root.length() + 1).split("\\.");
        if (names[0].equals("internal")) {
            return new Area(names.length > 1 ? names[1] : "internal", true);
        }
        // exported to the console alone
        return new Area(names[0], type.getPackageName().equals(root + ".script.host"));
    }
}
