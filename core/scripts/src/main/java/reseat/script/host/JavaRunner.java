package reseat.script.host;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Timer;
import java.util.TimerTask;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.ScriptFile;

/**
 * Runs Java scripts, each in its own shell. They are not restricted; the caller must have checked
 * that they are approved.
 */
final class JavaRunner implements Runner {

    /** The exit code of the process when a script exceeds its time limit. */
    static final int LATE = 4;

    private static final String WARM_UP =
            "List<String> warm(CheckInput input) { return List.of(); }";

    private final ScriptLimits limits;
    private final Printed printed;

    JavaRunner(ScriptLimits limits, Printed printed) {
        this.limits = limits;
        this.printed = printed;
    }

    @Override
    public void warm(CheckInput input) {
        SnippetClasses classes = new SnippetClasses();
        try (JShell shell = shell(classes)) {
            shell.eval(WARM_UP);
        }
    }

    @Override
    public Reply run(ScriptFile script, CheckInput input) {
        printed.take();
        long start = System.nanoTime();
        SnippetClasses classes = new SnippetClasses();
        try (JShell shell = shell(classes)) {
            Method run = compile(shell, classes, script.text());
            long compiled = System.nanoTime();
            Reply reply = answer(run, input.forCheck(script.info()), (compiled - start) / 1000);
            boolean flood = printed.isMore();
            String said = printed.take();
            return flood
                    ? Reply.problem(
                            "it printed more than " + limits.printed() / 1024 + " KiB",
                            said,
                            reply.micros())
                    : new Reply(
                            reply.problem(),
                            reply.found(),
                            said,
                            reply.micros(),
                            reply.compileMicros());
        } catch (Wrong e) {
            return Reply.problem(String.valueOf(e.getMessage()), printed.take(), 0);
        }
    }

    /** Thrown for a script that cannot be compiled; the message says why. */
    private static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String message) {
            super(message);
        }
    }

    private static JShell shell(SnippetClasses classes) {
        PrintStream caught = System.out;
        JShell shell =
                JShell.builder()
                        .executionEngine(classes.control(), Map.of())
                        .compilerOptions(
                                "--module-path",
                                System.getProperty("jdk.module.path", ""),
                                "--add-modules",
                                OpenModules.names())
                        .in(new ByteArrayInputStream(new byte[0]))
                        .out(caught)
                        .err(caught)
                        .build();
        shell.eval("import java.util.*;");
        shell.eval("import java.util.stream.*;");
        OpenModules.imports().forEach(shell::eval);
        return shell;
    }

    private static Method compile(JShell shell, SnippetClasses classes, String text) throws Wrong {
        String rest = text;
        List<MethodSnippet> methods = new ArrayList<>();
        while (!rest.isBlank()) {
            CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            int from = text.length() - rest.length();
            String source = info.source() == null ? rest : info.source();
            for (SnippetEvent event : shell.eval(source)) {
                if (event.status() == Snippet.Status.REJECTED) {
                    throw new Wrong(trouble(shell, event.snippet(), text, from));
                }
                if (event.snippet() instanceof MethodSnippet method) {
                    methods.add(method);
                }
            }
            rest = info.source() == null ? "" : info.remaining();
        }
        MethodSnippet run =
                methods.stream()
                        .filter(m -> m.name().equals("run"))
                        .filter(m -> shell.status(m) == Snippet.Status.VALID)
                        .reduce((first, last) -> last)
                        .orElseThrow(
                                () ->
                                        new Wrong(
                                                "it defines no method List<Finding> run(CheckInput input), or one"
                                                        + " that needs something undefined"));
        try {
            return classes.method(shell.sourceCodeAnalysis().wrapper(run).fullClassName(), "run");
        } catch (ReflectiveOperationException e) {
            throw new Wrong("it defines no method List<Finding> run(CheckInput input)");
        }
    }

    private static String trouble(JShell shell, Snippet snippet, String text, int from) {
        Diag first = shell.diagnostics(snippet).filter(Diag::isError).findFirst().orElse(null);
        if (first == null) {
            return "it is not valid Java";
        }
        int at = Math.min(text.length(), from + (int) Math.max(0, first.getPosition()));
        long line = text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        return "line " + line + ": " + JsTrouble.shown(first.getMessage(Locale.ROOT));
    }

    private Reply answer(Method run, CheckInput input, long compileMicros) {
        long start = System.nanoTime();
        Timer alarm = new Timer("script clock", true);
        alarm.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        // no other way stops a loop on every version of Java
                        Worker.end(LATE);
                    }
                },
                limits.seconds() * 1000L);
        try {
            Object result = run.invoke(null, input);
            alarm.cancel();
            long micros = (System.nanoTime() - start) / 1000;
            if (!(result instanceof List<?> list)) {
                return Reply.problem("run returned no list of findings", "", micros);
            }
            List<Reply.Raw> found = new ArrayList<>();
            for (Object each : list) {
                if (!(each instanceof Finding finding)) {
                    return Reply.problem(
                            "run returned something that is not a finding", "", micros);
                }
                found.add(Reply.Raw.of(finding));
            }
            return new Reply("", found, "", micros, compileMicros);
        } catch (InvocationTargetException e) {
            Throwable thrown = e.getCause() == null ? e : e.getCause();
            long micros = (System.nanoTime() - start) / 1000;
            if (thrown instanceof StackOverflowError) {
                return Reply.problem("it has endless recursion", "", micros);
            }
            return Reply.problem("it threw " + JsTrouble.shown(String.valueOf(thrown)), "", micros);
        } catch (IllegalAccessException e) {
            return Reply.problem("run cannot be called", "", 0);
        } finally {
            alarm.cancel();
        }
    }
}
