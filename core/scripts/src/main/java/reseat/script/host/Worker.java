package reseat.script.host;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInput;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;

/**
 * The process that runs scripts. It reads inputs, and scripts to run on the latest one, from
 * standard input, and replies on standard output. Everything that scripts print is captured. It
 * exits when standard input ends.
 */
public final class Worker {

    static final byte END = 0;
    static final byte SCRIPT = 1;
    static final byte INPUT = 2;
    static final String READY = "ready";

    private Worker() {}

    /** Runs until the parent process closes the connection. */
    public static void main(String[] args) throws IOException {
        DataInputStream in = new DataInputStream(new BufferedInputStream(System.in));
        DataOutputStream out =
                new DataOutputStream(
                        new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)));
        System.setIn(InputStream.nullInputStream());
        try {
            serve(in, out);
        } catch (EOFException e) {
            // the parent process is gone; there is nobody to report to
        }
        end(0);
    }

    /** Ends the process at once, with everything that its scripts have started. */
    static void end(int code) {
        Runtime.getRuntime().halt(code);
    }

    private static void serve(DataInputStream in, DataOutputStream out) throws IOException {
        ScriptFile.Language language = ScriptFile.Language.valueOf(Wire.text(in));
        ScriptLimits limits =
                new ScriptLimits(
                        in.readLong(), in.readInt(), in.readInt(), in.readInt(), in.readInt());
        Printed printed = new Printed(limits.printed());
        PrintStream caught = new PrintStream(printed, true, StandardCharsets.UTF_8);
        System.setOut(caught);
        System.setErr(caught);
        Runner runner =
                language == ScriptFile.Language.JAVASCRIPT
                        ? new JsRunner(limits, printed)
                        : new JavaRunner(limits, printed);
        @Nullable CheckInput input = null;
        for (byte wish = in.readByte(); wish != END; wish = in.readByte()) {
            if (wish == INPUT) {
                boolean first = input == null;
                try {
                    input = InputWire.read(in);
                } catch (BadInputException | RuntimeException e) {
                    Wire.text(out, "the input of the check arrived incomplete: " + e.getMessage());
                    out.flush();
                    return;
                }
                if (first) {
                    runner.warm(input);
                }
                Wire.text(out, READY);
                out.flush();
                continue;
            }
            String file = Wire.text(in);
            Path copy = Path.of(Wire.text(in));
            CheckInput loaded = Objects.requireNonNull(input, "an input must precede a script");
            Reply reply;
            try {
                ScriptFile script = ScriptFile.read(copy);
                Reply raw =
                        runner.run(
                                new ScriptFile(
                                        file,
                                        script.language(),
                                        script.info(),
                                        script.from(),
                                        script.sha256(),
                                        script.text()),
                                loaded);
                reply = sound(raw, script, loaded, limits);
            } catch (BadInputException e) {
                reply = Reply.problem("it arrived incomplete", "", 0);
            }
            reply.write(out);
        }
    }

    /** Checks here for a good error message; the parent process checks again. */
    private static Reply sound(
            Reply reply, ScriptFile script, CheckInput input, ScriptLimits limits) {
        try {
            new Validation(script, input.device(), limits.findings()).findings(reply.found());
            return reply;
        } catch (Validation.Unsound e) {
            return Reply.problem(String.valueOf(e.getMessage()), reply.printed(), reply.micros());
        }
    }
}
