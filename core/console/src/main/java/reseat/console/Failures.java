package reseat.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import reseat.console.command.BadInput;
import reseat.console.load.PluginFailed;
import reseat.console.script.JsEngine;
import reseat.model.BadInputException;

/** Says what went wrong in words, and with which exit code it ends. */
final class Failures {

    static final int BAD_INPUT = 2;
    static final int FAILED_INSIDE = 3;

    private final boolean trace;

    Failures(boolean trace) {
        this.trace = trace;
    }

    /** Handles words that are no valid command line: says which, what was meant, where help is. */
    int badUsage(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(
                "reseat: "
                        + String.valueOf(e.getMessage())
                                .replaceFirst(
                                        "^Invalid value for option '([^']*)'.*: '(.*)' is not an? (int|long)$",
                                        "$1: found \"$2\", expected a whole number"));
        UnmatchedArgumentException.printSuggestions(e, err);
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        traceIfWanted(e, err);
        return BAD_INPUT;
    }

    /** Handles what a command threw while it ran. */
    int failed(Exception e, CommandLine command, ParseResult parsed) {
        return report(e, command.getErr());
    }

    /** Prints one message for whatever was thrown and returns the exit code. */
    int report(Throwable thrown, PrintWriter err) {
        Throwable cause = unwrap(thrown);
        int code;
        if (cause instanceof BadInput badInput) {
            err.println(badInput.getMessage());
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
        } else if (cause instanceof FileSystemException fileTrouble) {
            err.println("reseat: " + describe(fileTrouble));
            code = BAD_INPUT;
        } else {
            err.println("reseat: failed inside, this is our mistake: " + describe(cause));
            if (!trace) {
                err.println("Set RESEAT_TRACE=1 and run again to see where.");
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
            return "no permission for " + e.getFile();
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
