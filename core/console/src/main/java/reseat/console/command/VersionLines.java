package reseat.console.command;

import picocli.CommandLine.IVersionProvider;
import reseat.spi.ToolkitVersion;

/** What {@code --version} prints: our version, and the Java that runs us. */
final class VersionLines implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {
            "reseat " + ToolkitVersion.current(),
            "Java " + Runtime.version() + ", " + System.getProperty("java.vendor", "maker unknown")
        };
    }
}
