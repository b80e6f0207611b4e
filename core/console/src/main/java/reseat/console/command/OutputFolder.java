package reseat.console.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A folder that outputs write files into. A list in it records the written files and their
 * checksums, so that only our own unchanged files are overwritten.
 */
final class OutputFolder {

    /** The list: lines of checksum and name, as sha256sum reads them. */
    static final String LIST = ".reseat-files";

    private final Path folder;

    OutputFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes files, each of them atomically.
     *
     * @param files the files by plain name
     * @param force whether to overwrite files that were not written by Reseat
     * @throws BadInput if a file to overwrite was not written by Reseat, or was changed since;
     *     nothing is written then
     */
    void write(Map<String, byte[]> files, boolean force) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new BadInput("reseat: --into: " + folder + " is a file, expected a folder.");
        }
        Set<String> ours = new TreeSet<>(listed());
        List<String> foreign = new ArrayList<>();
        for (Map.Entry<String, byte[]> each : files.entrySet()) {
            Path file = folder.resolve(each.getKey());
            if (Files.isDirectory(file)) {
                throw new BadInput(
                        "reseat: --into: " + file + " is a folder, expected a file or nothing.");
            }
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                    && !ours.contains(line(file))
                    && !line(each.getKey(), each.getValue()).equals(line(file))) {
                foreign.add(each.getKey());
            }
        }
        if (!foreign.isEmpty() && !force) {
            throw new BadInput(
                    "reseat: --into: "
                            + folder
                            + " has "
                            + String.join(", ", foreign)
                            + ", which Reseat did not write, or which was changed since. Nothing"
                            + " was"
                            + " written. Choose another folder, or give --force to overwrite.");
        }
        Files.createDirectories(folder);
        // listed before it is written: if the program dies in between, the next run knows both
        files.forEach((name, bytes) -> ours.add(line(name, bytes)));
        list(ours);
        for (Map.Entry<String, byte[]> each : files.entrySet()) {
            replace(folder.resolve(each.getKey()), each.getValue());
        }
        ours.removeIf(line -> files.containsKey(name(line)));
        files.forEach((name, bytes) -> ours.add(line(name, bytes)));
        list(ours);
    }

    /**
     * Writes a file atomically; an existing file stays until the new one is complete. Links are
     * followed; anything but a regular file, such as a pipe, is written to directly.
     */
    static void replace(Path file, byte[] bytes) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            Files.write(file, bytes);
            return;
        }
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path part =
                target.resolveSibling(
                        ".reseat-" + ProcessHandle.current().pid() + "-" + target.getFileName());
        try {
            Files.write(
                    part,
                    bytes,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.DSYNC);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(
                    part,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private List<String> listed() throws IOException {
        Path list = folder.resolve(LIST);
        return Files.isRegularFile(list) ? Files.readAllLines(list) : List.of();
    }

    private void list(Set<String> lines) throws IOException {
        String text = String.join("\n", lines) + "\n";
        replace(folder.resolve(LIST), text.getBytes(StandardCharsets.UTF_8));
    }

    private static String line(Path file) throws IOException {
        return line(String.valueOf(file.getFileName()), Files.readAllBytes(file));
    }

    private static String line(String name, byte[] bytes) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(sum) + "  " + name;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is missing", e);
        }
    }

    private static String name(String line) {
        return line.substring(line.indexOf("  ") + 2);
    }
}
