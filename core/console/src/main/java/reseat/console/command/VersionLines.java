package reseat.console.command;

import picocli.CommandLine.IVersionProvider;

/** Supplies the output of {@code --version} to the command line. */
final class VersionLines implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return VersionText.lines().toArray(String[]::new);
    }
}
