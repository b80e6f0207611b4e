package reseat.internal.loader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import reseat.internal.spi.ApiRange;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.spi.Plugins;
import reseat.text.TimeText;

/** Loads all plugins, one after the other. An instance loads once. */
public final class PluginLoader {

    /**
     * Included plugins have no time limit: on a busy machine, going on without them would help
     * nobody.
     */
    private static final Duration BUNDLED_LIMIT = Duration.ofMinutes(1);

    private static final String ITSELF = "Reseat itself";

    private final Duration limit;
    private final List<Plugins.Loaded> loaded = new ArrayList<>();
    private final List<Plugins.Refused> refused = new ArrayList<>();

    /** The owner of each id, by "plugin shelf", "check too-long" and so on. */
    private final Map<String, String> owners = new HashMap<>();

    private PluginLoader(Duration limit, Set<String> commands) {
        this.limit = limit;
        commands.forEach(name -> owners.put("command " + name, ITSELF));
    }

    /** Loads; see {@code PluginFiles.load}. */
    public static Plugins load(List<Path> folders, Duration limit, Set<String> commands) {
        PluginLoader loader = new PluginLoader(limit, commands);
        loader.bundled();
        folders.forEach(loader::folder);
        return new Plugins(loader.loaded, loader.refused);
    }

    private void bundled() {
        Map<String, ServiceLoader.Provider<Plugin>> found = new TreeMap<>();
        Iterator<ServiceLoader.Provider<Plugin>> providers =
                ServiceLoader.load(Plugin.class, PluginLoader.class.getClassLoader()).stream()
                        .iterator();
        while (true) {
            try {
                if (!providers.hasNext()) {
                    break;
                }
                ServiceLoader.Provider<Plugin> next = providers.next();
                found.put(next.type().getName(), next);
            } catch (ServiceConfigurationError | LinkageError e) {
                refuse("among those that ship", Optional.empty(), Refusal.of(e));
            }
        }
        List<Contents> started = new ArrayList<>();
        found.forEach(
                (name, provider) -> {
                    try {
                        started.add(start(name, BUNDLED_LIMIT, () -> new Contents(provider.get())));
                    } catch (Refusal e) {
                        refuse(name, Optional.empty(), e);
                    }
                });
        started.sort(Comparator.comparing(each -> each.info().id()));
        started.forEach(each -> take(each, Optional.empty(), false));
    }

    private void folder(Path folder) {
        if (!Files.isDirectory(folder)) {
            refuse("folder", Optional.of(folder), new Refusal("there is no such folder"));
            return;
        }
        if (Files.exists(folder.resolve(FamilyReader.HEAD))) {
            refuse(
                    "folder",
                    Optional.of(folder),
                    new Refusal("it is a family itself; name the folder that it lies in"));
            return;
        }
        try {
            for (Candidate each : Candidate.in(folder)) {
                if (each.isData()) {
                    data(each);
                } else {
                    jars(each);
                }
            }
        } catch (IOException e) {
            refuse("folder", Optional.of(folder), new Refusal("it cannot be read: " + e));
        }
    }

    private void data(Candidate candidate) {
        Optional<Path> from = Optional.of(candidate.from());
        String name = candidate.name();
        try {
            take(start(name, limit, () -> new Contents(candidate.family())), from, true);
        } catch (Refusal e) {
            refuse(name, from, e);
        }
    }

    private void jars(Candidate candidate) {
        String name = candidate.name();
        Optional<Path> from = Optional.of(candidate.from());
        try {
            Candidate.Described described = candidate.described();
            PluginInfo info = info(described.said());
            name = info.id();
            fits(described.said());
            if (owners.containsKey("plugin " + name)) {
                throw new Refusal("its id is already used by " + owners.get("plugin " + name));
            }
            take(
                    start(
                            name,
                            limit,
                            () -> {
                                Plugin plugin = PluginLayer.open(candidate, described.jar());
                                Contents contents = new Contents(plugin);
                                same(info, contents.info());
                                return contents;
                            }),
                    from,
                    false);
        } catch (Refusal e) {
            refuse(name, from, e);
        }
    }

    private static PluginInfo info(Properties said) throws Refusal {
        try {
            return new PluginInfo(
                    said.getProperty("id", "").strip(),
                    said.getProperty("version", "").strip(),
                    said.getProperty("title", "").strip());
        } catch (IllegalArgumentException e) {
            throw new Refusal("its " + PluginInfo.FILE + ": " + e.getMessage());
        }
    }

    private static void fits(Properties said) throws Refusal {
        Optional<String> hindrance =
                ApiRange.hindrance(said.getProperty("api", "").strip(), PluginInfo.API);
        if (hindrance.isPresent()) {
            throw new Refusal(hindrance.get());
        }
    }

    private static void same(PluginInfo told, PluginInfo returned) throws Refusal {
        if (!told.equals(returned)) {
            throw new Refusal(
                    "info() returned " + returned + ", its " + PluginInfo.FILE + " says " + told);
        }
    }

    /** Runs code of a plugin within its time limit; whatever it throws becomes a refusal. */
    private static Contents start(String name, Duration limit, Callable<Contents> code)
            throws Refusal {
        FutureTask<Contents> task = new FutureTask<>(code);
        Thread thread = new Thread(task, "reseat-plugin-" + name);
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException e) {
            throw Refusal.of(e.getCause() == null ? e : e.getCause());
        } catch (TimeoutException e) {
            task.cancel(true);
            throw new Refusal(
                    "it is slow to start: it was not ready after " + TimeText.of(limit.toMillis()));
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new Refusal("loading was interrupted");
        }
    }

    private void take(Contents contents, Optional<Path> from, boolean data) {
        String self =
                "plugin " + contents.info().id() + from.map(path -> " (" + path + ")").orElse("");
        List<String> taken = new ArrayList<>(List.of("plugin " + contents.info().id()));
        contents.ids().forEach((what, ids) -> ids.forEach(id -> taken.add(what + " " + id)));
        for (String id : taken) {
            String owner = owners.get(id);
            if (owner != null) {
                refuse(
                        contents.info().id(),
                        from,
                        new Refusal("the id of its " + id + " is already used by " + owner));
                return;
            }
        }
        taken.forEach(id -> owners.put(id, self));
        loaded.add(new Plugins.Loaded(contents, from, data));
    }

    private void refuse(String name, Optional<Path> from, Refusal refusal) {
        refused.add(new Plugins.Refused(name, from, refusal.why()));
    }
}
