package reseat.script.host;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;

/**
 * The reply of a worker for one script. It is not trusted before {@link Validation} has checked it.
 *
 * @param problem why the script failed; empty if it finished
 * @param found what it returned
 * @param printed what it printed
 * @param micros how long it ran
 * @param compileMicros how long its compilation took
 */
record Reply(String problem, List<Raw> found, String printed, long micros, long compileMicros) {

    /** Longest field of a finding on the wire, in bytes. */
    private static final int MAX_FIELD = 64 * 1024;

    private static final int MAX_FOUND = 100_000;

    private static final int MAX_PRINTED = 16 * 1024 * 1024;

    /** A finding before validation. */
    record Raw(
            String check,
            String severity,
            String subject,
            String title,
            String message,
            List<String> evidence,
            String remedy) {

        Raw {
            evidence = List.copyOf(evidence);
        }

        static Raw of(Finding finding) {
            return new Raw(
                    finding.check(),
                    finding.severity().name(),
                    finding.subject(),
                    finding.title(),
                    finding.message(),
                    finding.evidence(),
                    finding.remedy());
        }
    }

    Reply {
        found = List.copyOf(found);
    }

    static Reply problem(String problem, String printed, long micros) {
        return new Reply(problem, List.of(), printed, micros, 0);
    }

    void write(DataOutputStream out) throws IOException {
        Wire.text(out, problem);
        Wire.text(out, printed);
        out.writeLong(micros);
        out.writeLong(compileMicros);
        out.writeInt(found.size());
        for (Raw raw : found) {
            Wire.text(out, raw.check);
            Wire.text(out, raw.severity);
            Wire.text(out, raw.subject);
            Wire.text(out, raw.title);
            Wire.text(out, raw.message);
            Wire.texts(out, raw.evidence);
            Wire.text(out, raw.remedy);
        }
        out.flush();
    }

    static Reply read(DataInputStream in) throws IOException {
        String problem = Wire.text(in, MAX_FIELD);
        String printed = Wire.text(in, MAX_PRINTED);
        long micros = in.readLong();
        long compileMicros = in.readLong();
        int size = in.readInt();
        if (size < 0 || size > MAX_FOUND) {
            throw new IOException(size + " findings");
        }
        List<Raw> found = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            found.add(
                    new Raw(
                            Wire.text(in, MAX_FIELD),
                            Wire.text(in, MAX_FIELD),
                            Wire.text(in, MAX_FIELD),
                            Wire.text(in, MAX_FIELD),
                            Wire.text(in, MAX_FIELD),
                            Wire.texts(in, 1000, MAX_FIELD),
                            Wire.text(in, MAX_FIELD)));
        }
        return new Reply(problem, found, printed, micros, compileMicros);
    }
}
