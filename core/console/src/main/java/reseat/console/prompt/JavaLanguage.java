package reseat.console.prompt;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.PersistentSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;
import reseat.script.Bench;
import reseat.script.host.JsEngine;
import reseat.script.host.OpenModules;
import reseat.text.ListText;

/** Java, run in this process by the shell of the JDK. */
final class JavaLanguage implements Language {

    private final Supplier<Bench> bench;
    private final Supplier<String> nextName;
    private final PrintStream out;
    private final LiveControl control = new LiveControl(Bench.class.getClassLoader());
    private final JavaRun run = new JavaRun();
    private final Set<String> started = new HashSet<>();
    private @Nullable JShell shell;
    private @Nullable JavaOffers offers;

    /** The state of the current run. */
    private static final class JavaRun {
        private volatile @Nullable ThreadGroup group;
        private volatile boolean stopping;
    }

    /**
     * Creates the language; {@link #warm} starts it.
     *
     * @param bench whose methods become functions
     * @param nextName supplies names for unnamed values
     * @param out gets the output of code
     */
    JavaLanguage(Supplier<Bench> bench, Supplier<String> nextName, PrintStream out) {
        this.bench = bench;
        this.nextName = nextName;
        this.out = out;
    }

    @Override
    public Tongue tongue() {
        return Tongue.JAVA;
    }

    @Override
    public void warm() throws LanguageMissing {
        if (ModuleLayer.boot().findModule("jdk.jshell").isEmpty()) {
            throw new LanguageMissing(
                    "This Java has no module jdk.jshell, so Java cannot be typed here.");
        }
        JShell made =
                JShell.builder()
                        .executionEngine(control, Map.of())
                        .compilerOptions(compilerOptions())
                        .tempVariableNameGenerator(nextName)
                        .in(new ByteArrayInputStream(new byte[0]))
                        .out(out)
                        .err(out)
                        .build();
        shell = made;
        offers = new JavaOffers(made);
        JavaPrelude.imports().forEach(line -> start(made, line));
        start(made, JavaPrelude.bench());
        new JavaValues(made, control).put(JavaPrelude.BENCH, bench.get());
        JavaPrelude.functions().forEach(line -> start(made, line));
        made.snippets().map(Snippet::id).forEach(started::add);
        offers.names(JavaPrelude.BENCH + ".", JavaPrelude.BENCH.length() + 1);
    }

    private static void start(JShell made, String line) {
        for (SnippetEvent event : made.eval(line)) {
            if (event.status() == Snippet.Status.REJECTED) {
                throw new IllegalStateException(
                        line + ": " + JavaTroubles.of(made, event.snippet(), 0));
            }
        }
    }

    private static String[] compilerOptions() {
        String path = JsEngine.pathWithout();
        return path.isEmpty()
                ? new String[] {"-classpath", System.getProperty("java.class.path", "")}
                : new String[] {"--module-path", path, "--add-modules", OpenModules.names()};
    }

    @Override
    public boolean isComplete(String text) {
        String rest = text;
        while (!rest.isBlank()) {
            CompletionInfo info = shell().sourceCodeAnalysis().analyzeCompletion(rest);
            SourceCodeAnalysis.Completeness found = info.completeness();
            if (found == SourceCodeAnalysis.Completeness.DEFINITELY_INCOMPLETE
                    || found == SourceCodeAnalysis.Completeness.CONSIDERED_INCOMPLETE) {
                return false;
            }
            if (!found.isComplete()) {
                return true;
            }
            rest = info.remaining();
        }
        return true;
    }

    @Override
    public Outcome run(String text) {
        run.group = Thread.currentThread().getThreadGroup();
        run.stopping = false;
        try {
            return runAll(text);
        } finally {
            run.group = null;
        }
    }

    private Outcome runAll(String text) {
        Outcome last = Outcome.nothing();
        List<String> notes = new ArrayList<>();
        String rest = text;
        while (!rest.isBlank()) {
            CompletionInfo info = shell().sourceCodeAnalysis().analyzeCompletion(rest);
            if (info.completeness() == SourceCodeAnalysis.Completeness.DEFINITELY_INCOMPLETE) {
                return Outcome.of(Outcome.Status.INCOMPLETE);
            }
            if (info.completeness() == SourceCodeAnalysis.Completeness.EMPTY) {
                break;
            }
            String source = info.source() == null ? rest : info.source();
            int from = text.length() - rest.length();
            for (SnippetEvent event : shell().eval(source)) {
                Outcome outcome = outcome(event, from);
                notes.addAll(outcome.notes());
                if (outcome.status() != Outcome.Status.OK) {
                    return outcome.noting(notes);
                }
                if (event.causeSnippet() == null) {
                    last = outcome;
                }
            }
            rest = info.source() == null ? "" : info.remaining();
        }
        return last.noting(notes);
    }

    private Outcome outcome(SnippetEvent event, int from) {
        Throwable thrown = control.takeThrown();
        Snippet snippet = event.snippet();
        if (run.stopping) {
            return Outcome.of(Outcome.Status.STOPPED);
        }
        if (event.status() == Snippet.Status.REJECTED) {
            return Outcome.failed(JavaTroubles.of(shell(), snippet, from));
        }
        if (event.exception() != null) {
            return Outcome.failed(
                    List.of(JavaTroubles.thrown(event.exception(), thrown, snippet, from)));
        }
        if (event.causeSnippet() != null) {
            return Outcome.nothing();
        }
        List<String> notes = unresolved(snippet);
        String name = nameOf(snippet);
        if (name.isEmpty() || !notes.isEmpty()) {
            return Outcome.nothing().noting(notes);
        }
        return snippet.subKind() == Snippet.SubKind.VAR_DECLARATION_WITH_INITIALIZER_SUBKIND
                ? Outcome.declared(live().get(name), name)
                : Outcome.value(live().get(name), name);
    }

    private List<String> unresolved(Snippet snippet) {
        Snippet.Status status = shell().status(snippet);
        if (status != Snippet.Status.RECOVERABLE_DEFINED
                && status != Snippet.Status.RECOVERABLE_NOT_DEFINED) {
            return List.of();
        }
        return List.of(
                "Defined, but it cannot be used before there is "
                        + ListText.and(
                                shell().unresolvedDependencies(
                                                (jdk.jshell.DeclarationSnippet) snippet)
                                        .toList())
                        + ".");
    }

    private static String nameOf(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return variable.subKind() == Snippet.SubKind.VAR_DECLARATION_SUBKIND
                    ? ""
                    : variable.name();
        }
        if (snippet instanceof ExpressionSnippet expression
                && (expression.subKind() == Snippet.SubKind.VAR_VALUE_SUBKIND
                        || expression.subKind() == Snippet.SubKind.ASSIGNMENT_SUBKIND)) {
            return expression.name();
        }
        return "";
    }

    @Override
    public void interrupt() {
        ThreadGroup group = run.group;
        if (group == null) {
            return;
        }
        run.stopping = true;
        // snippets run in thread groups below the session's; its thread only waits for them
        ThreadGroup[] below = new ThreadGroup[group.activeGroupCount() + 4];
        int count = group.enumerate(below);
        for (int i = 0; i < count; i++) {
            below[i].interrupt();
        }
    }

    @Override
    public void stop() {
        if (run.group != null) {
            run.stopping = true;
            shell().stop();
        }
    }

    @Override
    public List<Offer> offers(String text, int cursor) {
        return Objects.requireNonNull(offers).names(text, cursor);
    }

    @Override
    public Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        shell().variables()
                .filter(variable -> shell().status(variable) == Snippet.Status.VALID)
                .map(VarSnippet::name)
                .filter(name -> !name.equals(JavaPrelude.BENCH))
                .forEach(
                        name -> {
                            Object value = live().get(name);
                            if (value != null) {
                                values.put(name, value);
                            }
                        });
        return values;
    }

    @Override
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        shell().snippets()
                .filter(snippet -> shell().status(snippet).isActive())
                .filter(snippet -> !started.contains(snippet.id()))
                .forEach(
                        snippet -> {
                            if (snippet instanceof PersistentSnippet kept
                                    && snippet.kind() != Snippet.Kind.IMPORT) {
                                names.add(kept.name());
                            }
                        });
        return names;
    }

    @Override
    public void take(String name, Object value) {
        List<SnippetEvent> events = shell().eval(JavaTypes.of(value) + " " + name + ";");
        if (events.stream().allMatch(event -> event.status() != Snippet.Status.REJECTED)) {
            live().put(name, value);
        }
    }

    private JavaValues live() {
        return new JavaValues(shell(), control);
    }

    private JShell shell() {
        return Objects.requireNonNull(shell, "not warm yet");
    }

    @Override
    public void close() {
        if (shell != null) {
            shell.close();
        }
    }
}
