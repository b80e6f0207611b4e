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
 * What every plugin must keep to. One call in a test verifies all that it contributes:
 *
 * <pre>{@code
 * PluginContract.verify(new MyPlugin(), List.of(Path.of("src/test/devices/mine.yaml")));
 * }</pre>
 *
 * <p>What it asks for:
 *
 * <ul>
 *   <li>{@code info()} is what {@link PluginInfo#FILE} says, which fits this version of the
 *       interface;
 *   <li>no method returns null, and all return the same when asked again;
 *   <li>ids are ids, and no two of one sort are the same;
 *   <li>the data of families reads without problems, and so does what each template makes for every
 *       answer; it plans as well;
 *   <li>checks find the same when run again, in their own name and about something in the device;
 *   <li>outputs write the same bytes again; assessments come to the same result again;
 *   <li>commands explain themselves and what they take, refuse an option that they do not have, and
 *       end when the user presses Ctrl-C.
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
     * @param plugin a new plugin, as the loader would make it
     * @param devices device files of its families or of no family, for its checks and outputs to
     *     work on; they must read without errors
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

    /** Collects what is wrong. */
    static final class Breaches {

        private final List<String> all = new ArrayList<>();

        void add(String breach) {
            all.add(breach);
        }

        /** Runs something of the plugin; what it throws is a breach. */
        void guard(String what, Runnable code) {
            try {
                code.run();
            } catch (RuntimeException | LinkageError | StackOverflowError e) {
                add(what + " failed: " + e);
            }
        }

        /** Asks for a list twice and looks through it; returns what is fit to go on with. */
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
                            add("the list of each " + what + " is null");
                            return;
                        }
                        List<String> ids = new ArrayList<>();
                        for (T each : once) {
                            String id = each == null ? null : idOf.apply(each);
                            if (each == null || id == null) {
                                add("a " + what + " or its id is null");
                                continue;
                            }
                            if (!id.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
                                add("the id \"" + id + "\" of a " + what + " is none");
                            }
                            if (ids.contains(id)) {
                                add("there are two of one id: " + what + " " + id);
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
                            add("asked again, the " + what + " ids are " + second + ", not " + ids);
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
