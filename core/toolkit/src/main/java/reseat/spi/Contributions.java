package reseat.spi;

import java.util.List;
import reseat.check.Check;
import reseat.stock.StockSource;

/** What a plugin contributes, requested once: a plugin whose methods always return the same. */
public record Contributions(
        PluginInfo info,
        List<DeviceFamily> families,
        List<Check> checks,
        List<StockSource> stockSources,
        List<CostTable> costTables,
        List<Output> outputs,
        List<Assessment> assessments,
        List<Command> commands)
        implements Plugin {

    public Contributions {
        families = List.copyOf(families);
        checks = List.copyOf(checks);
        stockSources = List.copyOf(stockSources);
        costTables = List.copyOf(costTables);
        outputs = List.copyOf(outputs);
        assessments = List.copyOf(assessments);
        commands = List.copyOf(commands);
    }
}
