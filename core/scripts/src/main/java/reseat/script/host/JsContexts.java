package reseat.script.host;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Engine;
import org.graalvm.polyglot.HostAccess;
import org.graalvm.polyglot.PolyglotAccess;
import org.graalvm.polyglot.ResourceLimits;
import org.graalvm.polyglot.SandboxPolicy;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.io.IOAccess;
import org.graalvm.polyglot.proxy.ProxyArray;

/**
 * Creates JavaScript contexts that can access the toolkit and nothing else: no host classes, files,
 * network, processes, threads, environment, clock or randomness.
 *
 * <p>There is one engine for all contexts of a process. A context is used by one thread at a time
 * and never shared between scripts; it ends with {@code close(true)}. Values passed by {@code
 * getBindings("js").putMember(name, value)} keep their Java form: records with their methods, lists
 * as arrays, maps as Maps; all are read-only.
 */
public final class JsContexts implements AutoCloseable {

    /** Id of the language. */
    public static final String JS = "js";

    /**
     * All of them are allowed under the policy CONSTRAINED. A clock that ticks once in 285 years is
     * useless to a script that finds a way to it.
     */
    private static final Map<String, String> OPTIONS =
            Map.of(
                    "js.ecmascript-version", "2022",
                    "js.strict", "true",
                    "js.allow-eval", "false",
                    "js.load", "false",
                    "js.graal-builtin", "false",
                    "js.webassembly", "false",
                    "js.unhandled-rejections", "throw",
                    "js.timer-resolution", "9000000000000000000");

    private final Engine engine;
    private final HostAccess access;
    private final Map<String, Class<?>> enums;
    private final Source prelude = Source.create(JS, JsPrelude.SOURCE);

    private JsContexts(Engine engine, JsApi api) {
        this.engine = engine;
        this.access = api.access();
        this.enums = api.enums();
    }

    /**
     * Creates contexts that can access what is reachable from the input of a check.
     *
     * @param out gets what JavaScript prints
     * @param err gets what JavaScript prints as errors
     * @param more further exported toolkit types to make accessible, such as those of values that a
     *     prompt binds
     */
    public static JsContexts of(OutputStream out, OutputStream err, Class<?>... more) {
        Engine engine =
                Engine.newBuilder(JS)
                        .sandbox(SandboxPolicy.CONSTRAINED)
                        .option("engine.WarnInterpreterOnly", "false")
                        .in(InputStream.nullInputStream())
                        .out(out)
                        .err(err)
                        .build();
        return new JsContexts(engine, JsApi.of(List.of(more)));
    }

    /** Opens a context without a statement limit, for interactive input. */
    public Context open() {
        return open(OptionalLong.empty());
    }

    /**
     * Opens a context.
     *
     * @param statements number of statements after which it is cancelled
     */
    public Context open(OptionalLong statements) {
        Context.Builder builder =
                Context.newBuilder(JS)
                        .engine(engine)
                        .sandbox(SandboxPolicy.CONSTRAINED)
                        .allowHostAccess(access)
                        .allowIO(IOAccess.NONE)
                        .allowPolyglotAccess(PolyglotAccess.NONE)
                        .options(OPTIONS);
        if (statements.isPresent()) {
            builder.resourceLimits(
                    ResourceLimits.newBuilder()
                            .statementLimit(statements.getAsLong(), null)
                            .build());
        }
        Context context = builder.build();
        Value define = context.eval(prelude);
        enums.forEach(
                (name, type) -> {
                    Object[] constants = Objects.requireNonNull(type.getEnumConstants());
                    Object[] names =
                            Arrays.stream(constants).map(c -> ((Enum<?>) c).name()).toArray();
                    define.executeVoid(
                            name, ProxyArray.fromArray(names), ProxyArray.fromArray(constants));
                });
        define.executeVoid("");
        return context;
    }

    /** Closes the engine with all contexts that are open. */
    @Override
    public void close() {
        engine.close(true);
    }
}
