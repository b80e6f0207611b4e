package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import reseat.console.load.OurPlugins;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.spi.DeviceFamily;

/** The fastener tables with a shop's own rows. */
final class ShopTables {

    @Option(
            names = "--rows",
            paramLabel = "FILE",
            description =
                    "Add rows to a fastener table; the file is named as the table, such as materials.csv.")
    private List<Path> rows = new ArrayList<>();

    /** Returns the files with further rows. */
    List<Path> files() {
        return List.copyOf(rows);
    }

    /** Returns the tables, with the rows of families and then those of the shop. */
    FastenerTables tables() {
        return withRows(OurPlugins.quietly().fastenerTables());
    }

    /** Returns the tables for a device: with the rows of its family, and over them the shop's. */
    Function<Device, FastenerTables> tables(List<DeviceFamily> families) {
        FastenerTables common = tables();
        Map<String, FastenerTables> own = new HashMap<>();
        for (DeviceFamily family : families) {
            FastenerTables tables = FastenerTables.standard();
            for (Map.Entry<String, String> each : family.fastenerRows().entrySet()) {
                try {
                    tables = tables.withRows(each.getKey(), each.getValue());
                } catch (BadInputException e) {
                    throw new BadInput("family " + family.id() + ": " + e.getMessage());
                }
            }
            own.put(family.id(), withRows(tables));
        }
        return device -> own.getOrDefault(device.family(), common);
    }

    private FastenerTables withRows(FastenerTables before) {
        FastenerTables tables = before;
        for (Path file : rows) {
            try {
                tables = tables.withRows(file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (BadInputException e) {
                throw new BadInput(String.valueOf(e.getMessage()));
            }
        }
        return tables;
    }

    /** Runs a computation whose input a user gave; what is wrong with it ends the command. */
    static <T> T asked(Supplier<T> computation) {
        try {
            return computation.get();
        } catch (FastenerInputException e) {
            throw new BadInput("reseat: " + e.getMessage());
        }
    }
}
