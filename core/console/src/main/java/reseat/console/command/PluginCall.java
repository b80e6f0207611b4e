package reseat.console.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import reseat.console.load.OurPlugins;
import reseat.console.sheet.Terminal;
import reseat.fasten.FastenerTables;
import reseat.model.Device;
import reseat.plan.Plans;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.spi.CostTable;
import reseat.spi.Plugins;

/** The call of a plugin's command from the command line. */
final class PluginCall implements CommandCall, AutoCloseable {

    private final CommandSpec spec;
    private final CommandInfo info;
    private final Terminal terminal = Terminal.detect();
    private final PrintWriter out;
    private final PrintWriter err;
    private final ProgressLine progress;

    /** Handles Ctrl-C, so it is created only for commands that react to it. */
    private @Nullable Thinking thinking;

    PluginCall(CommandSpec spec, CommandInfo info) {
        this.spec = spec;
        this.info = info;
        this.progress = new ProgressLine(spec.commandLine().getErr(), terminal.interactive());
        this.out = new PrintWriter(new Wiping(spec.commandLine().getOut(), progress));
        this.err = new PrintWriter(new Wiping(spec.commandLine().getErr(), progress), true);
    }

    @Override
    public List<String> values(String name) {
        CommandOption option =
                info.options().stream()
                        .filter(each -> each.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("it takes no " + name));
        Object value = arg(option).getValue();
        if (value == null || (option.kind() == Kind.FLAG && value.equals(false))) {
            return List.of();
        }
        List<String> values = new ArrayList<>();
        if (value instanceof Collection<?> several) {
            several.forEach(each -> values.add(String.valueOf(each)));
        } else {
            values.add(String.valueOf(value));
        }
        return List.copyOf(values);
    }

    private ArgSpec arg(CommandOption option) {
        if (!option.isParameter()) {
            return Objects.requireNonNull(spec.optionsMap().get(option.name()));
        }
        int place =
                info.options().stream().filter(CommandOption::isParameter).toList().indexOf(option);
        return spec.positionalParameters().get(place);
    }

    @Override
    public InputStream in() {
        return System.in;
    }

    @Override
    public PrintWriter out() {
        return out;
    }

    @Override
    public PrintWriter err() {
        return err;
    }

    @Override
    public void line(String text) {
        out.println(terminal.fitted(text));
    }

    @Override
    public int width() {
        return terminal.width();
    }

    @Override
    public boolean colour() {
        return terminal.colour();
    }

    @Override
    public boolean interactive() {
        return terminal.interactive();
    }

    @Override
    public Plugins plugins() {
        return OurPlugins.get(err);
    }

    @Override
    public Device device(Path file, Optional<String> variant, Optional<String> costTable) {
        try {
            Optional<CostTable> costs = costTable.map(id -> PluginArgs.costs(plugins(), id));
            return DeviceArgs.read(file, variant, costs, err);
        } catch (BadInput e) {
            throw new CommandException(String.valueOf(e.getMessage()));
        }
    }

    @Override
    public FastenerTables tables(List<Path> rows) {
        try {
            return ShopTables.tables(rows);
        } catch (BadInput e) {
            throw new CommandException(String.valueOf(e.getMessage()));
        }
    }

    @Override
    public Plans plans() {
        return new Planner();
    }

    @Override
    public Watch watch() {
        Thinking made = thinking;
        if (made == null) {
            made = new Thinking(spec.commandLine().getErr(), progress, "the answer");
            thinking = made;
        }
        return made;
    }

    @Override
    public void progress(String line) {
        progress.tell(line);
    }

    @Override
    public void close() {
        progress.wipe();
        out.flush();
        err.flush();
        if (thinking != null) {
            thinking.close();
        }
    }
}
