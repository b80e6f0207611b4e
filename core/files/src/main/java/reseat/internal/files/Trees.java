package reseat.internal.files;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import reseat.model.Origin;

/** Parses the bytes of a YAML or JSON file into a located tree. */
final class Trees {

    private Trees() {}

    /**
     * Parses a file. A text that begins with a brace is JSON, or YAML flow style if its first key
     * is not quoted; everything else is YAML.
     *
     * @param name name of the file, for places
     * @param content its bytes
     * @param problems collects the errors
     * @return the tree, or empty if the text cannot be parsed
     */
    static Optional<Node> parse(String name, byte[] content, Problems problems) {
        Node plain = PlainJson.parse(name, content);
        if (plain != null) {
            return Optional.of(plain);
        }
        try {
            String text = decode(name, content);
            TreeBuilder builder = new TreeBuilder(problems);
            if (isJson(text)) {
                JsonEvents.feed(name, text, builder);
            } else {
                YamlEvents.feed(name, text, builder);
            }
            Node root = builder.root();
            if (root == null) {
                problems.error(new Origin(name, 1, 1), "the file is empty");
            }
            return Optional.ofNullable(root);
        } catch (TreeException e) {
            problems.error(e.at(), e.text());
            return Optional.empty();
        }
    }

    /** JSON begins with a brace and a quoted key; YAML flow style is left to the YAML parser. */
    private static boolean isJson(String text) {
        int i = blank(text, 0);
        if (i == text.length() || (text.charAt(i) != '{' && text.charAt(i) != '[')) {
            return false;
        }
        i = blank(text, i + 1);
        return i == text.length() || "\"{}[]".indexOf(text.charAt(i)) >= 0;
    }

    private static int blank(String text, int from) {
        int i = from;
        while (i < text.length() && " \t\r\n".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return i;
    }

    /**
     * Decodes UTF-8 strictly and rejects anything that is not text, with the location of the first
     * invalid byte.
     */
    static String decode(String name, byte[] content) throws TreeException {
        ByteBuffer in = ByteBuffer.wrap(content);
        CharBuffer out = CharBuffer.allocate(content.length);
        CoderResult result =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)
                        .decode(in, out, true);
        out.flip();
        String text = out.toString();
        int bad = firstControl(text);
        if (bad >= 0) {
            throw new TreeException(
                    place(name, text, bad),
                    String.format(
                            Locale.ROOT,
                            "found the control character U+%04X: a device file is text in UTF-8",
                            (int) text.charAt(bad)));
        }
        if (result.isError()) {
            throw new TreeException(
                    place(name, text, text.length()),
                    String.format(
                            Locale.ROOT,
                            "found the byte 0x%02X, which is not valid UTF-8: save the"
                                    + " file as UTF-8",
                            content[in.position()] & 0xFF));
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /**
     * Returns whether a decoded text has characters that JSON does not allow, or was not valid
     * UTF-8.
     */
    static boolean strange(String text) {
        return firstControl(text) >= 0
                || text.indexOf('\uFEFF') >= 0
                || text.indexOf('\uFFFD') >= 0
                || text.indexOf('\n') >= 0
                || text.indexOf('\r') >= 0
                || text.indexOf('\t') >= 0;
    }

    private static int firstControl(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r';
            // U+0085 is a line end in YAML; a byte order mark belongs at the very beginning
            if (control
                    || (c >= 0x7F && c < 0xA0 && c != 0x85)
                    || (c == 0xFEFF && i > 0)
                    || c >= 0xFFFE) {
                return i;
            }
        }
        return -1;
    }

    private static Origin place(String name, String text, int offset) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                start = i + 1;
            }
        }
        return new Origin(name, line, text.codePointCount(start, offset) + 1);
    }
}
