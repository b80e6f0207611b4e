package reseat.stock.csv;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/**
 * The append-only file of reservations: one entry per line, each with its checksum. An entry counts
 * once its line is complete and on disk; a partial line left by a killed program is cut off before
 * the next write. Writers must hold the {@link Turn}; readers must be the only thread.
 */
final class Journal {

    private static final int SUM = 8;
    private static final long MAX_BYTES = 1L << 30;

    private final Path file;
    private @Nullable Object fileKey;
    private long read;
    private int lines;

    Journal(Path file) {
        this.file = file;
    }

    Path file() {
        return file;
    }

    /**
     * The entries added since the last call.
     *
     * @param anew whether these are all entries from the first, because the file was replaced
     * @param entries the entries in order
     */
    record News(boolean anew, List<Entry> entries) {}

    /** Returns the entries added, by any program. */
    News news() throws StockException {
        boolean anew = false;
        try {
            Optional<BasicFileAttributes> now = attributes();
            long size = now.map(BasicFileAttributes::size).orElse(0L);
            Object key = now.map(BasicFileAttributes::fileKey).orElse(null);
            boolean same = key == null ? fileKey == null : key.equals(fileKey);
            if (size < read || (read > 0 && !same)) {
                anew = true;
                forget();
            }
            fileKey = key;
            if (size > MAX_BYTES) {
                throw damaged("it is larger than 1 GiB");
            }
            return new News(anew, size > read ? entries(size) : List.of());
        } catch (IOException e) {
            throw trouble("cannot be read", e);
        }
    }

    /** Makes the next {@link #news} return all entries. */
    void forget() {
        read = 0;
        lines = 0;
    }

    private Optional<BasicFileAttributes> attributes() throws IOException {
        return Files.exists(file)
                ? Optional.of(Files.readAttributes(file, BasicFileAttributes.class))
                : Optional.empty();
    }

    private List<Entry> entries(long size) throws IOException, StockException {
        byte[] bytes = new byte[(int) (size - read)];
        try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ)) {
            ByteBuffer into = ByteBuffer.wrap(bytes);
            while (into.hasRemaining() && in.read(into, read + into.position()) >= 0) {
                // until the buffer is full
            }
        }
        List<Entry> entries = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                lines++;
                entries.add(entry(new String(bytes, start, i - start, UTF_8)));
                start = i + 1;
            }
        }
        read += start;
        return entries;
    }

    private Entry entry(String line) throws StockException {
        if (line.length() <= SUM + 1
                || !line.substring(0, SUM).equals(sum(line.substring(SUM + 1)))) {
            throw damaged("line " + lines + " was changed or is damaged");
        }
        try {
            return Entry.parse(line.substring(SUM + 1));
        } catch (IOException e) {
            throw damaged("line " + lines + " is invalid: " + e.getMessage());
        }
    }

    /**
     * Appends an entry and waits until it is on disk. Call {@link #news} first.
     *
     * @throws StockException if that is not certain; the entry may have been written or not
     */
    void add(Entry entry) throws StockException {
        String json = entry.json();
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        line.writeBytes((sum(json) + " " + json + "\n").getBytes(UTF_8));
        boolean isNew = !Files.exists(file);
        try (FileChannel out =
                FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE)) {
            if (out.size() > read) {
                out.truncate(read); // a partial line of a killed program
            }
            ByteBuffer bytes = ByteBuffer.wrap(line.toByteArray());
            while (bytes.hasRemaining()) {
                out.write(bytes, read + bytes.position());
            }
            out.force(true);
            read += bytes.position();
            lines++;
        } catch (IOException e) {
            throw trouble("cannot be written", e);
        }
        if (isNew) {
            fileKey = keyOfNew();
        }
    }

    private @Nullable Object keyOfNew() throws StockException {
        Path folder = file.getParent();
        if (folder != null) {
            try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
                names.force(true); // so that the directory entry is on disk as well
            } catch (IOException e) {
                // some systems cannot open folders, and do not need this
                fileKey = null;
            }
        }
        try {
            return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        } catch (IOException e) {
            throw trouble("cannot be read", e);
        }
    }

    private static String sum(String json) {
        CRC32 sum = new CRC32();
        sum.update(json.getBytes(UTF_8));
        return String.format(Locale.ROOT, "%08x", sum.getValue());
    }

    private StockException damaged(String what) {
        forget();
        return new StockException(
                StockException.Kind.BAD_INPUT,
                file
                        + ": "
                        + what
                        + "; nothing was done. This is the journal of reservations: restore a"
                        + " copy of it, or move it away to start without reservations");
    }

    private StockException trouble(String what, IOException e) {
        forget();
        return new StockException(
                StockException.Kind.UNREACHABLE,
                "the journal of reservations "
                        + file
                        + " "
                        + what
                        + " ("
                        + e.getMessage()
                        + "); it is not known whether the last request was carried out: repeat it"
                        + " with the same id",
                e);
    }
}
