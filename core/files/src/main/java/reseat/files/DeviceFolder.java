package reseat.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import reseat.internal.files.FolderWalk;

/** Finds the device files of a folder tree. */
public final class DeviceFolder {

    private DeviceFolder() {}

    /**
     * Returns the device files in a folder and all folders below it. A file is considered one if
     *
     * <ul>
     *   <li>its name ends in {@code .yaml}, {@code .yml} or {@code .json};
     *   <li>its first 64 KiB identify it as one: by a line that begins with {@code format:
     *       reseat-device}, or with {@code joints:} where no line begins with {@code format:}; in a
     *       file that begins with a brace, by {@code reseat-device} as the first {@code format} in
     *       it;
     *   <li>neither its name nor that of a folder below the one given begins with a dot;
     *   <li>no folder below the one given that contains it is a project of its own, with a {@code
     *       pom.xml}: device files there are test data.
     * </ul>
     *
     * Its contents are not validated, so that errors are reported when it is read. Links to files
     * are followed, links to folders are not.
     *
     * @return the files as the folder is named, in the order of their paths
     * @throws IOException if a folder cannot be listed or a file cannot be opened
     */
    public static List<Path> files(Path folder) throws IOException {
        return FolderWalk.devices(Objects.requireNonNull(folder, "folder"));
    }
}
