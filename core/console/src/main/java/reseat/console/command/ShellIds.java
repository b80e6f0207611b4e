package reseat.console.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.console.load.OurPlugins;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Joint;

/** The ids that complete a word at the shell, from the device file on the same line. */
final class ShellIds {

    private static final Set<String> PARTS =
            Set.of("--free", "--forbid-part", "--require-part", "--permit-ruin");
    private static final Set<String> JOINTS =
            Set.of("--reach", "--forbid-joint", "--require-joint");
    private static final Set<String> TOOLS = Set.of("--forbid-tool", "--require-tool");
    private static final String VARIANT = "--variant";

    /** Asks for ids where an id belongs, and leaves everything else to the function above it. */
    static final String SCRIPT =
            """

            # Ids of parts, joints, tools and variants, from the device file on the line.
            function _reseat_ids() {
              local current="${COMP_WORDS[COMP_CWORD]}" before="${COMP_WORDS[COMP_CWORD-1]}" found=""
              if [ "$current" = "=" ]; then
                current=""
              elif [ "$before" = "=" ]; then
                before="${COMP_WORDS[COMP_CWORD-2]}"
              fi
              case "$before" in
                --free|--forbid-part|--require-part|--permit-ruin|--reach|--forbid-joint|--require-joint|--forbid-tool|--require-tool|--variant|kinds)
                  found=$("${COMP_WORDS[0]}" completion --ids="$before" --current="$current" -- "${COMP_WORDS[@]:1}" 2>/dev/null)
                  ;;
              esac
              if [ -n "$found" ]; then
                COMPREPLY=( $found )
              else
                _complete_reseat "$@"
              fi
            }
            complete -F _reseat_ids -o default reseat reseat.sh reseat.bash
            """;

    private ShellIds() {}

    /**
     * Returns what a word can become; nothing where no device can be read.
     *
     * @param option the word before it
     * @param current what is typed of it; ids after the first are separated by commas
     * @param words the words of the line
     */
    static List<String> after(String option, String current, List<String> words) {
        int comma = current.lastIndexOf(',') + 1;
        String before = current.substring(0, comma);
        String begun = current.substring(comma);
        Collection<String> ids =
                option.equals("kinds")
                        ? KindsCommand.ids(KindsCommand.all(ShopTables.tables(List.of())))
                        : ids(option, words);
        return ids.stream().filter(id -> id.startsWith(begun)).map(id -> before + id).toList();
    }

    private static Collection<String> ids(String option, List<String> words) {
        Optional<Path> file = words.stream().flatMap(word -> file(word).stream()).findFirst();
        if (file.isEmpty()) {
            return List.of();
        }
        int at = words.indexOf(VARIANT);
        boolean base = at < 0 || option.equals(VARIANT) || at + 1 >= words.size();
        Reading reading =
                DeviceFiles.read(
                        file.get(),
                        base ? Optional.empty() : Optional.of(words.get(at + 1)),
                        OurPlugins.quietly().families());
        if (option.equals(VARIANT)) {
            return reading.variants();
        }
        return reading.device().map(device -> ids(option, device)).orElse(List.of());
    }

    private static Collection<String> ids(String option, Device device) {
        if (PARTS.contains(option)) {
            return device.parts().keySet();
        }
        if (JOINTS.contains(option)) {
            return device.joints().values().stream().map(Joint::id).toList();
        }
        return TOOLS.contains(option) ? device.tools().keySet() : List.of();
    }

    private static Optional<Path> file(String word) {
        try {
            Path path = Path.of(word);
            boolean device = word.matches(".*\\.(yaml|yml|json)") && Files.isRegularFile(path);
            return device ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
