package reseat.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Problem;
import reseat.plan.Plans;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CostTable;
import reseat.spi.Plugins;

/** A call of a command in a test: into a pipe, with nobody watching. */
record TrialCall(
        Map<String, List<String>> given,
        InputStream in,
        PrintWriter out,
        PrintWriter err,
        Plugins plugins,
        boolean isCancelled)
        implements CommandCall {

    private static final int WIDTH = 100;

    @Override
    public List<String> values(String name) {
        List<String> values = given.get(name);
        if (values == null) {
            throw new IllegalArgumentException("it takes no " + name);
        }
        return List.copyOf(values);
    }

    @Override
    public void line(String text) {
        out.println(text);
    }

    @Override
    public int width() {
        return WIDTH;
    }

    @Override
    public boolean colour() {
        return false;
    }

    @Override
    public boolean interactive() {
        return false;
    }

    @Override
    public Device device(Path file, Optional<String> variant, Optional<String> costTable) {
        Optional<CostTable> costs = costTable.map(this::costs);
        Reading reading = DeviceFiles.read(file, variant, plugins.families(), costs);
        String problems =
                reading.problems().stream()
                        .map(Problem::toString)
                        .collect(Collectors.joining("\n"));
        Device device = reading.device().orElseThrow(() -> new CommandException(problems));
        reading.problems().forEach(err::println);
        return device;
    }

    private CostTable costs(String id) {
        return plugins.costTables().stream()
                .filter(table -> table.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new CommandException("reseat: there is no cost table " + id));
    }

    @Override
    public FastenerTables tables(List<Path> rows) {
        FastenerTables tables = plugins.fastenerTables();
        for (Path file : rows) {
            try {
                tables = tables.withRows(file);
            } catch (BadInputException e) {
                throw new CommandException(String.valueOf(e.getMessage()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return tables;
    }

    @Override
    public Plans plans() {
        return new Planner();
    }

    @Override
    public Watch watch() {
        return new Watch() {
            @Override
            public boolean cancelled() {
                return isCancelled;
            }
        };
    }

    @Override
    public void progress(String line) {
        // nobody watches
    }
}
