package reseat.console.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * A few threads that share numbered tasks. The thread that calls looks after them: it asks whether
 * to go on, interrupts them where not, and does not wait for ever for one that does not listen. Can
 * be used once.
 */
final class Crew {

    private static final long ASKS_EVERY_MS = 20;
    private static final long GRACE_MS = 3000;

    private final int threads;
    private final BooleanSupplier cancelled;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicReference<@Nullable Throwable> broken = new AtomicReference<>();
    private volatile boolean stopped;

    /**
     * Makes a crew.
     *
     * @param threads number of threads, at least 1
     * @param cancelled asked all the time whether to stop
     */
    public Crew(int threads, BooleanSupplier cancelled) {
        this.threads = threads;
        this.cancelled = cancelled;
    }

    /** Tells whether the tasks that are left will not be done; from any thread. */
    public boolean stopped() {
        return stopped;
    }

    /**
     * Does all tasks, unless it is cancelled or the calling thread is interrupted, which stays so.
     *
     * @param count number of tasks
     * @param task does the task with a number from 0
     * @return whether all were done
     */
    public boolean each(int count, IntConsumer task) {
        int hands = Math.min(threads, count);
        CountDownLatch working = new CountDownLatch(hands);
        List<Thread> crew = new ArrayList<>();
        for (int i = 1; i <= hands; i++) {
            Thread thread = new Thread(() -> work(count, task, working), "reseat-check-" + i);
            thread.setDaemon(true);
            crew.add(thread);
        }
        crew.forEach(Thread::start);
        lookAfter(crew, working);
        Throwable why = broken.get();
        if (why instanceof Error error) {
            throw error;
        }
        if (why instanceof RuntimeException exception) {
            throw exception;
        }
        return !stopped;
    }

    /** Does all tasks in the calling thread, which belongs to another crew. */
    public boolean eachHere(int count, IntConsumer task) {
        for (int i = 0; i < count; i++) {
            if (cancelled.getAsBoolean()) {
                stopped = true;
                break;
            }
            task.accept(i);
        }
        return !stopped;
    }

    private void work(int count, IntConsumer task, CountDownLatch working) {
        try {
            for (int i = next.getAndIncrement();
                    i < count && !stopped;
                    i = next.getAndIncrement()) {
                task.accept(i);
                // a task that interrupts itself must not stop the next
                if (Thread.interrupted() && stopped) {
                    break;
                }
            }
        } catch (RuntimeException | Error e) { // handed to the thread that called
            broken.compareAndSet(null, e);
            stopped = true;
        } finally {
            working.countDown();
        }
    }

    private void lookAfter(List<Thread> crew, CountDownLatch working) {
        boolean interrupted = false;
        long patience = Long.MAX_VALUE;
        while (working.getCount() > 0 && patience - System.nanoTime() > 0) {
            try {
                if (working.await(ASKS_EVERY_MS, TimeUnit.MILLISECONDS)) {
                    break;
                }
            } catch (InterruptedException e) {
                interrupted = true;
            }
            if (patience == Long.MAX_VALUE
                    && (interrupted || stopped || cancelled.getAsBoolean())) {
                stopped = true;
                crew.forEach(Thread::interrupt);
                patience = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(GRACE_MS);
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
