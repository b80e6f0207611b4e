package reseat.script.host;

import java.lang.module.ModuleDescriptor;
import java.util.List;
import java.util.stream.Stream;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.planner.Planner;
import reseat.script.Bench;

/** The Reseat modules that Java code at the prompt and in scripts can use. */
public final class OpenModules {

    private static final List<Module> MODULES =
            List.of(
                    CheckInput.class.getModule(),
                    DeviceFiles.class.getModule(),
                    Planner.class.getModule(),
                    Bench.class.getModule());

    private OpenModules() {}

    /**
     * Returns the names of the modules, separated by commas, as {@code --add-modules} takes them.
     */
    public static String names() {
        return String.join(",", MODULES.stream().map(Module::getName).toList());
    }

    /** Returns an import for each package that they export unconditionally, sorted. */
    public static List<String> imports() {
        return MODULES.stream()
                .flatMap(OpenModules::packages)
                .sorted()
                .map(name -> "import " + name + ".*;")
                .toList();
    }

    /** Returns whether the package of a type is exported unconditionally by one of them. */
    static boolean export(Class<?> type) {
        return MODULES.contains(type.getModule())
                && packages(type.getModule()).anyMatch(type.getPackageName()::equals);
    }

    private static Stream<String> packages(Module module) {
        return module.getDescriptor().exports().stream()
                .filter(export -> !export.isQualified())
                .map(ModuleDescriptor.Exports::source);
    }
}
