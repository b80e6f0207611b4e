package reseat.console.prompt;

import java.io.OutputStream;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;
import reseat.script.Bench;
import reseat.script.host.JsContexts;

/**
 * JavaScript, in the same sandbox as shared scripts: what works here works there. Declared names
 * may be redeclared.
 */
final class JsLanguage implements Language {

    private static final Pattern NAME = Pattern.compile("\\s*([A-Za-z_$][\\w$]*)\\s*;?\\s*");
    private static final Pattern ASSIGNED =
            Pattern.compile("\\s*([A-Za-z_$][\\w$]*)\\s*=(?![=>]).*", Pattern.DOTALL);
    private static final Pattern DECLARED =
            Pattern.compile("\\s*(?:let|const|var)\\s+([A-Za-z_$][\\w$]*)\\s*=");
    private static final Duration GENTLE = Duration.ofMillis(300);
    private static final Duration FIRM = Duration.ofSeconds(1);

    /** Warm-up code that runs before the first input. */
    private static final String WARM =
            """
            (() => {
              const rows = checks().filter(c => c.id().length > 3).map(c => ({ id: c.id(), n: c.tags().length }));
              let n = 0;
              for (const row of rows) { n += `${row.id} ${row.n}`.length; }
              return [rows, JSON.stringify(rows), n];
            })()
            """;

    private final Supplier<Bench> bench;
    private final Supplier<String> nextName;
    private final OutputStream out;
    private final Map<String, Value> seen = new LinkedHashMap<>();
    private final Map<String, Object> taken = new LinkedHashMap<>();
    private Set<String> ours = Set.of();
    private @Nullable JsContexts contexts;
    private @Nullable Context context;
    private volatile @Nullable Thread runner;

    /**
     * Creates the language; {@link #warm} starts it.
     *
     * @param bench whose methods become functions
     * @param nextName supplies names for unnamed values
     * @param out gets the output of code
     */
    JsLanguage(Supplier<Bench> bench, Supplier<String> nextName, OutputStream out) {
        this.bench = bench;
        this.nextName = nextName;
        this.out = out;
    }

    @Override
    public Tongue tongue() {
        return Tongue.JS;
    }

    @Override
    public void warm() {
        JsContexts made = JsContexts.of(out, out, Bench.class);
        Context opened = made.open();
        JsBench.bind(bench.get(), opened.getBindings(JsContexts.JS));
        ours = new LinkedHashSet<>(opened.getBindings(JsContexts.JS).getMemberKeys());
        JsValues.of(opened.eval(JsContexts.JS, WARM));
        contexts = made;
        context = opened;
        // the code paths of the first input
        isComplete("1 + 1");
        JsValues.of(opened.eval(source("checks().length")));
        names();
        offers("checks()[0].", "checks()[0].".length());
    }

    @Override
    public boolean isComplete(String text) {
        try {
            context().parse(source(text));
            return true;
        } catch (PolyglotException e) {
            return !e.isIncompleteSource();
        }
    }

    private static Source source(String text) {
        String code = text.strip();
        // users mean an object by braces around a line; the language parses a block
        boolean object = code.startsWith("{") && code.endsWith("}");
        return Source.newBuilder(
                        JsContexts.JS,
                        object ? "(" + text + ")" : JsText.redeclaring(text),
                        "typed")
                .buildLiteral();
    }

    @Override
    public Outcome run(String text) {
        runner = Thread.currentThread();
        Source source = source(text);
        try {
            Value value;
            try {
                value = context().eval(source);
            } catch (PolyglotException e) {
                if (!e.isSyntaxError() || !source.getCharacters().toString().startsWith("(")) {
                    throw e;
                }
                source =
                        Source.newBuilder(JsContexts.JS, JsText.redeclaring(text), "typed")
                                .buildLiteral();
                value = context().eval(source);
            }
            return outcome(text, value);
        } catch (PolyglotException e) {
            if (e.isInterrupted() || e.isCancelled()) {
                return Outcome.of(Outcome.Status.STOPPED);
            }
            if (e.isIncompleteSource()) {
                return Outcome.of(Outcome.Status.INCOMPLETE);
            }
            return Outcome.failed(List.of(JsTroubles.of(e, source)));
        } finally {
            runner = null;
        }
    }

    private Outcome outcome(String text, Value value) {
        if (value.isNull()) {
            return value.toString().equals("undefined") ? declared(text) : Outcome.value(null, "");
        }
        Matcher name = NAME.matcher(text);
        if (name.matches() && globals().hasMember(name.group(1))) {
            return Outcome.value(JsValues.of(value), name.group(1));
        }
        Matcher assigned = ASSIGNED.matcher(text);
        if (assigned.matches() && globals().hasMember(assigned.group(1))) {
            return Outcome.value(JsValues.of(value), assigned.group(1));
        }
        String given = nextName.get();
        globals().putMember(given, value);
        return Outcome.value(JsValues.of(value), given);
    }

    private Outcome declared(String text) {
        Matcher declared = DECLARED.matcher(text);
        Value value = declared.lookingAt() ? globals().getMember(declared.group(1)) : null;
        return value == null || value.canExecute()
                ? Outcome.nothing()
                : Outcome.declared(JsValues.of(value), declared.group(1));
    }

    @Override
    public void interrupt() {
        if (runner != null) {
            interrupt(GENTLE);
        }
    }

    @Override
    public void stop() {
        if (runner != null) {
            interrupt(FIRM);
        }
    }

    private void interrupt(Duration limit) {
        try {
            context().interrupt(limit);
        } catch (TimeoutException e) {
            Thread busy = runner;
            if (busy != null) {
                busy.interrupt();
            }
        }
    }

    @Override
    public List<Offer> offers(String text, int cursor) {
        return new JsOffers(globals(), ours).names(text, cursor);
    }

    @Override
    public Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        for (String name : globals().getMemberKeys()) {
            Value value = ours.contains(name) ? null : globals().getMember(name);
            if (value == null || value.isNull() || value.canExecute()) {
                continue;
            }
            // a JavaScript object is passed once, as a copy
            Value before = seen.put(name, value);
            Object held =
                    value.equals(before) && taken.containsKey(name)
                            ? taken.get(name)
                            : JsValues.of(value);
            if (held != null) {
                taken.put(name, held);
                values.put(name, held);
            }
        }
        return values;
    }

    @Override
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>(globals().getMemberKeys());
        names.removeAll(ours);
        return names;
    }

    @Override
    public void take(String name, Object value) {
        if (!ours.contains(name)) {
            globals().putMember(name, value);
            taken.put(name, value);
            seen.put(name, globals().getMember(name));
        }
    }

    private Value globals() {
        return context().getBindings(JsContexts.JS);
    }

    private Context context() {
        return Objects.requireNonNull(context, "not warm yet");
    }

    @Override
    public void close() {
        if (contexts != null) {
            contexts.close();
        }
    }
}
