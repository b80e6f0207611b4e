package reseat.stock.sql;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import reseat.stock.StockException;

/**
 * Copies the H2 file of an earlier Reseat into the SQLite file that replaces it.
 *
 * <p>Everything is copied in one transaction, which also records the checksum of the old file; then
 * the old file is renamed. A process killed before the commit has changed nothing; after a kill
 * later, the next run finds the record and only renames. The old file is locked meanwhile, as H2
 * itself locks it, and is never written.
 */
final class StepOver {

    /** The ending of the name of an old file that was copied. */
    static final String KEPT = ".copied-to-sqlite";

    private static final long PAUSE_MS = 50;

    private final FormerFile former;
    private final Path target;
    private final Transactions transactions;

    StepOver(FormerFile former, Path target, Transactions transactions) {
        this.former = former;
        this.target = target;
        this.transactions = transactions;
    }

    /** Copies the old file if there is one; returns a message that says so. */
    Optional<String> take() throws StockException {
        Path old = former.path();
        try (FileChannel channel =
                FileChannel.open(old, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            FileLock lock = lock(channel);
            if (!Files.exists(old)) {
                return Optional.empty(); // another program has done it meanwhile
            }
            String copied = copy(channel);
            Path kept = kept(old);
            Files.move(old, kept, StandardCopyOption.ATOMIC_MOVE);
            lock.release();
            return Optional.of(copied + ". The old file is kept as " + kept);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the database "
                            + old
                            + " of an earlier Reseat cannot be replaced by "
                            + target
                            + ": "
                            + e,
                    e);
        }
    }

    private String copy(FileChannel channel) throws IOException, StockException {
        String sum = sum(channel);
        SteppedTables tables = new SteppedTables(former.path(), target, sum);
        if (Files.exists(target)
                && Files.size(target) > 0
                && transactions.look(tables::areCopied)) {
            return target + " already has the contents of " + former.path();
        }
        FormerContents contents = former.read(channel);
        transactions.run(
                "try again",
                connection -> {
                    tables.fill(connection, contents);
                    return true;
                });
        return tables.says(contents);
    }

    private FileLock lock(FileChannel channel) throws IOException, StockException {
        long until = System.nanoTime() + transactions.database().patience().toNanos();
        while (true) {
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) {
                    return lock;
                }
            } catch (OverlappingFileLockException e) {
                // another thread of this program does it
            }
            if (System.nanoTime() > until) {
                throw new StockException(
                        StockException.Kind.UNREACHABLE,
                        "another program has the database "
                                + former.path()
                                + " open, which must be copied to "
                                + target
                                + " first; nothing was done, try again");
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new StockException(
                        StockException.Kind.UNREACHABLE, "interrupted; try again", e);
            }
        }
    }

    /** Read through the channel that holds the lock: closing another one would release it. */
    private static String sum(FileChannel channel) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
            long at = 0;
            for (int n = channel.read(buffer, at); n >= 0; n = channel.read(buffer, at)) {
                at += n;
                digest.update(buffer.flip());
                buffer.clear();
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new UncheckedIOException(new IOException("Java lacks SHA-256", e));
        }
    }

    private static Path kept(Path old) {
        Path kept = Path.of(old + KEPT);
        for (int n = 2; Files.exists(kept); n++) {
            kept = Path.of(old + KEPT + "-" + n);
        }
        return kept;
    }
}
