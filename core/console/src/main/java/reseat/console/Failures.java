package reseat.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import reseat.console.command.BadInput;
import reseat.console.load.PluginFailed;
import reseat.model.BadInputException;
import reseat.script.host.JsEngine;
import reseat.spi.CommandException;

/** Turns exceptions into messages and exit codes. */
final class Failures {

    static final int BAD_INPUT = 2;
    static final int FAILED_INSIDE = 3;

    /** What an option of each type expects. */
    private static final Map<Class<?>, String> EXPECTED =
            Map.of(
                    int.class, "a whole number",
                    Integer.class, "a whole number",
                    long.class, "a whole number",
                    Long.class, "a whole number",
                    double.class, "a number",
                    Double.class, "a number",
                    LocalDate.class, "a date such as 2026-03-02",
                    Path.class, "a valid path");

    private final boolean trace;

    Failures(boolean trace) {
        this.trace = trace;
    }

    /** Handles an invalid command line: reports the error and points to the help. */
    int badUsage(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("reseat: " + wrongValue(e).orElse(String.valueOf(e.getMessage())));
        UnmatchedArgumentException.printSuggestions(e, err);
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        traceIfWanted(e, err);
        return BAD_INPUT;
    }

    /** Describes the expected value of an option that got an invalid one. */
    private static Optional<String> wrongValue(ParameterException e) {
        ArgSpec spec = e.getArgSpec();
        String message = String.valueOf(e.getMessage());
        if (spec == null || e.getValue() == null || !message.startsWith("Invalid value")) {
            return Optional.empty();
        }
        Class<?> type = spec.auxiliaryTypes()[0];
        String expected;
        if (EXPECTED.containsKey(type)) {
            expected = EXPECTED.get(type);
        } else if (type.isEnum()) {
            expected =
                    Arrays.stream(type.getEnumConstants())
                            .map(String::valueOf)
                            .collect(Collectors.joining(", ", "one of ", ""));
        } else {
            return Optional.empty();
        }
        String name = spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
        return Optional.of(name + ": found \"" + e.getValue() + "\", expected " + expected);
    }

    /** Handles an exception that a command threw. */
    int failed(Exception e, CommandLine command, ParseResult parsed) {
        return report(e, command.getErr());
    }

    /** Prints one message for any exception and returns the exit code. */
    int report(Throwable thrown, PrintWriter err) {
        Throwable cause = unwrap(thrown);
        int code;
        if (cause instanceof BadInput || cause instanceof CommandException) {
            err.println(cause.getMessage());
            code = BAD_INPUT;
        } else if (cause instanceof BadInputException problems) {
            err.println(problems.getMessage());
            code = BAD_INPUT;
        } else if (cause instanceof JsEngine.Missing missing) {
            err.println(missing.getMessage());
            code = FAILED_INSIDE;
        } else if (cause instanceof PluginFailed pluginFailed) {
            err.println(pluginFailed.getMessage());
            code = FAILED_INSIDE;
        } else if (cause instanceof InvalidPathException path) {
            err.println("reseat: invalid path: " + path.getInput());
            code = BAD_INPUT;
        } else if (cause instanceof FileSystemException fileTrouble) {
            err.println("reseat: " + describe(fileTrouble));
            code = BAD_INPUT;
        } else {
            err.println("reseat: internal error: " + describe(cause));
            if (!trace) {
                err.println("Set RESEAT_TRACE=1 and run again for a stack trace.");
            }
            code = FAILED_INSIDE;
        }
        traceIfWanted(thrown, err);
        return code;
    }

    private static Throwable unwrap(Throwable thrown) {
        IOException inner = thrown instanceof UncheckedIOException e ? e.getCause() : null;
        return inner == null ? thrown : inner;
    }

    private static String describe(FileSystemException e) {
        if (e instanceof NoSuchFileException) {
            return "there is no file " + e.getFile();
        }
        if (e instanceof AccessDeniedException) {
            return "permission denied: " + e.getFile();
        }
        return "cannot use the file " + e.getMessage();
    }

    private static String describe(Throwable e) {
        String message = e.getMessage();
        String kind = e.getClass().getSimpleName();
        return message == null || message.isBlank() ? kind : kind + ": " + message;
    }

    private void traceIfWanted(Throwable e, PrintWriter err) {
        if (trace) {
            e.printStackTrace(err);
        }
    }
}
