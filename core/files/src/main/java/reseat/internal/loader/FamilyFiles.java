package reseat.internal.loader;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import reseat.internal.spi.JarFiles;

/** The files of a family, by their names in its folder. */
@FunctionalInterface
interface FamilyFiles {

    /**
     * Opens a file.
     *
     * @param name its name, with slashes between folders
     * @throws IOException if it cannot be read, or lies outside the folder
     */
    InputStream open(String name) throws IOException;

    /** Returns the files in a folder; links may not lead out of it. */
    static FamilyFiles in(Path folder) {
        return name -> {
            Path home = folder.toRealPath();
            Path file;
            try {
                file = home.resolve(name).toRealPath();
            } catch (InvalidPathException e) {
                throw new IOException("invalid name: " + e.getReason(), e);
            }
            if (!file.startsWith(home)) {
                throw new IOException("it leads out of the folder, to " + file);
            }
            if (!Files.isRegularFile(file)) {
                throw new IOException("it is not a regular file");
            }
            return Files.newInputStream(file);
        };
    }

    /** Returns the files in a folder of the jar of a class. */
    static FamilyFiles in(Class<?> type, String folder) {
        return name -> {
            InputStream in = JarFiles.open(type, folder + "/" + name);
            if (in == null) {
                throw new NoSuchFileException(name);
            }
            return in;
        };
    }

    /** Reads a file, which must be UTF-8; a byte order mark is skipped. */
    default String text(String name) throws IOException {
        try (InputStream in = open(name)) {
            String text =
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(in.readAllBytes()))
                            .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        }
    }

    /** Returns what is wrong with a file that could not be read, for people. */
    static String why(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file";
        }
        if (failure instanceof CharacterCodingException) {
            return "it is not UTF-8";
        }
        if (failure instanceof AccessDeniedException) {
            return "access to it is denied";
        }
        return String.valueOf(failure.getMessage());
    }
}
