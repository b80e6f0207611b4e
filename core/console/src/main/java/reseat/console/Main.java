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

/** The entry point of the {@code reseat} command. */
public final class Main {

    private Main() {}

    /** Runs one command and exits the process with its exit code. */
    public static void main(String[] args) {
        // UTF-8 regardless of the locale: the same input must give the same bytes everywhere
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        Guard.PROGRAM.arm(out, err, System::exit, Runtime.getRuntime()::halt);
        boolean trace = "1".equals(System.getenv("RESEAT_TRACE"));
        int code = run(out, err, trace, args);
        out.flush();
        err.flush();
        Guard.PROGRAM.end(code);
    }

    /**
     * Runs one command inside this process.
     *
     * @param out gets the output of the command
     * @param err gets error messages
     * @param trace whether to print stack traces
     * @param args the words after {@code reseat}
     * @return the exit code: 0 fine, 1 findings, 2 usage or bad input, 3 internal error
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
        } catch (Throwable e) { // errors too: users never see a stack trace
            return failures.report(e, err);
        } finally {
            OurPlugins.tell(err);
        }
    }

    /** Runs the command; an unknown word is an error even where help was requested. */
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
