package reseat.console.prompt;

import java.nio.file.Path;
import java.util.Map;

/**
 * Where the console finds and keeps what is the user's own.
 *
 * @param settings folder of what the user writes: start-up files
 * @param state folder of what the console writes: history
 */
record Places(Path settings, Path state) {

    /** Returns the folders that the environment names. */
    static Places of(Map<String, String> env, String userHome) {
        String own = env.getOrDefault("RESEAT_HOME", "");
        if (!own.isEmpty()) {
            return new Places(Path.of(own), Path.of(own, "state"));
        }
        return new Places(
                folder(env, "XDG_CONFIG_HOME", userHome, ".config"),
                folder(env, "XDG_STATE_HOME", userHome, ".local/state"));
    }

    private static Path folder(Map<String, String> env, String name, String home, String usual) {
        String named = env.getOrDefault(name, "");
        Path base = named.isEmpty() ? Path.of(home).resolve(usual) : Path.of(named);
        return base.resolve("reseat");
    }

    /** Returns the file that is run when a session begins. */
    Path startUp(Tongue tongue) {
        return settings.resolve("console" + tongue.suffix());
    }

    /** Returns the file that keeps what was typed. */
    Path history(Tongue tongue) {
        return state.resolve("history-" + tongue.word());
    }
}
