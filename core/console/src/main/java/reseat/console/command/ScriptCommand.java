package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import reseat.script.host.ScriptFolder;

/** Lists, tests, approves and runs scripts that shops share. */
@Command(
        name = "script",
        description = "List, test, approve and run the checks that shops share as files.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ScriptListCommand.class,
            ScriptTestCommand.class,
            ScriptApproveCommand.class,
            ScriptRunCommand.class
        },
        footer = {
            "",
            "JavaScript runs in a sandbox. Java can do anything, and runs only once approved.",
            "How to write one: core/docs/scripts.md. What is safe: core/docs/script-safety.md.",
            "",
            "Examples:",
            "  reseat script list scripts",
            "  reseat script test scripts/many-flips",
            "  reseat script run scripts/torque-table samples/quill/quill.yaml"
        })
final class ScriptCommand implements Runnable {

    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command.");
    }

    /** Reads scripts; fails the command unless all are readable. */
    static ScriptFolder read(List<Path> places) {
        for (Path place : places) {
            if (!Files.exists(place)) {
                throw new BadInput("reseat: there is no file or folder " + place);
            }
        }
        try {
            ScriptFolder folder = ScriptFolder.read(places);
            if (!folder.problems().isEmpty()) {
                throw new BadInput(DeviceArgs.lines(folder.problems()));
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
