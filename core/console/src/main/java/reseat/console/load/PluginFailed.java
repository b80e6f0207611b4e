package reseat.console.load;

/** Fails a command because code of a plugin failed. */
public final class PluginFailed extends RuntimeException {

    PluginFailed(String what, String plugin, Throwable cause) {
        super(
                "reseat: the "
                        + what
                        + " of the plugin "
                        + plugin
                        + " failed: "
                        + cause.getClass().getSimpleName()
                        + (cause.getMessage() == null ? "" : ": " + cause.getMessage()),
                cause);
    }
}
