package reseat.console.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import reseat.console.load.Guard.ExitNotAllowed;

/** Code of plugins under guard. {@code GuardIT} sees it at work in the real program. */
class GuardTest {

    private final List<Integer> halts = new ArrayList<>();
    private final StringWriter err = new StringWriter();
    private final Guard guard = new Guard();

    private void arm() {
        guard.arm(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                code -> fail("it exited with " + code),
                halts::add);
    }

    private static StackTraceElement frame(String type, String method) {
        return new StackTraceElement(type, method, type + ".java", 7);
    }

    private static StackTraceElement[] exitFrom(String type) {
        return new StackTraceElement[] {
            frame("java.lang.Shutdown", "exit"),
            frame("java.lang.Runtime", "exit"),
            frame("java.lang.System", "exit"),
            frame(type, "run")
        };
    }

    @Test
    void returnsWhatTheCodeReturns() {
        arm();

        assertEquals(7, guard.<Integer, RuntimeException>run("the plugin p", () -> 7));
    }

    @Test
    void throwsTheVeryThingThatTheCodeThrows() {
        arm();
        IOException torn = new IOException("torn");

        assertSame(
                torn,
                assertThrows(
                        IOException.class,
                        () ->
                                guard.<Integer, IOException>run(
                                        "the plugin p",
                                        () -> {
                                            throw torn;
                                        })));
    }

    @Test
    void runsTheCodeInTheCallersThreadUntilItIsArmed() {
        assertSame(
                Thread.currentThread(),
                guard.<Thread, RuntimeException>run("p", Thread::currentThread));
    }

    @Test
    void anInterruptReachesTheCodeAndStaysWithTheCaller() {
        arm();
        Thread.currentThread().interrupt();

        String answer =
                guard.<String, RuntimeException>run(
                        "p",
                        () -> {
                            try {
                                new CountDownLatch(1).await(1, TimeUnit.MINUTES);
                                return "slept";
                            } catch (InterruptedException e) {
                                return "woken";
                            }
                        });

        assertTrue(Thread.interrupted());
        assertEquals("woken", answer);
    }

    @Test
    void whoCallsForTheEndIsRefusedAndNobodyElse() throws Exception {
        arm();
        CompletableFuture<Thread> sly = new CompletableFuture<>();
        CountDownLatch end = new CountDownLatch(1);
        CompletableFuture<String> honest =
                CompletableFuture.supplyAsync(() -> await("the plugin honest", end, null));
        CompletableFuture<String> refused =
                CompletableFuture.supplyAsync(() -> await("the plugin sly", end, sly));

        boolean may = guard.mayEnd(Map.of(sly.get(), exitFrom("sly.It")));

        assertFalse(may);
        ExecutionException thrown = assertThrows(ExecutionException.class, refused::get);
        assertEquals(
                "the plugin sly tried to end the program, at sly.It.run(sly.It.java:7)",
                assertThrows(
                                ExitNotAllowed.class,
                                () -> {
                                    throw thrown.getCause();
                                })
                        .getMessage());
        end.countDown();
        assertEquals("done", honest.get());
        assertEquals(List.of(), halts);
    }

    private String await(String whose, CountDownLatch end, CompletableFuture<Thread> here) {
        return guard.<String, RuntimeException>run(
                whose,
                () -> {
                    if (here != null) {
                        here.complete(Thread.currentThread());
                    }
                    try {
                        end.await();
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                    return "done";
                });
    }

    @Test
    void aThreadThatNobodyKnowsEndsTheProgramWithOurCodeAndIsNamed() {
        arm();

        guard.mayEnd(Map.of(new Thread("theirs"), exitFrom("sly.It")));

        assertEquals(List.of(3), halts);
        assertEquals(
                "reseat: code of a plugin tried to end the program, at sly.It.run(sly.It.java:7).",
                err.toString().strip());
    }

    @Test
    void anEndThatCannotBeSeenInAnyStackIsNotTakenForOurs() {
        arm();

        guard.mayEnd(Map.of(new Thread("other"), new StackTraceElement[0]));

        assertEquals(List.of(3), halts);
    }

    @Test
    void whatAPersonTypedAtTheConsoleMayEndIt() {
        arm();

        assertTrue(guard.mayEnd(Map.of(new Thread("typed"), exitFrom("REPL.$JShell$12"))));
        assertEquals(List.of(), halts);
    }

    @Test
    void aSignalMayEndIt() {
        arm();
        StackTraceElement[] signal = {
            frame("java.lang.Shutdown", "exit"), frame("java.lang.Terminator$1", "handle")
        };

        assertTrue(guard.mayEnd(Map.of(new Thread("SIGINT handler"), signal)));
        assertEquals(List.of(), halts);
    }

    @Test
    void aSignalEndsItWithItsOwnCodeWhereTheExitOfAPluginCameJustBefore() {
        arm();
        StackTraceElement[] signal = {
            frame("java.lang.Shutdown", "exit"), frame("java.lang.Terminator$1", "handle")
        };

        guard.mayEnd(
                Map.of(
                        new Thread("theirs"),
                        exitFrom("sly.It"),
                        new Thread("SIGTERM handler"),
                        signal));

        assertEquals(List.of(143), halts);
    }

    @Test
    void theEndOfTheLastThreadMayEndIt() {
        arm();
        StackTraceElement[] last = {frame("java.lang.Shutdown", "shutdown")};

        assertTrue(guard.mayEnd(Map.of(new Thread("DestroyJavaVM"), last)));
        assertEquals(List.of(), halts);
    }
}
