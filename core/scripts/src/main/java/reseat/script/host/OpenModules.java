package reseat.script.host;

import java.lang.module.ModuleDescriptor;
import java.util.List;
import java.util.stream.Stream;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.planner.Planner;
import reseat.script.Bench;

/** The modules of ours that Java at the prompt and in scripts can name. */
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

    /** Returns an import for each package that they export to everybody, sorted. */
    public static List<String> imports() {
        return MODULES.stream()
                .flatMap(OpenModules::packages)
                .sorted()
                .map(name -> "import " + name + ".*;")
                .toList();
    }

    /** Tells whether a type lies in a package that one of them exports to everybody. */
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
