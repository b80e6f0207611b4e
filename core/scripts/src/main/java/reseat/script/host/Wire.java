package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The wire format between the two processes: numbers, strings and lists, each with its length. */
final class Wire {

    /** Upper limit of a message: a device of 16 MiB grows when it is resolved. */
    private static final int MAX_TEXT = 128 * 1024 * 1024;

    private static final int MAX_LIST = 1_000_000;

    private Wire() {}

    static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String text(DataInputStream in) throws IOException {
        return text(in, MAX_TEXT);
    }

    /** Reads a text of no more than a number of bytes. */
    static String text(DataInputStream in, int most) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > most) {
            throw new IOException("a text of " + length + " bytes");
        }
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw new IOException("a text ended early");
        }
        return new String(bytes, UTF_8);
    }

    static void texts(DataOutputStream out, List<String> texts) throws IOException {
        out.writeInt(texts.size());
        for (String text : texts) {
            text(out, text);
        }
    }

    static List<String> texts(DataInputStream in) throws IOException {
        return texts(in, MAX_LIST, MAX_TEXT);
    }

    /** Reads a list of no more than a number of texts, each of no more than a number of bytes. */
    static List<String> texts(DataInputStream in, int most, int bytes) throws IOException {
        int size = in.readInt();
        if (size < 0 || size > most) {
            throw new IOException("a list of " + size);
        }
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            texts.add(text(in, bytes));
        }
        return texts;
    }

    static void maybe(DataOutputStream out, Optional<List<String>> texts) throws IOException {
        out.writeBoolean(texts.isPresent());
        if (texts.isPresent()) {
            texts(out, texts.get());
        }
    }

    static Optional<List<String>> maybe(DataInputStream in) throws IOException {
        return in.readBoolean() ? Optional.of(texts(in)) : Optional.empty();
    }
}
