package reseat.stock.csv;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import reseat.stock.StockException;
import reseat.text.TimeText;

/**
 * Mutual exclusion between the threads of this program and between programs. Programs lock a
 * separate file, which stays empty; the system releases the lock when a program dies.
 */
final class Turn {

    private static final Map<Path, ReentrantLock> THREADS = new ConcurrentHashMap<>();
    private static final long PAUSE_MS = 10;

    private final Path file;
    private final Duration patience;
    private final ReentrantLock threads;

    Turn(Path journal, Duration patience) {
        this.file = journal.resolveSibling(journal.getFileName() + ".lock");
        this.patience = patience;
        this.threads = THREADS.computeIfAbsent(file, f -> new ReentrantLock(true));
    }

    /** The work to do while holding the lock. */
    @FunctionalInterface
    interface Work<T> {
        T run() throws StockException;
    }

    /**
     * Lets one thread at a time read, without locking out other programs: their entries are either
     * complete or not there yet. Writes nothing, so that a stock can be read from read-only
     * folders.
     */
    <T> T look(Work<T> work) throws StockException {
        threads.lock();
        try {
            return work.run();
        } finally {
            threads.unlock();
        }
    }

    /** Lets one thread of one program at a time write. */
    <T> T take(Work<T> work) throws StockException {
        long until = System.nanoTime() + patience.toNanos();
        try {
            if (!threads.tryLock(patience.toNanos(), TimeUnit.NANOSECONDS)) {
                throw busy();
            }
            try (FileChannel channel =
                    FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE)) {
                FileLock lock = channel.tryLock();
                while (lock == null) {
                    if (System.nanoTime() > until) {
                        throw busy();
                    }
                    Thread.sleep(PAUSE_MS);
                    lock = channel.tryLock();
                }
                return work.run();
            } catch (IOException e) {
                throw new StockException(
                        StockException.Kind.UNREACHABLE,
                        "the lock file "
                                + file
                                + " cannot be used ("
                                + e.getMessage()
                                + "); nothing was done",
                        e);
            } finally {
                threads.unlock();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StockException(
                    StockException.Kind.UNREACHABLE, "interrupted; nothing was done", e);
        }
    }

    private StockException busy() {
        return new StockException(
                StockException.Kind.UNREACHABLE,
                "another program has locked the reservations for "
                        + TimeText.of(patience.toMillis())
                        + " ("
                        + file
                        + "); nothing was done, try again");
    }
}
