package reseat.console.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.console.sheet.Terminal;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.TableRow;
import reseat.files.RegisteredId;
import reseat.text.JsonText;
import reseat.text.Nearest;
import reseat.text.TimeText;

/** Lists the ids that a device file may name without defining them, and what each means. */
@Command(
        name = "kinds",
        description =
                "List the kinds, tools, hazards and fastener names that device files may use.",
        customSynopsis = {"reseat kinds [OPTIONS]", "       reseat kinds ID [OPTIONS]"},
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat kinds",
            "  reseat kinds latched-connector",
            "  reseat kinds M2x0.4"
        })
final class KindsCommand implements Callable<Integer> {

    /** The fastener tables whose first column is a name of a device file, and what it names. */
    private static final Map<FastenerTable, String> TABLES = new LinkedHashMap<>();

    static {
        TABLES.put(FastenerTable.THREADS, "thread");
        TABLES.put(FastenerTable.HEAD_FORMS, "head");
        TABLES.put(FastenerTable.DRIVES, "drive");
        TABLES.put(FastenerTable.CLASSES, "property class");
        TABLES.put(FastenerTable.MATERIALS, "material");
        TABLES.put(FastenerTable.FRICTION, "surface");
    }

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;

    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "Id or name.")
    private @Nullable String id;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        FastenerTables tables = shop.tables();
        List<RegisteredId> all = all(tables);
        String wanted = id;
        List<RegisteredId> named =
                wanted == null
                        ? all
                        : all.stream().filter(each -> isNamed(each, wanted, tables)).toList();
        if (wanted != null && named.isEmpty()) {
            throw new BadInput(
                    "reseat: there is no kind or name \""
                            + wanted
                            + "\"."
                            + Nearest.question(wanted, ids(all))
                            + " All are listed by: reseat kinds");
        }
        if (json) {
            out.print(JsonText.of(shape(named)));
        } else if (wanted != null) {
            named.forEach(each -> tell(each, all, out));
        } else {
            list(all, out);
        }
        return 0;
    }

    /** Returns all ids, those of fasteners last. */
    static List<RegisteredId> all(FastenerTables tables) {
        List<RegisteredId> all = new ArrayList<>(RegisteredId.all(OurPlugins.quietly().families()));
        TABLES.forEach(
                (table, what) ->
                        tables.rows(table).stream().map(row -> named(what, row)).forEach(all::add));
        return all;
    }

    /** Whether a word is an id, an alias of a name, or another way to write a thread or drive. */
    private static boolean isNamed(RegisteredId each, String word, FastenerTables tables) {
        if (each.id().equalsIgnoreCase(word)) {
            return true;
        }
        if (each.facts().get("alias") instanceof String aliases) {
            for (String alias : aliases.split(",", -1)) {
                if (alias.strip().equalsIgnoreCase(word)) {
                    return true;
                }
            }
        }
        try {
            return switch (each.what()) {
                case "thread" -> tables.thread(word).designation().equals(each.id());
                case "drive" -> tables.drives().drive(word).id().equals(each.id());
                default -> false;
            };
        } catch (FastenerInputException e) {
            return false; // no thread or drive at all
        }
    }

    /** Returns each id once. */
    static Set<String> ids(List<RegisteredId> all) {
        return all.stream()
                .map(RegisteredId::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static RegisteredId named(String what, TableRow row) {
        String key = what.equals("drive") ? "drive" : row.table().columns().get(0).name();
        Map<String, Object> facts = new LinkedHashMap<>();
        row.cells()
                .forEach(
                        (column, cell) -> {
                            if (!cell.isEmpty() && !column.equals(key)) {
                                facts.put(column, cell);
                            }
                        });
        return new RegisteredId(
                what, row.text(key), "fastener table " + row.table().title(), facts);
    }

    private static void list(List<RegisteredId> all, PrintWriter out) {
        Map<String, List<RegisteredId>> groups = new LinkedHashMap<>();
        all.forEach(each -> groups.computeIfAbsent(each.what(), w -> new ArrayList<>()).add(each));
        String gap = "";
        for (Map.Entry<String, List<RegisteredId>> group : groups.entrySet()) {
            out.print(gap);
            out.println(group.getKey() + ":");
            gap = System.lineSeparator();
            for (RegisteredId each : group.getValue()) {
                String owner = each.from().startsWith("family ") ? " [" + each.from() + "]" : "";
                String means = meaning(each);
                out.println("  " + each.id() + (means.isEmpty() ? "" : ": " + means) + owner);
            }
        }
    }

    /** What an id means in a few words; empty if its data do not say. */
    private static String meaning(RegisteredId each) {
        for (String key : List.of("title", "name", "nature", "text", "standard", "rule")) {
            if (each.facts().get(key) instanceof String text && !text.equals(each.id())) {
                return text;
            }
        }
        return "";
    }

    private static void tell(RegisteredId each, List<RegisteredId> all, PrintWriter out) {
        Terminal terminal = Terminal.detect();
        String means = meaning(each);
        out.println(
                each.id()
                        + " ("
                        + each.what()
                        + ", "
                        + each.from()
                        + ")"
                        + (means.isEmpty() ? "" : ": " + means));
        if (each.what().equals("kind of manipulation") && !each.facts().containsKey("tool")) {
            out.println("  tool: hand, as none is stated");
        }
        if (each.what().equals("kind of manipulation") && !each.facts().containsKey("posture")) {
            out.println("  posture: that of the part, as none is stated");
        }
        each.facts()
                .forEach(
                        (key, value) -> {
                            if (!value.equals(means) && !key.endsWith("Ms") && !basis(each, key)) {
                                out.println(
                                        terminal.fitted(
                                                "  " + key + ": " + value(each, key, value, all)));
                            }
                        });
    }

    private static boolean basis(RegisteredId each, String key) {
        return key.endsWith("Basis")
                && each.facts()
                        .containsKey(key.substring(0, key.length() - "Basis".length()) + "Ms");
    }

    private static String value(
            RegisteredId each, String key, Object value, List<RegisteredId> all) {
        if (each.facts().get(key + "Ms") instanceof Long ms) {
            return TimeText.of(ms)
                    + ", "
                    + ("elements".equals(each.facts().get(key + "Basis"))
                            ? "added up from published elemental times: " + value
                            : "stated by the data of " + each.from());
        }
        if (value instanceof List<?> items) {
            List<String> words = new ArrayList<>();
            items.forEach(item -> words.add(refers(key, String.valueOf(plain(item)), all)));
            return String.join("; ", words);
        }
        return refers(key, String.valueOf(plain(value)), all);
    }

    /** Adds what an id means that another one refers to. */
    private static String refers(String key, String text, List<RegisteredId> all) {
        List<String> what =
                switch (key) {
                    case "way", "move" -> List.of("kind of manipulation");
                    case "hazards" -> List.of("hazard");
                    case "tool" -> List.of("tool");
                    default -> List.of();
                };
        return all.stream()
                .filter(each -> what.contains(each.what()) && each.id().equals(text))
                .findFirst()
                .map(KindsCommand::meaning)
                .filter(means -> !means.isEmpty())
                .map(means -> text + " (" + means + ")")
                .orElse(text);
    }

    private static Object plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            List<String> words = new ArrayList<>();
            map.forEach((key, each) -> words.add(key + " " + plain(each)));
            return String.join(", ", words);
        }
        return value instanceof List<?> list
                ? list.stream().map(KindsCommand::plain).map(String::valueOf).toList()
                : value;
    }

    private static Object shape(List<RegisteredId> ids) {
        return JsonText.map(
                "format",
                "reseat-kinds/1",
                "ids",
                ids.stream()
                        .map(
                                each ->
                                        JsonText.map(
                                                "id", each.id(),
                                                "what", each.what(),
                                                "from", each.from(),
                                                "facts", each.facts()))
                        .toList());
    }
}
