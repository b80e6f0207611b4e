package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import reseat.console.command.ReseatCommand;
import reseat.console.command.VersionText;
import reseat.console.load.Guard;
import reseat.console.load.OurPlugins;

/** Where the {@code reseat} command starts, and where the process ends. */
public final class Main {

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        // UTF-8 whatever the locale says: the same input must give the same bytes everywhere
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        Guard.PROGRAM.arm(out, err);
        boolean trace = "1".equals(System.getenv("RESEAT_TRACE"));
        int code = run(out, err, trace, args);
        out.flush();
        err.flush();
        Guard.PROGRAM.end(code);
    }

    /**
     * Runs one command inside this process.
     *
     * @param out gets what the command prints
     * @param err gets what goes wrong
     * @param trace whether stack traces are wanted
     * @param args the words after {@code reseat}
     * @return the exit code: 0 fine, 1 findings, 2 usage or bad input, 3 failed inside
     */
    static int run(PrintWriter out, PrintWriter err, boolean trace, String... args) {
        Failures failures = new Failures(trace);
        try {
            if (VersionText.isAskedBy(args)) {
                VersionText.lines().forEach(out::println);
                return 0;
            }
            CommandLine command = ReseatCommand.understanding(args);
            command.setOut(out);
            command.setErr(err);
            command.setUsageHelpAutoWidth(true);
            command.setCaseInsensitiveEnumValuesAllowed(true);
            command.setExpandAtFiles(false);
            command.setParameterExceptionHandler(failures::badUsage);
            command.setExecutionExceptionHandler(failures::failed);
            command.setExecutionStrategy(Main::runKnown);
            return command.execute(args);
        } catch (Throwable e) { // errors too: a user never meets a stack trace
            return failures.report(e, err);
        } finally {
            OurPlugins.tell(err);
        }
    }

    /** Runs what was asked; a word that nobody knows is told even where help was asked for. */
    private static int runKnown(ParseResult parsed) {
        for (ParseResult each = parsed; each != null; each = each.subcommand()) {
            if (!each.unmatched().isEmpty()) {
                throw new UnmatchedArgumentException(
                        each.commandSpec().commandLine(), each.unmatched());
            }
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    private static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, UTF_8));
    }
}
