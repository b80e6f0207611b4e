package reseat.script;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.TableRow;
import reseat.graph.StepGraph;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.query.DeviceFacts;
import reseat.query.PlanFacts;
import reseat.spi.Plugins;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockSource;
import reseat.text.ListText;
import reseat.text.Nearest;

/**
 * The entry point of scripting. In the console, each method is a function of the same name, in
 * JavaScript and in Java: {@code device("quill.yaml")}.
 *
 * <p>Long work ends early when its thread is interrupted. Failures are reported as {@link
 * BenchException}. Safe for use by several threads.
 */
public final class Bench {

    /** How many known names a message lists. */
    private static final int LISTED = 12;

    private final Shelf shelf;
    private final FastenerTables tables;
    private final List<Check> checks;
    private final List<StockSource> sources;
    private final Screen screen;

    /**
     * Sets up a bench.
     *
     * @param folder the folder that file names are relative to
     * @param plugins the plugins whose families, checks and stock sources to use
     * @param tables tables to look up in
     * @param screen where to show things
     */
    public Bench(Path folder, Plugins plugins, FastenerTables tables, Screen screen) {
        this.shelf = new Shelf(folder, plugins.families(), screen);
        this.tables = tables;
        this.sources = plugins.stockSources();
        this.screen = screen;
        this.checks = plugins.checks();
    }

    /**
     * Reads a device file.
     *
     * @param file name of the file, YAML or JSON
     * @return the base device
     */
    public Device device(String file) {
        return shelf.read(file, Optional.empty());
    }

    /**
     * Reads a device file in one variant.
     *
     * @param file name of the file, YAML or JSON
     * @param variant id of the variant
     */
    public Device device(String file, String variant) {
        return shelf.read(file, Optional.of(variant));
    }

    /**
     * Reads all device files of a folder and the folders in it, in order of their names: each base
     * device, then its variants. Other files are skipped.
     *
     * @param folder name of the folder
     */
    public List<Device> devices(String folder) {
        return shelf.readAll(folder);
    }

    /** Returns the devices that this bench has read so far, the latest last. */
    public List<Device> devicesRead() {
        return shelf.seen();
    }

    /**
     * Plans the cheapest way to a goal and back; the simulator has agreed with the plan. Searches
     * for at most five seconds; an interrupt ends the search with the best plan so far.
     *
     * @param device the device, closed
     * @param targets parts to take off, or one joint to get to; nothing for a full teardown
     */
    public Plan plan(Device device, String... targets) {
        return Planning.plan(PlanRequest.of(device, goal(device, targets)));
    }

    /**
     * Plans a request with its own rules, start and effort.
     *
     * @param request what to plan
     */
    public Plan plan(PlanRequest request) {
        return Planning.plan(request);
    }

    /**
     * Returns the goal that some names stand for.
     *
     * @param targets parts to take off, or one joint to get to; nothing for a full teardown
     */
    public Goal goal(Device device, String... targets) {
        if (targets.length == 0) {
            return new Goal.Teardown();
        }
        if (targets.length == 1 && device.joints().containsKey(targets[0])) {
            return new Goal.Reach(targets[0]);
        }
        for (String target : targets) {
            if (!device.parts().containsKey(target)) {
                throw new BenchException(
                        device.joints().containsKey(target)
                                ? "\""
                                        + target
                                        + "\" is a joint; name one joint alone, or parts alone."
                                : unknown(
                                        device.id(),
                                        targets.length == 1 ? "part or joint" : "part",
                                        target,
                                        targets.length == 1
                                                ? partsAndJoints(device)
                                                : device.parts().keySet()));
            }
        }
        return new Goal.Free(Arrays.stream(targets).distinct().toList());
    }

    /**
     * Returns the step graph: what must come before what.
     *
     * @param device the device, closed
     * @param targets parts to take off, or one joint to get to; nothing for the graph of everything
     */
    public StepGraph graph(Device device, String... targets) {
        StepGraph graph = StepGraph.of(device, State.closed(), Rules.none());
        return targets.length == 0 ? graph : graph.towards(goal(device, targets));
    }

    /** Returns the facts of a device in bulk: its screws, parts, joints, look-alikes as rows. */
    public DeviceFacts facts(Device device) {
        return DeviceFacts.of(device, tables);
    }

    /** Returns the facts of a plan in bulk: its acts, tools, needs and tests as rows. */
    public PlanFacts facts(Plan plan) {
        return PlanFacts.of(plan, tables);
    }

    /** Returns what a check, and the {@code run} of a shared script, is given to look at. */
    public CheckInput checkInput(Device device) {
        return CheckInput.of(device, tables);
    }

    /** Returns the fastener tables. */
    public FastenerTables tables() {
        return tables;
    }

    /**
     * Returns the rows of a fastener table.
     *
     * @param name name of the table, such as {@code threads}
     */
    public List<TableRow> table(String name) {
        List<String> known =
                Arrays.stream(FastenerTable.values()).map(FastenerTable::title).toList();
        return tables.rows(
                FastenerTable.named(name)
                        .orElseThrow(() -> none("Reseat", "fastener table", name, known)));
    }

    /** Returns the descriptions of the checks on this bench. */
    public List<CheckInfo> checks() {
        return checks.stream().map(Check::info).toList();
    }

    /**
     * Runs all checks on a device.
     *
     * @return findings, worst first
     */
    public List<Finding> check(Device device) {
        return check(CheckInput.of(device, tables));
    }

    /**
     * Runs one check on a device.
     *
     * @param id id of the check
     * @return findings, worst first
     */
    public List<Finding> check(Device device, String id) {
        List<String> known = checks().stream().map(CheckInfo::id).toList();
        Check wanted =
                checks.stream()
                        .filter(check -> check.info().id().equals(id))
                        .findFirst()
                        .orElseThrow(() -> none("This bench", "check", id, known));
        return wanted.on(CheckInput.of(device, tables)).stream().sorted().toList();
    }

    /**
     * Runs all checks on an input, with its plan, stock and other data.
     *
     * @param input the input
     * @return findings, worst first
     */
    public List<Finding> check(CheckInput input) {
        List<Finding> findings = new ArrayList<>();
        for (Check check : checks) {
            if (Thread.currentThread().isInterrupted()) {
                throw new BenchException("Stopped before all checks had run.");
            }
            findings.addAll(check.on(input));
        }
        return findings.stream().sorted().toList();
    }

    /** Returns the stock sources that can be opened. */
    public List<StockSource> stockSources() {
        return sources;
    }

    /**
     * Opens a stock.
     *
     * @param source id of a stock source
     * @param settings its settings, by name
     */
    public Stock stock(String source, Map<String, String> settings) {
        List<String> known = sources.stream().map(StockSource::id).toList();
        StockSource wanted =
                sources.stream()
                        .filter(each -> each.id().equals(source))
                        .findFirst()
                        .orElseThrow(() -> none("This bench", "stock source", source, known));
        try {
            return wanted.open(settings, shelf.folder());
        } catch (StockException e) {
            throw new BenchException(String.valueOf(e.getMessage()), e);
        }
    }

    private static BenchException none(
            String who, String what, String wanted, Collection<String> known) {
        return new BenchException(unknown(who, what, wanted, known));
    }

    private static String unknown(
            String who, String what, String wanted, Collection<String> known) {
        String near = Nearest.question(wanted, known);
        return who
                + " has no "
                + what
                + " \""
                + wanted
                + "\"."
                + (near.isEmpty() ? " Known: " + ListText.first(known, LISTED) + "." : near);
    }

    private static List<String> partsAndJoints(Device device) {
        List<String> ids = new ArrayList<>(device.parts().keySet());
        ids.addAll(device.joints().keySet());
        return ids;
    }

    /**
     * Shows a thing as a table, a tree or a text.
     *
     * @param thing anything
     */
    public void show(@Nullable Object thing) {
        screen.show(thing);
    }

    /**
     * Shows help on a name, a type or the type of a value.
     *
     * @param thing a name such as {@code "plan"} or {@code "Device.parts"}, or any other thing
     */
    public void help(@Nullable Object thing) {
        screen.explain(thing);
    }
}
