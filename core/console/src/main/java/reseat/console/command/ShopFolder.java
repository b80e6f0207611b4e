package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.load.PersonalFolders;
import reseat.script.host.Approvals;

/** The folder in which a shop keeps its settings. */
final class ShopFolder {

    @Option(
            names = "--shop",
            paramLabel = "FOLDER",
            description =
                    "Folder of the shop's settings (default: RESEAT_HOME, else reseat in the user's settings).")
    private @Nullable Path folder;

    Approvals approvals() {
        Path named = folder;
        try {
            return Approvals.in(named != null ? named : PersonalFolders.here().settings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
