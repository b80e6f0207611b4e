package reseat.internal.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Optional;
import reseat.model.Origin;

/** Loads files within bounds. */
final class Sources {

    /** Largest file that is read, in bytes. */
    static final int MAX_BYTES = 16 * 1024 * 1024;

    private Sources() {}

    /**
     * Loads a file; never reads more than one byte above the limit.
     *
     * @param name how the user named it
     * @param problems takes what is wrong
     * @return its bytes, or empty after a problem
     */
    static Optional<byte[]> load(Path file, String name, Problems problems) {
        Origin at = new Origin(name, 0, 0);
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            if (attributes.isDirectory()) {
                problems.error(at, "this is a directory, not a file");
                return Optional.empty();
            }
            byte[] content = bytes(file, attributes.size());
            if (content.length > MAX_BYTES) {
                problems.error(at, "the file is larger than " + MAX_BYTES / (1024 * 1024) + " MiB");
                return Optional.empty();
            }
            return Optional.of(content);
        } catch (NoSuchFileException e) {
            problems.error(at, "there is no such file");
        } catch (AccessDeniedException e) {
            problems.error(at, "the file may not be read by this user");
        } catch (IOException e) {
            problems.error(at, "the file cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    /** Reads regular files at once; pipes and devices until they end. */
    private static byte[] bytes(Path file, long size) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = new byte[(int) Math.min(size, MAX_BYTES)];
            int read = in.readNBytes(start, 0, start.length);
            if (read < start.length) {
                return Arrays.copyOf(start, read);
            }
            byte[] rest = in.readNBytes(MAX_BYTES + 1 - read);
            if (rest.length == 0) {
                return start;
            }
            byte[] all = Arrays.copyOf(start, read + rest.length);
            System.arraycopy(rest, 0, all, read, rest.length);
            return all;
        }
    }
}
