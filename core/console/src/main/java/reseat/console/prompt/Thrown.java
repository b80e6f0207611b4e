package reseat.console.prompt;

import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.List;
import reseat.fasten.FastenerInputException;
import reseat.model.BadInputException;
import reseat.script.BenchException;

/** Describes exceptions. */
final class Thrown {

    private static final int FRAMES = 12;

    private Thrown() {}

    /** Returns a message for the user; messages of our own exceptions are used unchanged. */
    static String message(Throwable thrown) {
        String message = thrown.getMessage();
        if (thrown instanceof NoSuchFileException missing) {
            return "There is no file " + missing.getFile() + ".";
        }
        boolean plain =
                thrown instanceof BenchException
                        || thrown instanceof BadInputException
                        || thrown instanceof FastenerInputException
                        || (isOurs(thrown) && thrown instanceof IllegalArgumentException);
        if (message == null || message.isBlank()) {
            return words(thrown);
        }
        return plain ? message : words(thrown) + ": " + message;
    }

    private static boolean isOurs(Throwable thrown) {
        StackTraceElement[] frames = thrown.getStackTrace();
        return frames.length > 0 && frames[0].getClassName().startsWith("reseat.");
    }

    private static String words(Throwable thrown) {
        return thrown instanceof StackOverflowError
                ? "StackOverflowError: endless recursion"
                : thrown.getClass().getSimpleName();
    }

    /** Returns the calls that led to it, innermost first, without those of the console. */
    static List<String> trace(Throwable thrown) {
        List<String> lines = new ArrayList<>();
        for (StackTraceElement frame : thrown.getStackTrace()) {
            String name = frame.getClassName();
            if (name.startsWith("jdk.internal.reflect.")
                    || name.startsWith("java.lang.reflect.")
                    || name.startsWith("jdk.jshell.")
                    || lines.size() == FRAMES) {
                break;
            }
            if (!name.startsWith("REPL.") || !frame.getMethodName().equals("do_it$")) {
                lines.add(
                        (name.startsWith("REPL.") ? "typed" : name)
                                + "."
                                + frame.getMethodName()
                                + (frame.getLineNumber() > 0 ? ":" + frame.getLineNumber() : ""));
            }
        }
        for (Throwable cause = thrown.getCause();
                cause != null && lines.size() < 2 * FRAMES;
                cause = cause.getCause()) {
            lines.add("because " + cause);
        }
        return lines;
    }
}
