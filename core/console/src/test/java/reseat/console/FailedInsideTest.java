package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import org.junit.jupiter.api.Test;

/** A failure of ours, met through the command line. */
class FailedInsideTest {

    private static final String[] FACTS = {"facts", "../../samples/tansy/tansy.yaml"};

    @Test
    void endsWithThreeAndOneSentence() {
        StringWriter err = new StringWriter();

        int code = Main.run(broken(), new PrintWriter(err), false, FACTS);

        assertEquals(3, code);
        assertEquals(
                """
                reseat: internal error: IllegalStateException: the paper is torn
                Set RESEAT_TRACE=1 and run again for a stack trace.
                """,
                err.toString().replace("\r\n", "\n"));
    }

    @Test
    void tracesOnDemand() {
        StringWriter err = new StringWriter();

        int code = Main.run(broken(), new PrintWriter(err), true, FACTS);

        assertEquals(3, code);
        assertTrue(err.toString().contains("IllegalStateException: the paper is torn"));
        assertTrue(err.toString().contains("\tat "), err.toString());
        assertFalse(err.toString().contains("RESEAT_TRACE"), err.toString());
    }

    @Test
    void anErrorOfJavaIsNoExceptionFromIt() {
        StringWriter err = new StringWriter();
        PrintWriter out =
                new PrintWriter(Writer.nullWriter()) {
                    @Override
                    public void println(String line) {
                        throw new StackOverflowError();
                    }
                };

        int code = Main.run(out, new PrintWriter(err), false, FACTS);

        assertEquals(3, code);
        assertTrue(err.toString().startsWith("reseat: internal error"), err.toString());
        assertFalse(err.toString().contains("\tat "), err.toString());
    }

    /** Something inside fails while a command runs: here what it prints to. */
    private static PrintWriter broken() {
        return new PrintWriter(Writer.nullWriter()) {
            @Override
            public void println(String line) {
                throw new IllegalStateException("the paper is torn");
            }
        };
    }
}
