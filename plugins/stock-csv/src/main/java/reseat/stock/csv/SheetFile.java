package reseat.stock.csv;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import reseat.model.BadInputException;
import reseat.stock.StockException;

/**
 * The spreadsheet on disk, which others may change at any moment. It is read again each time and
 * never written.
 */
final class SheetFile {

    /** How often to retry a file that is being saved. */
    private static final int LOOKS = 40;

    private static final long PAUSE_MS = 50;

    private static final long MAX_BYTES = 64L << 20;

    private final Path file;
    private final Columns columns;
    private byte[] lastContent = {};
    private @Nullable Sheet last;

    SheetFile(Path file, Columns columns) {
        this.file = file;
        this.columns = columns;
    }

    Path file() {
        return file;
    }

    /**
     * Returns the spreadsheet as it is now. While it is being saved (it changes during the read, is
     * missing, or ends before its heading), the read is retried for two seconds.
     */
    Sheet read() throws StockException {
        for (int look = 1; ; look++) {
            try {
                byte[] content = content();
                boolean whole =
                        endsItsLine(content) || Arrays.equals(content, lastContent) || look >= 3;
                if ((content.length > 0 && whole) || look == LOOKS) {
                    return parsed(content);
                }
            } catch (NoSuchFileException e) {
                if (look == LOOKS) {
                    throw bad("there is no spreadsheet " + file, e);
                }
            } catch (BadInputException e) {
                if (look >= 3) { // it is not being saved, but wrong
                    throw bad(String.valueOf(e.getMessage()), e);
                }
            } catch (AccessDeniedException e) {
                throw bad("the spreadsheet " + file + " cannot be read: permission denied", e);
            } catch (IOException e) {
                if (look == LOOKS) {
                    throw new StockException(
                            StockException.Kind.UNREACHABLE,
                            "the spreadsheet " + file + " cannot be read: " + e.getMessage(),
                            e);
                }
            }
            pause();
        }
    }

    /**
     * Returns whether a file may be complete; one that ends within a line may still be being
     * written.
     */
    private static boolean endsItsLine(byte[] content) {
        int last = content.length - 1;
        return last >= 0 && (content[last] == '\n' || content[last] == '\r' || content[last] == 0);
    }

    private byte[] content() throws IOException, StockException {
        BasicFileAttributes before = Files.readAttributes(file, BasicFileAttributes.class);
        if (before.isDirectory() || before.size() > MAX_BYTES) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    file + " is not a spreadsheet: it is a folder, or larger than 64 MiB");
        }
        byte[] content = Files.readAllBytes(file);
        BasicFileAttributes after = Files.readAttributes(file, BasicFileAttributes.class);
        if (content.length != after.size()
                || !before.lastModifiedTime().equals(after.lastModifiedTime())) {
            throw new IOException("it keeps changing while it is read");
        }
        return content;
    }

    private Sheet parsed(byte[] content) throws BadInputException {
        Sheet known = last;
        if (known != null && Arrays.equals(content, lastContent)) {
            return known;
        }
        Sheet sheet = Sheet.parse(file.toString(), content, columns);
        lastContent = content;
        last = sheet;
        return sheet;
    }

    private static void pause() throws StockException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StockException(StockException.Kind.UNREACHABLE, "interrupted", e);
        }
    }

    private static StockException bad(String message, Exception cause) {
        return new StockException(StockException.Kind.BAD_INPUT, message, cause);
    }
}
