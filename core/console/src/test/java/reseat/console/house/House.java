package reseat.console.house;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.function.Predicate;

/**
 * A code base built like ours: the real one, or the one of wrong examples.
 *
 * @param root the package that everything of ours is in
 * @param plugin tells classes of plugins from those of core
 * @param fileLibraries packages of libraries that read and write files
 */
record House(String root, Predicate<JavaClass> plugin, List<String> fileLibraries) {

    /** Where a class lives: the name of its area, and whether that is the closed side of it. */
    record Area(String name, boolean inside) {

        boolean isToolkit() {
            return !name.equals("console") && !name.equals("testkit") && !name.equals("plugins");
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
        return names[0].equals("internal")
                ? new Area(names.length > 1 ? names[1] : "internal", true)
                : new Area(names[0], false);
    }

    boolean isFileLibrary(JavaClass type) {
        String name = type.getPackageName() + ".";
        return fileLibraries.stream().anyMatch(library -> name.startsWith(library + "."));
    }
}
