package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import reseat.console.load.OurPlugins;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.model.BadInputException;

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
        return tables(rows);
    }

    static FastenerTables tables(List<Path> rows) {
        FastenerTables tables = OurPlugins.quietly().fastenerTables();
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
