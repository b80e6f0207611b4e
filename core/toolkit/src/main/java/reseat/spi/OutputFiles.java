package reseat.spi;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/** The files of an output, held in memory until they are complete. Not thread-safe. */
public final class OutputFiles implements Output.Place {

    private static final String NAME = "[A-Za-z0-9][A-Za-z0-9_.-]{0,99}";

    /** Names of devices on Windows, with any extension. */
    private static final String RESERVED = "(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?";

    private final Output output;
    private final Map<String, ByteArrayOutputStream> files = new LinkedHashMap<>();
    private final TreeSet<String> taken = new TreeSet<>();

    private OutputFiles(Output output) {
        this.output = output;
    }

    /**
     * Runs an output and returns what it wrote.
     *
     * @return the files by name in the order in which they were opened, at least one; the one file
     *     of an output of one has the name that the output gives it
     * @throws IOException if the output throws it
     * @throws IllegalStateException if it wrote no file
     * @throws IllegalArgumentException if a name is not allowed; see {@link Output.Place#file}
     */
    public static Map<String, byte[]> of(Output output, Output.Content content) throws IOException {
        OutputFiles place = new OutputFiles(output);
        output.write(content, place);
        if (place.files.isEmpty()) {
            throw new IllegalStateException("it wrote no file");
        }
        Map<String, byte[]> written = new LinkedHashMap<>();
        place.files.forEach((name, bytes) -> written.put(name, bytes.toByteArray()));
        return Collections.unmodifiableMap(written);
    }

    @Override
    public OutputStream single() {
        if (output.files() != Output.Files.ONE) {
            throw new IllegalStateException("it declares that it writes several files");
        }
        if (!files.isEmpty()) {
            throw new IllegalStateException("it opened its one file twice");
        }
        return open(output.fileName());
    }

    @Override
    public OutputStream file(String name) {
        if (output.files() != Output.Files.SEVERAL) {
            throw new IllegalStateException("it declares that it writes one file");
        }
        return open(name);
    }

    private OutputStream open(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (!name.matches(NAME)
                || name.contains("..")
                || name.endsWith(".")
                || lower.matches(RESERVED)) {
            throw new IllegalArgumentException("\"" + name + "\" is not a plain file name");
        }
        if (!taken.add(lower)) {
            throw new IllegalArgumentException("two files are named \"" + name + "\"");
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        files.put(name, bytes);
        return bytes;
    }
}
