package reseat.console.load;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps code of plugins from exiting the program. The code runs in its own thread. If it calls
 * {@code System.exit}, a shutdown hook delays the exit, the caller gets an {@link ExitNotAllowed},
 * and the program continues to its normal end, with exit code 3. Signals and the program's own exit
 * are not affected. {@code Runtime.halt} cannot be intercepted: it runs no hooks.
 *
 * <p>Java has no other means since the security manager was removed. The stack traces of all
 * threads show who called for the exit.
 */
public final class Guard {

    /** The guard of this process. */
    public static final Guard PROGRAM = new Guard();

    private static final int FAILED_INSIDE = 3;
    private static final long LOOKS_EVERY_MS = 20;

    /** Code typed at the console is in this package; users may exit what they started. */
    private static final String TYPED = "REPL.";

    private final Set<Region<?>> running = ConcurrentHashMap.newKeySet();
    private final Set<ThreadGroup> groups = ConcurrentHashMap.newKeySet();
    private final Set<Thread> stuck = ConcurrentHashMap.newKeySet();
    private final ExecutorService helpers = Executors.newCachedThreadPool(this::helper);
    private final List<String> untold = new ArrayList<>();
    private @Nullable PrintWriter out;
    private @Nullable PrintWriter err;
    private @Nullable Thread ender;
    private IntConsumer exit = Guard::unarmed;
    private IntConsumer halt = Guard::unarmed;
    private boolean hooked;

    Guard() {}

    private static void unarmed(int code) {
        throw new IllegalStateException("the guard cannot end the program before it is armed");
    }

    /** Code of a plugin. */
    public interface Code<T, E extends Exception> {
        /** Runs it. */
        T run() throws E;
    }

    /** Thrown when code of a plugin called {@code System.exit}. */
    public static final class ExitNotAllowed extends RuntimeException {

        ExitNotAllowed(String message) {
            super(message);
        }
    }

    /**
     * Starts guarding; before, code runs unguarded.
     *
     * @param toOut the standard output, flushed before the program ends
     * @param toErr gets what plugins tried
     * @param byExit ends the program with an exit code, in order: shutdown hooks run
     * @param byHalt ends it at once
     */
    public synchronized void arm(
            PrintWriter toOut, PrintWriter toErr, IntConsumer byExit, IntConsumer byHalt) {
        exit = byExit;
        halt = byHalt;
        out = toOut;
        err = toErr;
    }

    private synchronized boolean armed() {
        return err != null;
    }

    /** Watches for unexpected exits, for code that cannot be run by {@link #run}. */
    public synchronized void watch() {
        if (armed() && !hooked) {
            hooked = true;
            Runtime.getRuntime().addShutdownHook(new Thread(this::holdUp, "reseat-guard"));
        }
    }

    /**
     * Runs code of a plugin. An interrupt is passed on to it.
     *
     * @param whose the owner of the code, such as "the plugin sounders 1.0"
     * @throws ExitNotAllowed if it called {@code System.exit}
     */
    public <T, E extends Exception> T run(String whose, Code<T, E> code) throws E {
        watch();
        if (!armed()) {
            return code.run();
        }
        Region<T> region = new Region<>(whose);
        running.add(region);
        try {
            helpers.execute(() -> region.work(code));
            return region.await();
        } finally {
            running.remove(region);
        }
    }

    /** Exits the program, with exit code 3 if code of a plugin tried to exit it before. */
    public void end(int code) {
        synchronized (this) {
            if (stuck.isEmpty()) {
                ender = Thread.currentThread();
            } else {
                tell();
                halt.accept(FAILED_INSIDE);
            }
        }
        exit.accept(code);
    }

    private Thread helper(Runnable work) {
        ThreadGroup group = new ThreadGroup("reseat-plugins");
        groups.add(group);
        Thread thread = new Thread(group, work, "reseat-plugin-code");
        thread.setDaemon(true);
        return thread;
    }

    /** The shutdown hook: returns when the program may exit. */
    private void holdUp() {
        while (!mayEnd(Thread.getAllStackTraces())) {
            try {
                Thread.sleep(LOOKS_EVERY_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /**
     * Finds out who called for the exit of the program.
     *
     * @param stacks the stack traces of all threads
     * @return whether it may exit; if not, call this again later
     */
    synchronized boolean mayEnd(Map<Thread, StackTraceElement[]> stacks) {
        List<Thread> exiting = in(stacks, "java.lang.Runtime", "exit");
        Optional<Thread> signal = in(stacks, "java.lang.Terminator", "").stream().findFirst();
        if (signal.isPresent()) {
            // an exit that came first would give its own code to the signal
            if (!stuck.isEmpty() || exiting.stream().anyMatch(each -> foreign(each, stacks))) {
                halt.accept(signal.get().getName().contains("INT") ? 130 : 143);
            }
            return true;
        }
        boolean unseen = exiting.isEmpty() && stuck.isEmpty() && ender == null;
        if (unseen && in(stacks, "java.lang.Shutdown", "shutdown").isEmpty()) {
            give("code of a plugin", "");
        }
        for (Thread thread : exiting) {
            if (!foreign(thread, stacks) || !stuck.add(thread)) {
                continue;
            }
            List<StackTraceElement> stack = below(stacks.get(thread));
            String place = stack.isEmpty() ? "" : stack.get(0).toString();
            Optional<Region<?>> region = running.stream().filter(r -> r.owns(thread)).findFirst();
            if (region.isPresent()) {
                region.get().refuse(place);
            } else if (groups.stream().anyMatch(group -> within(group, thread))) {
                untold.add(sentence("a thread of a plugin", place));
            } else {
                give("code of a plugin", place);
            }
        }
        if (ender != null && !stuck.isEmpty()) {
            tell();
            halt.accept(FAILED_INSIDE);
        }
        return stuck.isEmpty();
    }

    /** Halts the program at once, because other threads may wait forever for a stuck one. */
    private void give(String whose, String place) {
        untold.add(sentence(whose, place));
        tell();
        halt.accept(FAILED_INSIDE);
    }

    private void tell() {
        if (out != null && err != null) {
            out.flush();
            untold.forEach(each -> err.println("reseat: " + each + "."));
            err.flush();
        }
        untold.clear();
    }

    private static String sentence(String whose, String place) {
        return whose + " tried to end the program" + (place.isEmpty() ? "" : ", at " + place);
    }

    private static boolean within(ThreadGroup group, Thread thread) {
        ThreadGroup its = thread.getThreadGroup();
        return its != null && group.parentOf(its);
    }

    /** Returns whether a thread that exits is neither the program's own nor typed by the user. */
    private boolean foreign(Thread thread, Map<Thread, StackTraceElement[]> stacks) {
        return thread != ender
                && below(stacks.get(thread)).stream()
                        .noneMatch(frame -> frame.getClassName().startsWith(TYPED));
    }

    private static List<Thread> in(
            Map<Thread, StackTraceElement[]> stacks, String type, String method) {
        return stacks.entrySet().stream()
                .filter(each -> Arrays.stream(each.getValue()).anyMatch(f -> is(f, type, method)))
                .map(Map.Entry::getKey)
                .sorted(Comparator.comparing(Thread::getName))
                .toList();
    }

    private static boolean is(StackTraceElement frame, String type, String method) {
        String name = frame.getClassName();
        return (name.equals(type) || name.startsWith(type + "$"))
                && (method.isEmpty() || frame.getMethodName().equals(method));
    }

    /** Returns the frames that called for the exit, innermost first. */
    private static List<StackTraceElement> below(StackTraceElement @Nullable [] stack) {
        List<StackTraceElement> all = stack == null ? List.of() : List.of(stack);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (is(all.get(i), "java.lang.Runtime", "exit")) {
                int from = i + 1;
                boolean system = from < all.size() && is(all.get(from), "java.lang.System", "exit");
                return all.subList(system ? from + 1 : from, all.size());
            }
        }
        return List.of();
    }

    /** One run of code of a plugin. */
    private static final class Region<T> {

        private final String whose;
        private final CompletableFuture<T> answer = new CompletableFuture<>();
        private @Nullable Thread worker;
        private boolean interrupted;

        Region(String whose) {
            this.whose = whose;
        }

        void work(Code<T, ?> code) {
            start(Thread.currentThread());
            try {
                answer.complete(code.run());
            } catch (Throwable e) { // foreign code: the caller gets any exception
                answer.completeExceptionally(e);
            } finally {
                start(null);
                Thread.interrupted();
            }
        }

        private synchronized void start(@Nullable Thread thread) {
            worker = thread;
            if (thread != null && interrupted) {
                thread.interrupt();
            }
        }

        /** An interrupt may arrive before the code has started. */
        private synchronized void interrupt() {
            interrupted = true;
            if (worker != null) {
                worker.interrupt();
            }
        }

        synchronized boolean owns(Thread thread) {
            if (worker == null) {
                return false;
            }
            ThreadGroup group = worker.getThreadGroup();
            return worker == thread || (group != null && within(group, thread));
        }

        void refuse(String place) {
            answer.completeExceptionally(new ExitNotAllowed(sentence(whose, place)));
        }

        @SuppressWarnings("unchecked") // the code throws no checked exception but E
        <E extends Exception> T await() throws E {
            boolean again = false;
            try {
                while (true) {
                    try {
                        return answer.get();
                    } catch (InterruptedException e) {
                        again = true;
                        interrupt();
                    }
                }
            } catch (ExecutionException e) {
                throw (E) e.getCause();
            } finally {
                if (again) {
                    Thread.currentThread().interrupt();
                }
            }
        }
    }
}
