package reseat.console.prompt;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import reseat.console.prompt.Language.LanguageMissing;

/**
 * One session: its inputs and values, in all languages. Code runs on one thread of the session, one
 * text after the other. Safe for use by several threads.
 */
final class Session implements AutoCloseable {

    private static final long GENTLE_MS = 400;

    private final Map<Tongue, Language> languages = new EnumMap<>(Tongue.class);
    private final Map<Tongue, CompletableFuture<Void>> warm = new EnumMap<>(Tongue.class);
    private final Map<Tongue, Map<String, Object>> handed = new EnumMap<>(Tongue.class);
    private final Map<Tongue, Set<String>> named = new ConcurrentHashMap<>();
    private final List<Evaluation> history = new ArrayList<>();
    private final ExecutorService worker;
    private final ExecutorService helpers;
    private volatile @Nullable Language running;
    private final AtomicLong runs = new AtomicLong();
    private volatile boolean stopAsked;
    private int results;

    /**
     * Starts a session and warms its languages, one after the other, the first one first.
     *
     * @param makers factories of the languages, given the supplier of names for unnamed values
     */
    Session(List<Function<Supplier<String>, Language>> makers) {
        ThreadGroup group = new ThreadGroup("reseat-session");
        worker = Executors.newSingleThreadExecutor(task -> daemon(group, task, "reseat-session"));
        helpers = Executors.newCachedThreadPool(task -> daemon(null, task, "reseat-session-help"));
        CompletableFuture<Void> before = CompletableFuture.completedFuture(null);
        for (Function<Supplier<String>, Language> maker : makers) {
            Language language = maker.apply(this::nextName);
            languages.put(language.tongue(), language);
            handed.put(language.tongue(), new LinkedHashMap<>());
            before =
                    before.handle((done, failure) -> null)
                            .thenRunAsync(() -> warmUp(language), helpers);
            warm.put(language.tongue(), before);
        }
    }

    private static Thread daemon(@Nullable ThreadGroup group, Runnable task, String name) {
        Thread thread = new Thread(group, task, name);
        thread.setDaemon(true);
        return thread;
    }

    private static void warmUp(Language language) {
        try {
            language.warm();
        } catch (LanguageMissing e) {
            throw new CompletionException(e);
        }
    }

    private synchronized String nextName() {
        results++;
        return "r" + results;
    }

    /** Waits until a language is ready. */
    void awaitWarm(Tongue tongue) throws LanguageMissing {
        try {
            Objects.requireNonNull(warm.get(tongue), "no such language here").join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof LanguageMissing missing) {
                throw missing;
            }
            throw e;
        }
    }

    /**
     * Checks whether a language is available, without waiting for it.
     *
     * @throws LanguageMissing if it is known to be missing
     */
    void check(Tongue tongue) throws LanguageMissing {
        CompletableFuture<Void> ready = warm.get(tongue);
        if (ready == null) {
            throw new LanguageMissing(tongue.title() + " is not part of this session.");
        }
        if (ready.isDone()) {
            awaitWarm(tongue);
        }
    }

    /** Returns whether a name is defined in this session. */
    boolean isVariable(String name) {
        return named.values().stream().anyMatch(names -> names.contains(name));
    }

    boolean isWarm(Tongue tongue) {
        CompletableFuture<Void> ready = warm.get(tongue);
        return ready != null && ready.isDone() && !ready.isCompletedExceptionally();
    }

    /** Runs a text; the future never fails. */
    CompletableFuture<Evaluation> evaluate(Tongue tongue, String text) {
        return CompletableFuture.supplyAsync(() -> run(tongue, text), worker);
    }

    private Evaluation run(Tongue tongue, String text) {
        stopAsked = false;
        runs.incrementAndGet();
        long start = System.nanoTime();
        Outcome outcome;
        try {
            awaitWarm(tongue);
            Language language = language(tongue);
            handOver(language);
            start = System.nanoTime();
            running = language;
            outcome = stopAsked ? Outcome.of(Outcome.Status.STOPPED) : language.run(text);
            named.put(tongue, language.names());
        } catch (LanguageMissing e) {
            outcome = Outcome.failed(List.of(Trouble.somewhere(String.valueOf(e.getMessage()))));
        } catch (RuntimeException | LinkageError | StackOverflowError | OutOfMemoryError e) {
            outcome = Outcome.failed(List.of(Trouble.somewhere(Thrown.message(e))));
        } finally {
            running = null;
            runs.incrementAndGet();
            Thread.interrupted();
        }
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        synchronized (this) {
            Evaluation done = new Evaluation(history.size() + 1, tongue, text, outcome, took);
            history.add(done);
            return done;
        }
    }

    /** Updates a language with the variables that others have set since it last ran. */
    private void handOver(Language to) {
        Map<String, Object> known = Objects.requireNonNull(handed.get(to.tongue()));
        for (Language from : languages.values()) {
            if (from == to || !isWarm(from.tongue())) {
                continue;
            }
            Map<String, Object> theirs = Objects.requireNonNull(handed.get(from.tongue()));
            from.values()
                    .forEach(
                            (name, value) -> {
                                if (!same(theirs.put(name, value), value)
                                        && !same(known.get(name), value)) {
                                    known.put(name, value);
                                    to.take(name, value);
                                }
                            });
        }
    }

    private static boolean same(@Nullable Object a, Object b) {
        boolean plain = b instanceof Number || b instanceof String || b instanceof Boolean;
        return plain ? b.equals(a) : a == b;
    }

    private Language language(Tongue tongue) {
        return Objects.requireNonNull(languages.get(tongue), "no such language here");
    }

    /**
     * Queries a language on the session's thread, so that it is never used concurrently.
     *
     * @return the answer; the fallback if there is none in time
     */
    <T> T ask(Tongue tongue, Duration limit, T otherwise, Function<Language, T> question) {
        if (!isWarm(tongue)) {
            return otherwise;
        }
        CompletableFuture<T> answer =
                CompletableFuture.supplyAsync(
                        () -> {
                            handOver(language(tongue));
                            return question.apply(language(tongue));
                        },
                        worker);
        return orOtherwise(() -> answer.get(limit.toMillis(), TimeUnit.MILLISECONDS), otherwise);
    }

    /** Returns whether a text is complete; true if there is no answer in time. */
    boolean isComplete(Tongue tongue, String text) {
        if (!isWarm(tongue)) {
            return !JsText.isOpen(text); // a guess that is almost always right
        }
        return ask(tongue, Duration.ofSeconds(3), true, language -> language.isComplete(text));
    }

    private static <T> T orOtherwise(Callable<T> question, T otherwise) {
        try {
            return question.call();
        } catch (TimeoutException | ExecutionException e) {
            return otherwise;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return otherwise;
        } catch (Exception e) {
            return otherwise;
        }
    }

    /** Interrupts running code; returns at once. */
    void stop() {
        stopAsked = true;
        Language language = running;
        if (language == null) {
            return;
        }
        long mine = runs.get();
        helpers.execute(
                () -> {
                    if (runs.get() != mine) {
                        return; // it has finished, and other code runs now
                    }
                    language.interrupt();
                    try {
                        Thread.sleep(GENTLE_MS);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                    if (runs.get() == mine && running == language) {
                        language.stop();
                    }
                });
    }

    /** Returns the inputs so far with their outcomes. */
    synchronized List<Evaluation> history() {
        return List.copyOf(history);
    }

    /** Returns all variables by name, as the languages last saw them. */
    Map<String, Object> values() {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Tongue tongue : languages.keySet()) {
            all.putAll(ask(tongue, Duration.ofSeconds(2), Map.of(), Language::values));
        }
        return all;
    }

    /** Ends the session; code still running is abandoned. */
    @Override
    public void close() {
        worker.shutdownNow();
        // not interrupted: a compiler that is warming up would report unreadable files
        helpers.shutdown();
        for (Language language : languages.values()) {
            if (running == null && isWarm(language.tongue())) {
                language.close();
            }
        }
    }
}
