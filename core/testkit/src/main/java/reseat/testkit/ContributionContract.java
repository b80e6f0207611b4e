package reseat.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import reseat.check.Check;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Plans;
import reseat.planner.Planner;
import reseat.spi.Assessment;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;
import reseat.spi.Output;
import reseat.spi.Plugin;
import reseat.stock.StockSource;
import reseat.testkit.PluginContract.Breaches;

/** The contract of checks, stock sources, cost tables, outputs and assessments. */
final class ContributionContract {

    private static final Plans QUICKLY =
            (request, watch) -> new Planner().plan(request.with(Effort.ofExpansions(5_000)), watch);

    private final Plugin plugin;
    private final List<Device> devices;
    private final Breaches breaches;

    ContributionContract(Plugin plugin, List<Device> devices, Breaches breaches) {
        this.plugin = plugin;
        this.devices = devices;
        this.breaches = breaches;
    }

    void verify() {
        checks(plugin::checks);
        for (DeviceFamily family :
                breaches.listed(
                        "family", plugin::families, DeviceFamily::id, DeviceFamily::title)) {
            checks(family::checks);
        }
        breaches.listed("stock source", plugin::stockSources, StockSource::id, StockSource::title)
                .forEach(this::settings);
        breaches.listed("cost table", plugin::costTables, CostTable::id, CostTable::title)
                .forEach(table -> breaches.guard("cost table " + table.id(), () -> open(table)));
        for (Output output :
                breaches.listed("output", plugin::outputs, Output::id, Output::title)) {
            devices.forEach(
                    device ->
                            breaches.guard(
                                    "output " + output.id() + " on " + device,
                                    () -> write(output, device)));
        }
        for (Assessment assessment :
                breaches.listed(
                        "assessment", plugin::assessments, Assessment::id, Assessment::title)) {
            devices.forEach(
                    device ->
                            breaches.guard(
                                    "assessment " + assessment.id() + " on " + device,
                                    () -> assess(assessment, device)));
        }
    }

    private void checks(Supplier<List<Check>> list) {
        for (Check check :
                breaches.listed("check", list, c -> c.info().id(), c -> c.info().title())) {
            if (!check.info().equals(check.info())) {
                breaches.add(
                        "check "
                                + check.info().id()
                                + ": info() returns something else when called again");
            }
            for (Device device : devices) {
                breaches.guard(
                        "check " + check.info().id() + " on " + device, () -> run(check, device));
            }
        }
    }

    private void run(Check check, Device device) {
        CheckInput alone = CheckInput.of(device);
        CheckInput input = anyPlan(device).map(alone::withPlan).orElse(alone);
        for (CheckInput each : List.of(alone, input)) {
            List<Finding> found = check.on(each);
            String name = "check " + check.info().id() + " on " + device;
            if (found == null) {
                breaches.add(name + " returned null");
                return;
            }
            if (!found.stream()
                    .sorted()
                    .toList()
                    .equals(check.on(each).stream().sorted().toList())) {
                breaches.add(name + " returns different findings when run again");
            }
            for (Finding finding : found) {
                if (!finding.check().equals(check.info().id())) {
                    breaches.add(name + " reports a finding of the check " + finding.check());
                }
                if (!finding.subject().isEmpty() && !finding.subject().startsWith("/")) {
                    breaches.add(name + ": \"" + finding.subject() + "\" is not a JSON Pointer");
                }
            }
        }
    }

    private void settings(StockSource source) {
        Set<String> names = new HashSet<>();
        for (StockSource.Setting setting : source.settings()) {
            if (!setting.name().matches("[a-z0-9]+(-[a-z0-9]+)*") || !names.add(setting.name())) {
                breaches.add(
                        "stock source "
                                + source.id()
                                + ": the setting \""
                                + setting.name()
                                + "\" is invalid or a duplicate");
            }
            if (setting.says().isBlank()) {
                breaches.add(
                        "stock source "
                                + source.id()
                                + ": "
                                + setting.name()
                                + " has no description");
            }
        }
    }

    private void open(CostTable table) {
        if (table.source().isBlank()) {
            breaches.add("cost table " + table.id() + " names no source for its times");
        }
        try (InputStream in = table.open()) {
            if (in.readAllBytes().length == 0) {
                breaches.add("cost table " + table.id() + " is empty");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Output output, Device device) {
        Optional<Plan> plan = anyPlan(device);
        if (plan.isPresent()) {
            new OutputContract(output, Output.Content.of(plan.get()), breaches).verify();
        }
    }

    private void assess(Assessment assessment, Device device) {
        if (assessment.source().isBlank()) {
            breaches.add("assessment " + assessment.id() + " names no publication");
        }
        if (assessment.statements().stream().anyMatch(Assessment.Statement::required)) {
            return; // the statements it needs are unknown here
        }
        Assessment.Result once = assessment.assess(device, Map.of(), QUICKLY);
        if (!once.equals(assessment.assess(device, Map.of(), QUICKLY))) {
            breaches.add(
                    "assessment " + assessment.id() + " returns a different result when run again");
        }
        Set<String> ids = new HashSet<>();
        once.criteria()
                .forEach(
                        criterion -> {
                            if (!ids.add(criterion.id()) || criterion.source().isBlank()) {
                                breaches.add(
                                        "assessment "
                                                + assessment.id()
                                                + ": criterion "
                                                + criterion.id()
                                                + " is a duplicate or has no source");
                            }
                        });
    }

    private static Optional<Plan> anyPlan(Device device) {
        return device.parts().keySet().stream()
                .filter(part -> !part.equals(device.base()))
                .findFirst()
                .flatMap(
                        part ->
                                QUICKLY.plan(PlanRequest.of(device, new Goal.Free(List.of(part))))
                                        .best());
    }
}
