package reseat.console.load;

import java.nio.file.Path;
import java.util.Map;

/**
 * The personal folders of the user. The environment decides: {@code RESEAT_HOME} for settings and
 * state, then the folders of the XDG base directory specification, then {@code HOME}, and only then
 * Java's user home. The launcher follows the same order for its cache.
 *
 * @param settings files that users write: start-up files, approvals
 * @param state files that the program writes: history
 * @param data files that users add: plugins
 */
public record PersonalFolders(Path settings, Path state, Path data) {

    private static final String NAME = "reseat";

    /** Returns the folders in the environment of this process. */
    public static PersonalFolders here() {
        return of(System.getenv(), System.getProperty("user.home", "."));
    }

    /**
     * Returns the folders that an environment names. Paths in it that are not absolute count as
     * missing, as the specification requires, except for {@code RESEAT_HOME}.
     *
     * @param userHome the home directory if the environment does not name it
     */
    public static PersonalFolders of(Map<String, String> env, String userHome) {
        Path home = absolute(env, "HOME", Path.of(userHome));
        Path data = absolute(env, "XDG_DATA_HOME", home.resolve(".local/share"));
        String own = env.getOrDefault("RESEAT_HOME", "");
        if (!own.isEmpty()) {
            return new PersonalFolders(Path.of(own), Path.of(own, "state"), data.resolve(NAME));
        }
        Path settings = absolute(env, "XDG_CONFIG_HOME", home.resolve(".config"));
        Path state = absolute(env, "XDG_STATE_HOME", home.resolve(".local/state"));
        return new PersonalFolders(settings.resolve(NAME), state.resolve(NAME), data.resolve(NAME));
    }

    private static Path absolute(Map<String, String> env, String name, Path otherwise) {
        String named = env.getOrDefault(name, "");
        Path path = Path.of(named);
        return path.isAbsolute() ? path : otherwise;
    }
}
