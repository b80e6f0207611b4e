package reseat.console.load;

import java.util.Set;

/** The names of built-in commands. Plugins are loaded without creating the commands. */
public final class BuiltInCommands {

    /** The names, which commands of plugins must not use. */
    public static final Set<String> NAMES =
            Set.of(
                    "assess",
                    "check",
                    "checks",
                    "compare",
                    "completion",
                    "console",
                    "cut",
                    "driver",
                    "facts",
                    "graph",
                    "judge",
                    "kinds",
                    "new",
                    "plan",
                    "plugins",
                    "proofread",
                    "schema",
                    "script",
                    "swap",
                    "torque",
                    "why");

    private BuiltInCommands() {}
}
