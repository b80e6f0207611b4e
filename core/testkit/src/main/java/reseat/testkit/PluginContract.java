package reseat.testkit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/**
 * The contract of plugins. One call in a test verifies all contributions of a plugin:
 *
 * <pre>{@code
 * PluginContract.verify(new MyPlugin(), List.of(Path.of("src/test/devices/mine.yaml")));
 * }</pre>
 *
 * <p>It requires:
 *
 * <ul>
 *   <li>{@code info()} matches {@link PluginInfo#FILE}, which fits this version of the interface;
 *   <li>no method returns null, and all return the same every time;
 *   <li>ids are valid, and unique for each kind of contribution;
 *   <li>the data of families reads without errors, and so do the files of each template for every
 *       answer; plans for them exist;
 *   <li>checks have the same findings when run again, under their own id and about a fact of the
 *       device;
 *   <li>outputs write the same bytes again; assessments give the same result again;
 *   <li>commands describe themselves and their options, reject unknown options, and end when the
 *       user presses Ctrl-C.
 * </ul>
 */
public final class PluginContract {

    private PluginContract() {}

    /** Verifies a plugin; see {@link #verify(Plugin, List)}. */
    public static void verify(Plugin plugin) {
        verify(plugin, List.of());
    }

    /**
     * Verifies a plugin.
     *
     * @param plugin a new plugin, as the loader would create it
     * @param devices device files of its families or of no family, as input of its checks and
     *     outputs; they must read without errors
     * @throws AssertionError if it breaks the contract; the message has a line for each breach
     */
    public static void verify(Plugin plugin, List<Path> devices) {
        Breaches breaches = new Breaches();
        breaches.guard("info()", () -> info(plugin, breaches));
        List<DeviceFamily> families =
                breaches.listed("family", plugin::families, DeviceFamily::id, DeviceFamily::title);
        List<Device> subjects = new ArrayList<>();
        subjects.add(GeneratedDevice.of(DeviceShape.NOTEBOOK.sized(12, 30), 7));
        for (DeviceFamily family : families) {
            breaches.guard(
                    "family " + family.id(),
                    () -> subjects.addAll(new FamilyContract(family, families, breaches).verify()));
        }
        for (Path file : devices) {
            Reading reading = DeviceFiles.read(file, Optional.empty(), families);
            reading.device().ifPresent(subjects::add);
            if (reading.device().isEmpty()) {
                breaches.add("the device " + file + " has errors: " + reading.problems());
            }
        }
        new ContributionContract(plugin, subjects, breaches).verify();
        new CommandContract(plugin, subjects.get(0), breaches).verify();
        breaches.end(plugin.getClass().getName());
    }

    private static void info(Plugin plugin, Breaches breaches) {
        PluginInfo told = PluginInfo.of(plugin.getClass());
        PluginInfo returned = plugin.info();
        if (!told.equals(returned)) {
            breaches.add("info() returned " + returned + ", " + PluginInfo.FILE + " says " + told);
        }
    }

    /** Collects breaches. */
    static final class Breaches {

        private final List<String> all = new ArrayList<>();

        void add(String breach) {
            all.add(breach);
        }

        /** Runs code of the plugin; an exception is a breach. */
        void guard(String what, Runnable code) {
            try {
                code.run();
            } catch (RuntimeException | LinkageError | StackOverflowError e) {
                add(what + " failed: " + e);
            }
        }

        /** Gets a list twice and verifies it; returns the valid elements. */
        <T> List<T> listed(
                String what,
                Supplier<@Nullable List<T>> list,
                Function<T, @Nullable String> idOf,
                Function<T, @Nullable String> titleOf) {
            List<T> good = new ArrayList<>();
            guard(
                    what,
                    () -> {
                        List<T> once = list.get();
                        List<T> again = list.get();
                        if (once == null || again == null) {
                            add("the list of the kind \"" + what + "\" is null");
                            return;
                        }
                        List<String> ids = new ArrayList<>();
                        for (T each : once) {
                            String id = each == null ? null : idOf.apply(each);
                            if (each == null || id == null) {
                                add("an entry of the kind \"" + what + "\", or its id, is null");
                                continue;
                            }
                            if (!id.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
                                add("the id \"" + id + "\" of a " + what + " is invalid");
                            }
                            if (ids.contains(id)) {
                                add("duplicate id: " + what + " " + id);
                            }
                            String title = titleOf.apply(each);
                            if (title == null || title.isBlank()) {
                                add("the " + what + " " + id + " has no title");
                            }
                            ids.add(id);
                            good.add(each);
                        }
                        List<@Nullable String> second = new ArrayList<>();
                        again.forEach(each -> second.add(idOf.apply(each)));
                        if (!second.equals(ids)) {
                            add(
                                    "the ids of the kind \""
                                            + what
                                            + "\" were "
                                            + ids
                                            + ", and "
                                            + second
                                            + " when called again");
                        }
                    });
            return good;
        }

        void end(String plugin) {
            if (!all.isEmpty()) {
                throw new AssertionError(
                        plugin + " breaks the contract of plugins:\n  " + String.join("\n  ", all));
            }
        }
    }
}
