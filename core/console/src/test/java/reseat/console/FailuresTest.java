package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;
import reseat.console.command.BadInput;

class FailuresTest {

    private final StringWriter err = new StringWriter();

    @Test
    void aTextThatIsNoPathIsTold() {
        StringWriter err = new StringWriter();
        int code =
                new Failures(false)
                        .report(new InvalidPathException("a\0b", "no"), new PrintWriter(err, true));

        assertEquals(2, code);
        assertTrue(err.toString().startsWith("reseat: invalid path: a"), err.toString());
        assertTrue(Ran.reseat("facts", "a\0b").err().contains(", expected a valid path"));
    }

    @Test
    void badInputIsPrintedAsItIs() {
        int code = report(new BadInput("quill.yaml:3:7: found 'screwe', expected 'screw'"), false);

        assertEquals(2, code);
        assertEquals(
                "quill.yaml:3:7: found 'screwe', expected 'screw'" + System.lineSeparator(),
                err.toString());
    }

    @Test
    void aMissingFileIsTheUsersMatter() {
        assertEquals(
                2, report(new UncheckedIOException(new NoSuchFileException("quill.yaml")), false));
        assertEquals(
                "reseat: there is no file quill.yaml" + System.lineSeparator(), err.toString());
    }

    @Test
    void aClosedFileIsTheUsersMatter() {
        assertEquals(2, report(new AccessDeniedException("quill.yaml"), false));
        assertEquals(
                "reseat: permission denied: quill.yaml" + System.lineSeparator(), err.toString());
    }

    @Test
    void ourOwnFailureShowsNoStackTrace() {
        assertEquals(3, report(new StackOverflowError(), false));
        assertTrue(err.toString().startsWith("reseat: internal error"), err.toString());
        assertTrue(err.toString().contains("StackOverflowError"), err.toString());
        assertTrue(err.toString().contains("RESEAT_TRACE=1"), err.toString());
        assertTrue(!err.toString().contains("\tat "), err.toString());
    }

    @Test
    void aTraceIsPrintedOnDemand() {
        assertEquals(3, report(new IllegalStateException("lost"), true));
        assertTrue(err.toString().contains("IllegalStateException: lost"), err.toString());
        assertTrue(err.toString().contains("\tat "), err.toString());
    }

    private int report(Throwable thrown, boolean trace) {
        return new Failures(trace).report(thrown, new PrintWriter(err));
    }
}
