package reseat.console.load;

import java.util.Set;

/** What our own commands are called. Plugins are loaded without making the commands. */
public final class BuiltInCommands {

    /** The names, which no command of a plugin may have. */
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
