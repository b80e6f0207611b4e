package reseat.console.prompt;

import java.nio.file.Path;
import reseat.console.load.PersonalFolders;

/**
 * Where the console finds and keeps what is the user's own.
 *
 * @param settings folder of what the user writes: start-up files
 * @param state folder of what the console writes: history
 */
record Places(Path settings, Path state) {

    /** Returns the places in the folders of a person. */
    static Places of(PersonalFolders folders) {
        return new Places(folders.settings(), folders.state());
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
