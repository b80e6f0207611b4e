package reseat.console.prompt;

import java.nio.file.Path;
import reseat.console.load.PersonalFolders;

/**
 * The locations of the user's own files.
 *
 * @param settings folder of files that the user writes: start-up files
 * @param state folder of files that the console writes: history
 */
record Places(Path settings, Path state) {

    /** Returns the places in the folders of a person. */
    static Places of(PersonalFolders folders) {
        return new Places(folders.settings(), folders.state());
    }

    /** Returns the file that runs when a session starts. */
    Path startUp(Tongue tongue) {
        return settings.resolve("console" + tongue.suffix());
    }

    /** Returns the history file. */
    Path history(Tongue tongue) {
        return state.resolve("history-" + tongue.word());
    }
}
