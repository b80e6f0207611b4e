package reseat.console.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.files.PluginFiles;
import reseat.spi.Plugins;

/** Our own plugins are found in a module and on a class path alike, each of them once. */
class BundledPluginsTest {

    private static final String SERVICE = "reseat.spi.Plugin";

    private static List<Path> plugins() {
        return BuiltClasses.folders().stream()
                .filter(folder -> folder.getParent().getParent().getParent().endsWith("plugins"))
                .toList();
    }

    @Test
    void sayTheSameInTheModuleAndInTheServicesFile() throws IOException {
        assertFalse(plugins().isEmpty());
        for (Path folder : plugins()) {
            ModuleDescriptor module =
                    ModuleFinder.of(folder).findAll().iterator().next().descriptor();
            Set<String> provided =
                    module.provides().stream()
                            .filter(provides -> provides.service().equals(SERVICE))
                            .flatMap(provides -> provides.providers().stream())
                            .collect(Collectors.toSet());
            Path services = folder.resolve("META-INF/services").resolve(SERVICE);
            assertTrue(Files.exists(services), services + " is missing");
            assertEquals(provided, Set.copyOf(Files.readAllLines(services)), folder.toString());
        }
    }

    @Test
    void areAllLoadedOnce() {
        Plugins bundled = PluginFiles.bundled();

        assertEquals(List.of(), bundled.refused());
        assertEquals(plugins().size(), bundled.loaded().size());
        assertEquals(
                bundled.loaded().size(),
                bundled.plugins().stream().map(p -> p.info().id()).distinct().count());
    }

    @Test
    void everyFolderOfPluginsIsBuilt() throws IOException {
        try (Stream<Path> poms =
                Files.find(Path.of("../../plugins"), 2, (p, a) -> p.endsWith("pom.xml"))) {
            assertEquals(plugins().size() + 1, poms.count());
        }
    }
}
