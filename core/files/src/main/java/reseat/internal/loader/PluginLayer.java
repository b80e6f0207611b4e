package reseat.internal.loader;

import java.lang.module.Configuration;
import java.lang.module.FindException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.lang.module.ResolutionException;
import java.lang.module.ResolvedModule;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import reseat.spi.Plugin;

/**
 * Gives a plugin a module layer of its own with one class loader. Its own libraries take precedence
 * over Reseat's, so that two plugins may use different versions of one library. Of Reseat it reads
 * the toolkit and, if it reads files or plans, those modules.
 */
final class PluginLayer {

    private static final Module TOOLKIT = PluginLayer.class.getModule();

    /** The modules of Reseat that plugins may require. */
    private static final List<String> OPEN =
            List.of(TOOLKIT.getName(), "reseat.files", "reseat.planner");

    private PluginLayer() {}

    /**
     * Creates the plugin.
     *
     * @param candidate its jars
     * @param main the jar with the plugin itself
     * @throws Refusal if its modules do not resolve together or with Reseat
     */
    static Plugin open(Candidate candidate, Path main) throws Refusal {
        ModuleLayer ours = TOOLKIT.getLayer();
        if (ours == null) {
            throw new Refusal("plugins in folders need Reseat to run on the module path");
        }
        try {
            String root = root(main);
            Configuration configuration =
                    ours.configuration()
                            .resolveAndBind(
                                    finder(candidate, ours), ModuleFinder.of(), Set.of(root));
            requireOpenModules(configuration);
            ModuleLayer layer =
                    ModuleLayer.defineModulesWithOneLoader(
                                    configuration, List.of(ours), TOOLKIT.getClassLoader())
                            .layer();
            Thread.currentThread().setContextClassLoader(layer.findLoader(root));
            return provider(layer, root);
        } catch (FindException | ResolutionException | LayerInstantiationException e) {
            throw new Refusal(
                    "its modules do not fit together: "
                            + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
    }

    private static String root(Path main) throws Refusal {
        ModuleDescriptor descriptor =
                ModuleFinder.of(main).findAll().iterator().next().descriptor();
        if (descriptor.isAutomatic()) {
            throw new Refusal(
                    main.getFileName()
                            + " has no module-info; a plugin is a module that requires"
                            + " reseat.toolkit and provides reseat.spi.Plugin");
        }
        return descriptor.name();
    }

    private static ModuleFinder finder(Candidate candidate, ModuleLayer ours) throws Refusal {
        Map<String, Path> names = new HashMap<>();
        for (Path jar : candidate.jars()) {
            for (ModuleReference reference : ModuleFinder.of(jar).findAll()) {
                String name = reference.descriptor().name();
                Path other = names.put(name, jar);
                if (other != null) {
                    throw new Refusal(
                            other.getFileName()
                                    + " and "
                                    + jar.getFileName()
                                    + " both contain the module "
                                    + name);
                }
                if (shared(ours).contains(name) || isSystem(name) || isHost(name, ours)) {
                    throw new Refusal(
                            "it contains its own "
                                    + name
                                    + " ("
                                    + jar.getFileName()
                                    + "); remove it, Reseat provides it");
                }
            }
        }
        return ModuleFinder.of(candidate.jars().toArray(Path[]::new));
    }

    private static boolean isHost(String name, ModuleLayer ours) {
        return name.startsWith("reseat.") && ours.findModule(name).isPresent();
    }

    private static boolean isSystem(String name) {
        return ModuleFinder.ofSystem().find(name).isPresent();
    }

    /** The modules that plugins may require, and those readable through them. */
    private static Set<String> shared(ModuleLayer ours) {
        Set<String> shared = new HashSet<>();
        List<String> open = new ArrayList<>(OPEN);
        while (!open.isEmpty()) {
            String name = open.remove(open.size() - 1);
            if (shared.add(name)) {
                ours.findModule(name)
                        .map(Module::getDescriptor)
                        .ifPresent(
                                found ->
                                        found.requires().stream()
                                                .filter(PluginLayer::isTransitive)
                                                .forEach(r -> open.add(r.name())));
            }
        }
        return shared;
    }

    private static boolean isTransitive(ModuleDescriptor.Requires requires) {
        return requires.modifiers().contains(ModuleDescriptor.Requires.Modifier.TRANSITIVE);
    }

    private static void requireOpenModules(Configuration configuration) throws Refusal {
        Set<String> shared = shared(TOOLKIT.getLayer());
        for (ResolvedModule module : configuration.modules()) {
            if (module.reference().descriptor().isAutomatic()) {
                continue; // a plain jar reads every module; it has no descriptor to name them
            }
            for (ResolvedModule read : module.reads()) {
                if (read.configuration() != configuration
                        && !shared.contains(read.name())
                        && !isBycatch(module, read)
                        && !isSystem(read.name())) {
                    throw new Refusal(
                            module.name()
                                    + " requires "
                                    + read.name()
                                    + ", which is Reseat's own; put a copy beside the"
                                    + " plugin's jar");
                }
            }
        }
    }

    /** A module that requires one plain jar reads all plain jars, including those of Reseat. */
    private static boolean isBycatch(ResolvedModule module, ResolvedModule read) {
        return read.reference().descriptor().isAutomatic()
                && module.reference().descriptor().requires().stream()
                        .noneMatch(requires -> requires.name().equals(read.name()));
    }

    private static Plugin provider(ModuleLayer layer, String root) throws Refusal {
        List<ServiceLoader.Provider<Plugin>> own =
                ServiceLoader.load(layer, Plugin.class).stream()
                        .filter(provider -> provider.type().getModule().getLayer() == layer)
                        .toList();
        if (own.size() != 1) {
            throw new Refusal(
                    "its module "
                            + root
                            + " provides "
                            + (own.isEmpty() ? "no " : own.size() + " times ")
                            + Plugin.class.getName()
                            + "; it must provide one");
        }
        return own.get(0).get();
    }
}
