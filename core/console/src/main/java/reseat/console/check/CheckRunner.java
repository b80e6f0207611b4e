package reseat.console.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.CheckSource;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * Runs checks over many sources, with several threads. A check that fails is reported by name; only
 * its own findings are lost. Thread-safe.
 *
 * <p>Example:
 *
 * <pre>{@code
 * CheckReport report =
 *         new CheckRunner(plugins.checks(), 2, CheckWatch.NONE)
 *                 .run(List.of(DeviceSource.of(Path.of("slate.yaml"), List.of())));
 * report.found().forEach(found -> System.out.println(found.finding().message()));
 * }</pre>
 */
public final class CheckRunner {

    /** Like the order of findings, but distinguishes findings that differ in anything. */
    private static final Comparator<Finding> EVERYTHING =
            Comparator.<Finding>naturalOrder()
                    .thenComparing(Finding::title)
                    .thenComparing(Finding::remedy)
                    .thenComparing(finding -> String.join("\n", finding.evidence()));

    private final Map<String, Check> checks = new LinkedHashMap<>();
    private final List<CheckInfo> infos = new ArrayList<>();
    private final List<CheckFailure> unusable = new ArrayList<>();
    private final int threads;
    private final CheckWatch watch;

    /**
     * Creates a runner.
     *
     * @param checks the checks, in the order in which their failures are reported; a check that has
     *     no id, or the id of another check, is reported as unusable
     * @param threads number of threads to use, at least 1
     * @param watch follows each run
     */
    public CheckRunner(List<Check> checks, int threads, CheckWatch watch) {
        if (threads < 1) {
            throw new IllegalArgumentException("at least one thread is required: " + threads);
        }
        this.threads = threads;
        this.watch = watch;
        for (Check check : checks) {
            try {
                CheckInfo info = Objects.requireNonNull(check.info(), "info() returned null");
                if (this.checks.putIfAbsent(info.id(), check) == null) {
                    infos.add(info);
                } else {
                    unusable.add(
                            new CheckFailure(
                                    info.id(),
                                    "",
                                    "",
                                    "Another check has the same id; "
                                            + check.getClass().getName()
                                            + " is left out."));
                }
            } catch (Throwable e) { // third-party code: whatever it throws is reported by name
                unusable.add(
                        new CheckFailure(check.getClass().getName(), "", "", Strangers.told(e)));
            }
        }
    }

    /**
     * Runs the checks. A single source is shared among the threads as well. Ends early where the
     * watch requests it or the calling thread is interrupted; its interrupt status is kept; checks
     * running at that moment are interrupted, and one that ignores the interrupt is abandoned after
     * three seconds.
     */
    public CheckReport run(List<? extends CheckSource> sources) {
        AtomicReferenceArray<@Nullable Checked> done = new AtomicReferenceArray<>(sources.size());
        AtomicInteger count = new AtomicInteger();
        Set<String> asked = ConcurrentHashMap.newKeySet();
        Object oneAtATime = new Object();
        int wide = Math.max(1, Math.min(threads, sources.size()));
        Crew crew = new Crew(wide, watch::cancelled);
        boolean through =
                crew.each(
                        sources.size(),
                        i -> {
                            Checked checked = check(sources.get(i), crew, threads / wide, asked);
                            if (checked != null) {
                                done.set(i, checked);
                                synchronized (oneAtATime) {
                                    watch.progress(
                                            count.incrementAndGet(),
                                            sources.size(),
                                            checked.source());
                                }
                            }
                        });
        List<Checked> all = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            Checked checked = done.get(i);
            if (checked != null) {
                all.add(checked);
            }
        }
        boolean nothing = all.stream().allMatch(each -> each.device().isEmpty());
        Map<Boolean, List<CheckInfo>> run =
                infos.stream()
                        .collect(
                                Collectors.partitioningBy(
                                        info -> nothing || asked.contains(info.id())));
        return new CheckReport(
                Objects.requireNonNull(run.get(true)),
                Objects.requireNonNull(run.get(false)),
                all,
                unusable,
                !through);
    }

    /** Returns null if it was stopped before the end. */
    private @Nullable Checked check(CheckSource source, Crew outer, int hands, Set<String> asked) {
        CheckSource.Content content = read(source);
        List<CheckInput> inputs = content.inputs();
        int count = inputs.size() * infos.size();
        Strangers.Answer[] answers = new Strangers.Answer[count];
        Crew crew = new Crew(hands, outer::stopped);
        IntConsumer task =
                i -> {
                    CheckInfo info = infos.get(i % infos.size());
                    answers[i] =
                            Strangers.ask(
                                    Objects.requireNonNull(checks.get(info.id())),
                                    info,
                                    inputs.get(i / infos.size()));
                };
        boolean through = hands > 1 ? crew.each(count, task) : crew.eachHere(count, task);
        for (int i = 0; through && i < count; i++) {
            if (answers[i].asked()) {
                asked.add(infos.get(i % infos.size()).id());
            }
        }
        return through && !outer.stopped() ? gather(source, content, answers) : null;
    }

    private static CheckSource.Content read(CheckSource source) {
        try {
            return source.read();
        } catch (RuntimeException | StackOverflowError e) {
            return new CheckSource.Content(
                    List.of(),
                    List.of(
                            Problem.error(
                                    new Origin(source.name(), 0, 0),
                                    "it cannot be read: " + Strangers.told(e))));
        }
    }

    private Checked gather(
            CheckSource source, CheckSource.Content content, Strangers.Answer[] answers) {
        List<CheckInput> inputs = content.inputs();
        List<String> variants =
                inputs.stream().map(i -> i.device().variant().orElse(Found.BASE)).toList();
        Map<Finding, List<String>> found = new TreeMap<>(EVERYTHING);
        List<CheckFailure> failures = new ArrayList<>();
        for (int check = 0; check < infos.size(); check++) {
            Set<String> told = new HashSet<>();
            for (int i = 0; i < inputs.size(); i++) {
                Strangers.Answer answer = answers[i * infos.size() + check];
                for (Finding finding : answer.findings()) {
                    List<String> in = found.computeIfAbsent(finding, f -> new ArrayList<>());
                    if (!in.contains(variants.get(i))) {
                        in.add(variants.get(i));
                    }
                }
                // the same in every variant is one failure
                for (String what : answer.failures()) {
                    if (told.add(what)) {
                        failures.add(
                                new CheckFailure(
                                        infos.get(check).id(),
                                        source.name(),
                                        inputs.get(i).device().toString(),
                                        what));
                    }
                }
            }
        }
        String device = inputs.isEmpty() ? "" : inputs.get(0).device().id();
        List<Found> all = new ArrayList<>();
        found.forEach(
                (finding, in) ->
                        all.add(new Found(device, finding, in, in.size() == inputs.size())));
        return new Checked(source.name(), device, variants, all, failures, content.problems());
    }
}
