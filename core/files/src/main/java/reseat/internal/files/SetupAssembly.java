package reseat.internal.files;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import reseat.model.Origin;
import reseat.model.SetupTable;
import reseat.model.Tool;
import reseat.text.QuoteText;

/** Creates the set-up table: explicit entries first, general times for all other pairs. */
final class SetupAssembly {

    private final Look setup;
    private final boolean resolved;
    private final Problems problems;

    SetupAssembly(Look setup, boolean resolved, Problems problems) {
        this.setup = setup;
        this.resolved = resolved;
        this.problems = problems;
    }

    /**
     * Creates the table for the tools and postures that a device uses.
     *
     * @param tools the tools, the hand among them
     * @return the table, or empty after a problem
     */
    Optional<SetupTable> table(Collection<Tool> tools, Collection<String> postures) {
        boolean sound = true;
        Map<String, Map<String, Long>> toolMs;
        Map<String, Map<String, Long>> postureMs;
        if (resolved) {
            toolMs = given("tool");
            postureMs = given("posture");
            sound &= holdsAll("tool", toolMs, tools.stream().map(Tool::id).toList());
            sound &= holdsAll("posture", postureMs, postures);
        } else {
            toolMs = tools(tools);
            postureMs = postures(postures);
        }
        sound &= sound("tool", toolMs);
        sound &= sound("posture", postureMs);
        return sound
                ? Optional.of(
                        new SetupTable(toolMs, postureMs, single("layAside"), single("turnOpen")))
                : Optional.empty();
    }

    private long single(String key) {
        return setup.ms(key, key).orElse(0);
    }

    private Map<String, Map<String, Long>> given(String which) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        Look rows = setup.look(which);
        for (String from : rows.fields().entries().keySet()) {
            Map<String, Long> row = new LinkedHashMap<>();
            Look entries = rows.look(from);
            for (String to : entries.fields().entries().keySet()) {
                entries.ms(to, to).ifPresent(ms -> row.put(to, ms));
            }
            table.put(from, row);
        }
        // a column without a row has no change away from it, which is reported
        List.copyOf(table.values())
                .forEach(
                        row ->
                                row.keySet()
                                        .forEach(
                                                to ->
                                                        table.computeIfAbsent(
                                                                to, id -> new LinkedHashMap<>())));
        return table;
    }

    private boolean holdsAll(
            String which, Map<String, Map<String, Long>> table, Collection<String> ids) {
        boolean all = true;
        for (String id : ids) {
            if (!table.containsKey(id)) {
                problems.error(
                        setup.at(which),
                        "setup."
                                + which
                                + ": the table has no "
                                + which
                                + " "
                                + QuoteText.of(id)
                                + "."
                                + Words.hint(id, table.keySet(), which + "s"));
                all = false;
            }
        }
        return all;
    }

    private Map<String, Map<String, Long>> tools(Collection<Tool> tools) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (Tool from : tools) {
            Map<String, Long> row = new LinkedHashMap<>();
            Look given = setup.look("tool").look(from.id());
            for (Tool to : tools) {
                boolean bits = from.handle().isPresent() && from.handle().equals(to.handle());
                row.put(
                        to.id(),
                        change(given, from.id(), to.id(), bits ? "bitChange" : "toolChange"));
            }
            table.put(from.id(), row);
        }
        return table;
    }

    private Map<String, Map<String, Long>> postures(Collection<String> postures) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (String from : postures) {
            Map<String, Long> row = new LinkedHashMap<>();
            Look given = setup.look("posture").look(from);
            postures.forEach(to -> row.put(to, change(given, from, to, "postureChange")));
            table.put(from, row);
        }
        return table;
    }

    private long change(Look given, String from, String to, String general) {
        OptionalLong explicit = given.ms(to, to);
        if (explicit.isPresent() || from.equals(to)) {
            return explicit.orElse(0L);
        }
        OptionalLong ms = setup.ms(general, general);
        if (ms.isEmpty() && !setup.has(general)) {
            problems.error(setup.at(), "setup: the key " + QuoteText.of(general) + " is missing");
        }
        return ms.orElse(0L);
    }

    /** Reports what {@link SetupTable#check} would, for every entry and with its location. */
    private boolean sound(String which, Map<String, Map<String, Long>> table) {
        if (SetupTable.check(which, table).isEmpty()) {
            return true;
        }
        int found = 0;
        for (String from : table.keySet()) {
            Map<String, Long> row = Objects.requireNonNull(table.get(from));
            for (String to : table.keySet()) {
                Long direct = from.equals(to) ? Long.valueOf(0) : row.get(to);
                if (direct == null) {
                    problems.error(
                            place(which, from, to),
                            "setup: the change of "
                                    + which
                                    + " from "
                                    + from
                                    + " to "
                                    + to
                                    + " has no time");
                    found++;
                } else if (from.equals(to) && row.getOrDefault(to, 0L) != 0) {
                    problems.error(
                            place(which, from, to),
                            "setup: staying with "
                                    + which
                                    + " "
                                    + from
                                    + " must cost 0 ms, not "
                                    + row.get(to));
                    found++;
                } else if (detour(which, table, from, to, direct)) {
                    found++;
                }
            }
        }
        return found == 0;
    }

    private boolean detour(
            String which,
            Map<String, Map<String, Long>> table,
            String from,
            String to,
            long direct) {
        for (String via : table.keySet()) {
            Long first = Objects.requireNonNull(table.get(from)).get(via);
            Long second = Objects.requireNonNull(table.get(via)).get(to);
            if (!via.equals(from)
                    && !via.equals(to)
                    && first != null
                    && second != null
                    && first + second < direct) {
                problems.error(
                        place(which, from, to),
                        "setup: the change of "
                                + which
                                + " from "
                                + from
                                + " to "
                                + to
                                + " costs "
                                + direct
                                + " ms, but over "
                                + via
                                + " only "
                                + (first + second)
                                + " ms; set-ups must obey the triangle inequality");
                return true;
            }
        }
        return false;
    }

    private Origin place(String which, String from, String to) {
        Look table = setup.look(which);
        if (!table.has(from)) {
            return table.at();
        }
        return table.look(from).has(to) ? table.look(from).at(to) : table.at(from);
    }
}
