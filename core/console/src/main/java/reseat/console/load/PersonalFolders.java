package reseat.console.load;

import java.nio.file.Path;
import java.util.Map;

/**
 * Where things of the person who runs the program are kept. The environment decides: {@code
 * RESEAT_HOME} for settings and state, then the folders of the XDG base directory specification,
 * then {@code HOME}, and only then what Java takes for the home. The launcher follows the same
 * order for its cache.
 *
 * @param settings what people write: start-up files, approvals
 * @param state what the program writes: history
 * @param data what people add: plugins
 */
public record PersonalFolders(Path settings, Path state, Path data) {

    private static final String NAME = "reseat";

    /** Returns the folders in the environment of this process. */
    public static PersonalFolders here() {
        return of(System.getenv(), System.getProperty("user.home", "."));
    }

    /**
     * Returns the folders that an environment names. Paths in it that are not absolute count as
     * missing, as the specification wants it, but for {@code RESEAT_HOME}.
     *
     * @param userHome the home where the environment does not name it
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
