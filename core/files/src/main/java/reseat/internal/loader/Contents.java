package reseat.internal.loader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import reseat.check.Check;
import reseat.fasten.FastenerTables;
import reseat.model.BadInputException;
import reseat.spi.Assessment;
import reseat.spi.Command;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Output;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** The contributions of a plugin, requested once and validated. */
final class Contents implements Plugin {

    private static final String COMMAND = "[a-z][a-z0-9]*(-[a-z0-9]+)*";
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    /** Ids by category ("check"). */
    private final Map<String, Set<String>> ids = new LinkedHashMap<>();

    private final PluginInfo info;
    private final List<DeviceFamily> families;
    private final List<Check> checks;
    private final List<StockSource> stockSources;
    private final List<CostTable> costTables;
    private final List<Output> outputs;
    private final List<Assessment> assessments;
    private final List<Command> commands;

    /**
     * Requests everything from a plugin; throws whatever the plugin throws.
     *
     * @throws Refusal if what it returns is invalid
     */
    Contents(Plugin plugin) throws Refusal {
        info = given("info()", plugin.info());
        families =
                listed(
                        "family",
                        "families()",
                        plugin::families,
                        DeviceFamily::id,
                        DeviceFamily::title);
        checks =
                new ArrayList<>(
                        listed("check", "checks()", plugin::checks, Contents::id, Contents::title));
        for (DeviceFamily family : families) {
            listed(
                    "check",
                    family.id() + ".checks()",
                    family::checks,
                    Contents::id,
                    Contents::title);
            templates(family);
            rows(family);
        }
        stockSources =
                listed(
                        "stock source",
                        "stockSources()",
                        plugin::stockSources,
                        StockSource::id,
                        StockSource::title);
        costTables =
                listed(
                        "cost table",
                        "costTables()",
                        plugin::costTables,
                        CostTable::id,
                        CostTable::title);
        outputs = listed("output", "outputs()", plugin::outputs, Output::id, Output::title);
        assessments =
                listed(
                        "assessment",
                        "assessments()",
                        plugin::assessments,
                        Assessment::id,
                        Assessment::title);
        // options are requested when the command is called: most runs call another command
        commands = listed("command", "commands()", plugin::commands, Command::name, Command::name);
        for (Command command : commands) {
            if (!command.name().matches(COMMAND)) {
                throw new Refusal("the name \"" + command.name() + "\" of a command is not valid");
            }
        }
    }

    private static String id(Check check) {
        return check.info().id();
    }

    private static String title(Check check) {
        return check.info().title();
    }

    private static void templates(DeviceFamily family) throws Refusal {
        String from = family.id() + ".templates()";
        Set<String> seen = new LinkedHashSet<>();
        for (DeviceTemplate template : given(from, family.templates())) {
            String id = given(from + " id", given("an entry of " + from, template).id());
            if (!seen.add(id)) {
                throw new Refusal("it has two templates " + id + " of the family " + family.id());
            }
        }
    }

    private static void rows(DeviceFamily family) throws Refusal {
        for (Map.Entry<String, String> rows :
                given(family.id() + ".fastenerRows()", family.fastenerRows()).entrySet()) {
            try {
                FastenerTables.standard().withRows(rows.getKey(), rows.getValue());
            } catch (BadInputException e) {
                throw new Refusal(
                        "the rows of the family "
                                + family.id()
                                + ": "
                                + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
            }
        }
    }

    private <T> List<T> listed(
            String what,
            String from,
            Supplier<List<T>> list,
            Function<T, String> idOf,
            Function<T, String> titleOf)
            throws Refusal {
        Set<String> known = ids.computeIfAbsent(what, w -> new LinkedHashSet<>());
        List<T> all = new ArrayList<>();
        for (T each : given(from, list.get())) {
            T entry = given("an entry of " + from, each);
            String id = given("an id in " + from, idOf.apply(entry));
            if (!id.matches(ID)) {
                throw new Refusal("the id \"" + id + "\" of a " + what + " is not valid");
            }
            if (!known.add(id)) {
                throw new Refusal("it has two entries with the same id: " + what + " " + id);
            }
            if (given(id + ": the title", titleOf.apply(entry)).isBlank()) {
                throw new Refusal("the " + what + " " + id + " has no title");
            }
            all.add(entry);
        }
        return List.copyOf(all);
    }

    private static <T> T given(String what, @Nullable T value) throws Refusal {
        if (value == null) {
            throw new Refusal(what + " returned null");
        }
        return value;
    }

    Map<String, Set<String>> ids() {
        return ids;
    }

    @Override
    public PluginInfo info() {
        return info;
    }

    @Override
    public List<DeviceFamily> families() {
        return families;
    }

    @Override
    public List<Check> checks() {
        return checks;
    }

    @Override
    public List<StockSource> stockSources() {
        return stockSources;
    }

    @Override
    public List<CostTable> costTables() {
        return costTables;
    }

    @Override
    public List<Output> outputs() {
        return outputs;
    }

    @Override
    public List<Assessment> assessments() {
        return assessments;
    }

    @Override
    public List<Command> commands() {
        return commands;
    }
}
