package reseat.console.command;

import picocli.CommandLine.IVersionProvider;

/** Hands what {@code --version} prints to the command line. */
final class VersionLines implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return VersionText.lines().toArray(String[]::new);
    }
}
