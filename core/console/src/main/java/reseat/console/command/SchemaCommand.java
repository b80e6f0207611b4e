package reseat.console.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import reseat.files.DeviceSchema;

/** Prints the JSON Schema of device files. */
@Command(
        name = "schema",
        description = "Print the JSON Schema (2020-12) of device files, for editors.",
        sortOptions = false,
        footer = {"", "Example:", "  reseat schema > reseat-device.schema.json"})
final class SchemaCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(DeviceSchema.json());
        return 0;
    }
}
