package reseat.console.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.CheckSource;
import reseat.model.Device;

@Timeout(60)
class CheckRunnerTest {

    private static final Check GOOD = Toys.everyJoint("good");

    @Test
    void tellsFindingsSourceBySource() {
        CheckReport report =
                run(
                        List.of(GOOD),
                        Toys.source("b.yaml", Toys.device("x", "y")),
                        Toys.source("a.yaml", Toys.device("z")));

        assertEquals(
                List.of("b.yaml", "a.yaml"),
                report.checked().stream().map(Checked::source).toList());
        assertEquals(
                List.of("/joints/x", "/joints/y", "/joints/z"),
                report.found().map(f -> f.finding().subject()).toList());
        assertTrue(report.sound());
        assertFalse(report.cancelled());
    }

    @Test
    void tellsAFindingOfSeveralVariantsOnce() {
        Device base = Toys.device("x", "y");
        Device lte = Toys.variant("lte", "x", "z");
        Checked checked = run(List.of(GOOD), Toys.source("d.yaml", base, lte)).checked().get(0);

        assertEquals(List.of("base", "lte"), checked.variants());
        Map<String, List<String>> in =
                checked.found().stream()
                        .collect(Collectors.toMap(f -> f.finding().subject(), Found::variants));
        assertEquals(
                Map.of(
                        "/joints/x", List.of("base", "lte"),
                        "/joints/y", List.of("base"),
                        "/joints/z", List.of("lte")),
                in);
        assertTrue(checked.found().get(0).everywhere());
        assertFalse(checked.found().get(1).everywhere());
    }

    @Test
    void aCheckThatThrowsCostsItsOwnFindingsAlone() {
        Check bad =
                Toys.check(
                        Toys.info("bad"),
                        input -> {
                            throw new IllegalStateException("no such seat");
                        });
        CheckReport report = run(List.of(bad, GOOD), Toys.source("d.yaml", Toys.device("x")));

        assertEquals(
                List.of(
                        "d.yaml: the check bad failed on bench: It threw IllegalStateException: no such seat."),
                report.failures().map(CheckFailure::toString).toList());
        assertEquals(1, report.found().count());
        assertTrue(report.sound(), "the file is not to blame");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"null", "hole", "other", "pointer", "overflow", "assert", "link", "lazy"})
    void nonsenseIsToldByName(String what) {
        Check bad = Toys.check(Toys.info("bad"), input -> nonsense(what, input));
        CheckReport report = run(List.of(GOOD, bad), Toys.source("d.yaml", Toys.device("x")));

        List<CheckFailure> failures = report.failures().toList();
        assertEquals(1, failures.size(), failures.toString());
        assertEquals("bad", failures.get(0).check());
        assertEquals(List.of("good"), report.found().map(f -> f.finding().check()).toList());
    }

    private static List<Finding> nonsense(String what, CheckInput input) {
        Finding good = input.finding("/joints/x").says("It is there.", "Leave it.");
        return switch (what) {
            case "null" -> null;
            case "hole" -> Arrays.asList((Finding) null);
            case "other" ->
                    List.of(
                            input.forCheck(Toys.info("good"))
                                    .finding("/joints/x")
                                    .says("Not mine.", "Do."));
            case "pointer" -> List.of(input.finding("joints/x").says("Where?", "Look."));
            case "overflow" -> nonsense(what, input);
            case "assert" -> throw new AssertionError("never");
            case "link" -> throw new NoClassDefFoundError("org/old/Thing");
            default ->
                    new java.util.AbstractList<>() {
                        @Override
                        public Finding get(int index) {
                            throw new UnsupportedOperationException(good.check());
                        }

                        @Override
                        public int size() {
                            return 1;
                        }
                    };
        };
    }

    @Test
    void goodFindingsOfAHalfBadCheckAreKept() {
        Check half =
                Toys.check(
                        Toys.info("half"),
                        input ->
                                Arrays.asList(
                                        null, input.finding("/joints/x").says("Here.", "Do.")));
        CheckReport report = run(List.of(half), Toys.source("d.yaml", Toys.device("x")));

        assertEquals(1, report.failures().count());
        assertEquals(1, report.found().count());
    }

    @Test
    void findingsWithoutEndAreCutShort() {
        Check endless =
                Toys.check(
                        Toys.info("endless"),
                        input ->
                                Collections.nCopies(
                                        1_000_000,
                                        input.finding("/joints/x").says("Again.", "Do.")));
        CheckReport report = run(List.of(endless), Toys.source("d.yaml", Toys.device("x")));

        assertEquals(
                "It told more than 10000 findings; the rest is left out.",
                report.failures().findFirst().orElseThrow().what());
    }

    @Test
    void aCheckWithoutNameIsUnusable() {
        Check nameless = Toys.check(null, input -> List.of());
        CheckReport report = run(List.of(nameless, GOOD), Toys.source("d.yaml", Toys.device("x")));

        assertEquals(1, report.unusable().size());
        assertTrue(report.unusable().get(0).check().startsWith("reseat.console.check.Toys"));
        assertEquals(1, report.found().count());
    }

    @Test
    void ofTwoChecksWithOneIdTheFirstCounts() {
        CheckReport report =
                run(
                        List.of(GOOD, Toys.check(Toys.info("good"), input -> List.of())),
                        Toys.source("d.yaml", Toys.device("x")));

        assertEquals("good", report.unusable().get(0).check());
        assertEquals(1, report.found().count());
    }

    @Test
    void oneFailureInAllVariantsIsToldOnce() {
        Check bad =
                Toys.check(
                        Toys.info("bad"),
                        input -> {
                            throw new IllegalStateException("always");
                        });
        CheckReport report =
                run(
                        List.of(bad),
                        Toys.source("d.yaml", Toys.device("x"), Toys.variant("lte", "x")));

        assertEquals(1, report.failures().count());
    }

    @Test
    void leavesOutChecksThatLackWhatTheyNeed() {
        Check needy =
                Toys.check(
                        Toys.info("needy", CheckInfo.Need.STOCK),
                        input -> {
                            throw new AssertionError("it must not be asked");
                        });
        CheckReport report = run(List.of(needy, GOOD), Toys.source("d.yaml", Toys.device("x")));

        assertEquals(List.of("needy"), report.leftOut().stream().map(CheckInfo::id).toList());
        assertEquals(List.of("good"), report.checks().stream().map(CheckInfo::id).toList());
        assertEquals(0, report.failures().count());
    }

    @Test
    void aSourceThatCannotBeReadDoesNotKeepOthersFromIt() {
        CheckReport report =
                run(
                        List.of(GOOD),
                        Toys.broken("torn.yaml"),
                        Toys.source(
                                "worse.yaml",
                                () -> {
                                    throw new IllegalStateException("reader fell over");
                                }),
                        Toys.source("d.yaml", Toys.device("x")));

        assertEquals(
                List.of(false, false, true),
                report.checked().stream().map(Checked::sound).toList());
        assertFalse(report.sound());
        assertEquals(1, report.found().count());
    }

    @Test
    void anErrorOfJavaItselfEndsTheRun() {
        Check bad =
                Toys.check(
                        Toys.info("bad"),
                        input -> {
                            throw new OutOfMemoryError("for a test");
                        });
        assertThrows(
                OutOfMemoryError.class,
                () -> run(List.of(bad), Toys.source("d.yaml", Toys.device("x"))));
    }

    @Test
    void usesAllThreadsForOneSource() {
        CyclicBarrier both = new CyclicBarrier(2);
        Check a = Toys.check(Toys.info("a"), input -> meet(both));
        Check b = Toys.check(Toys.info("b"), input -> meet(both));
        CheckReport report =
                new CheckRunner(List.of(a, b), 2, CheckWatch.NONE)
                        .run(List.of(Toys.source("d.yaml", Toys.device("x"))));

        assertEquals(0, report.failures().count(), report.unusable().toString());
    }

    @Test
    void usesAllThreadsForManySources() {
        CyclicBarrier both = new CyclicBarrier(2);
        Check a = Toys.check(Toys.info("a"), input -> meet(both));
        CheckReport report =
                new CheckRunner(List.of(a), 2, CheckWatch.NONE)
                        .run(
                                List.of(
                                        Toys.source("d.yaml", Toys.device("x")),
                                        Toys.source("e.yaml", Toys.device("x"))));

        assertEquals(0, report.failures().count());
    }

    private static List<Finding> meet(CyclicBarrier barrier) {
        try {
            barrier.await(20, TimeUnit.SECONDS);
            return List.of();
        } catch (Exception e) {
            throw new IllegalStateException("they never met", e);
        }
    }

    @Test
    void tellsProgressOneAtATime() {
        List<Integer> told = new ArrayList<>();
        AtomicInteger inside = new AtomicInteger();
        AtomicBoolean twice = new AtomicBoolean();
        CheckWatch watch =
                new CheckWatch() {
                    @Override
                    public void progress(int done, int of, String name) {
                        twice.compareAndSet(false, inside.incrementAndGet() > 1);
                        assertEquals(30, of);
                        told.add(done);
                        inside.decrementAndGet();
                    }
                };
        new CheckRunner(List.of(GOOD), 4, watch).run(many(30));

        assertFalse(twice.get());
        assertEquals(IntStream.rangeClosed(1, 30).boxed().toList(), told);
    }

    @Test
    void endsWhereItIsCancelledAndKeepsWhatIsDone() {
        AtomicBoolean stop = new AtomicBoolean();
        AtomicInteger run = new AtomicInteger();
        CountDownLatch never = new CountDownLatch(1);
        Check slow =
                Toys.check(
                        Toys.info("slow"),
                        input -> {
                            if (run.incrementAndGet() == 5) {
                                stop.set(true);
                                try {
                                    never.await();
                                } catch (InterruptedException e) {
                                    throw new IllegalStateException(e);
                                }
                            }
                            return List.of();
                        });
        CheckWatch watch =
                new CheckWatch() {
                    @Override
                    public boolean cancelled() {
                        return stop.get();
                    }
                };
        CheckReport report = new CheckRunner(List.of(slow), 1, watch).run(many(30));

        assertTrue(report.cancelled());
        assertEquals(4, report.checked().size());
        assertEquals(0, report.failures().count(), "being interrupted is no failure");
    }

    @Test
    void anInterruptEndsARunAndStays() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        Check slow =
                Toys.check(
                        Toys.info("slow"),
                        input -> {
                            begun.countDown();
                            try {
                                Thread.sleep(60_000);
                            } catch (InterruptedException e) {
                                Thread.currentThread().interrupt();
                            }
                            return List.of();
                        });
        Map<String, Object> seen = new ConcurrentHashMap<>();
        Thread runner =
                new Thread(
                        () -> {
                            seen.put(
                                    "report",
                                    new CheckRunner(List.of(slow), 2, CheckWatch.NONE)
                                            .run(many(3)));
                            seen.put("flag", Thread.currentThread().isInterrupted());
                        });
        runner.start();
        begun.await();
        runner.interrupt();
        runner.join();

        assertTrue(((CheckReport) seen.get("report")).cancelled());
        assertEquals(true, seen.get("flag"));
    }

    @Test
    void doesNotWaitForEverForACheckThatDoesNotListen() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        AtomicBoolean end = new AtomicBoolean();
        Check deaf =
                Toys.check(
                        Toys.info("deaf"),
                        input -> {
                            stop.set(true);
                            while (!end.get()) {
                                Thread.onSpinWait();
                            }
                            return List.of();
                        });
        CheckWatch watch =
                new CheckWatch() {
                    @Override
                    public boolean cancelled() {
                        return stop.get();
                    }
                };
        CheckReport report = new CheckRunner(List.of(deaf), 1, watch).run(many(2));
        end.set(true);

        assertTrue(report.cancelled());
        assertEquals(List.of(), report.checked());
    }

    @Test
    void aCheckThatInterruptsItsThreadDoesNotStopTheRun() {
        Check odd =
                Toys.check(
                        Toys.info("odd"),
                        input -> {
                            Thread.currentThread().interrupt();
                            return List.of();
                        });
        CheckReport report = new CheckRunner(List.of(odd, GOOD), 2, CheckWatch.NONE).run(many(10));

        assertFalse(report.cancelled());
        assertEquals(10, report.checked().size());
    }

    @Test
    void nothingToCheckIsNoTrouble() {
        CheckReport report = run(List.of(GOOD));

        assertEquals(List.of(), report.checked());
        assertFalse(report.cancelled());
        assertNull(report.found().findFirst().orElse(null));
    }

    private static List<CheckSource> many(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> Toys.source("d" + i + ".yaml", Toys.device("x" + i)))
                .toList();
    }

    private static CheckReport run(List<Check> checks, CheckSource... sources) {
        return new CheckRunner(checks, 2, CheckWatch.NONE).run(List.of(sources));
    }
}
