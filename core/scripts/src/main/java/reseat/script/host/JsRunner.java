package reseat.script.host;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;

/**
 * Runs JavaScript scripts, each in its own context, so that changes to built-in objects do not
 * reach the next script.
 */
final class JsRunner implements Runner {

    /** Warms up the engine with typical calls of scripts before the first one runs. */
    private static final String WARM_UP =
            """
            function run(input) {
              const seen = [];
              for (const screw of input.jointsInView()) {
                if (screw.seat().isPresent() && screw.holds().length > 1) {
                  seen.push(`${screw.id()} ${screw.seat().get().torqueNm().orElse(0).toFixed(2)}`);
                }
              }
              return seen.map(x => x.length).filter(x => x > 100);
            }
            """;

    private final ScriptLimits limits;
    private final Printed printed;
    private final JsContexts contexts;
    private final ScheduledExecutorService clock =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "script clock");
                        thread.setDaemon(true);
                        return thread;
                    });

    JsRunner(ScriptLimits limits, Printed printed) {
        this.limits = limits;
        this.printed = printed;
        this.contexts = JsContexts.of(printed, printed);
    }

    @Override
    public void warm(CheckInput input) {
        run(WARM_UP, "warm-up", "", input);
    }

    @Override
    public Reply run(ScriptFile script, CheckInput input) {
        return run(script.text(), script.file(), script.info().id(), input.forCheck(script.info()));
    }

    private Reply run(String text, String name, String id, CheckInput input) {
        printed.take();
        long start = System.nanoTime();
        AtomicBoolean late = new AtomicBoolean();
        Reply reply;
        Context context = contexts.open(OptionalLong.of(limits.statements()));
        Future<?> alarm =
                clock.schedule(
                        () -> {
                            late.set(true);
                            context.close(true);
                        },
                        limits.seconds(),
                        TimeUnit.SECONDS);
        try {
            List<Reply.Raw> found = findings(context, text, name, id, input);
            reply = new Reply("", found, "", micros(start), 0);
        } catch (PolyglotException e) {
            reply = Reply.problem(JsTrouble.of(e, limits, late.get()), "", micros(start));
        } catch (Wrong e) {
            reply = Reply.problem(String.valueOf(e.getMessage()), "", micros(start));
        } catch (IllegalStateException e) {
            // the timer closed the context between two calls
            reply =
                    Reply.problem(
                            late.get()
                                    ? "it was stopped after " + limits.seconds() + " s"
                                    : "it failed: "
                                            + JsTrouble.shown(String.valueOf(e.getMessage())),
                            "",
                            micros(start));
        } finally {
            alarm.cancel(false);
            close(context);
        }
        boolean flood = printed.isMore();
        String said = printed.take();
        if (flood) {
            return Reply.problem(
                    "it printed more than " + limits.printed() / 1024 + " KiB",
                    said,
                    reply.micros());
        }
        return new Reply(
                reply.problem(), reply.found(), said, reply.micros(), reply.compileMicros());
    }

    /** Thrown for an invalid result; the message says why. */
    private static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String message) {
            super(message);
        }
    }

    private List<Reply.Raw> findings(
            Context context, String text, String name, String id, CheckInput input) throws Wrong {
        try {
            context.eval(Source.newBuilder(JsContexts.JS, text, name).build());
        } catch (IOException e) {
            throw new UncheckedIOException(e); // nothing is read here
        }
        Value run = context.getBindings(JsContexts.JS).getMember("run");
        if (run == null || !run.canExecute()) {
            throw new Wrong("it defines no function run(input)");
        }
        Value result = run.execute(input);
        if (!result.hasArrayElements()) {
            boolean promise =
                    result.hasMembers() && result.hasMember("then") && !result.isHostObject();
            throw new Wrong(
                    promise
                            ? "run returned a promise; a script returns its findings at once"
                            : "run returned no list of findings");
        }
        long size = result.getArraySize();
        if (size > limits.findings()) {
            throw new Wrong("it returned " + size + " findings; the limit is " + limits.findings());
        }
        List<Reply.Raw> found = new ArrayList<>();
        for (long i = 0; i < size; i++) {
            Value each = result.getArrayElement(i);
            if (!each.isHostObject() || !(each.asHostObject() instanceof Finding finding)) {
                throw new Wrong(
                        "run returned something that is not a finding;  input.finding(pointer)"
                                + ".says(message, remedy) creates one");
            }
            if (!finding.check().equals(id)) {
                throw new Wrong("it returned a finding of another check");
            }
            found.add(Reply.Raw.of(finding));
        }
        return found;
    }

    private static void close(Context context) {
        try {
            context.close(true);
        } catch (PolyglotException | IllegalStateException e) {
            // thrown by close when the context was cancelled
        }
    }

    private static long micros(long start) {
        return (System.nanoTime() - start) / 1000;
    }
}
