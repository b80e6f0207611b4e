package reseat.internal.files;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Goes over the bytes of JSON, token by token, as long as it is plain ({@link PlainJson}). */
final class PlainTokens {

    private static final int LONGEST_NUMBER = 40;
    private static final VarHandle EIGHT =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long EIGHT_BLANKS = 0x2020202020202020L;

    private final byte[] in;
    private final TextMemory texts;
    private int at;
    private int line = 1;

    /** Where the line begins; moved on where a character takes more bytes than places. */
    private int lineStart;

    PlainTokens(byte[] in) {
        this.in = in;
        this.texts = new TextMemory(in);
    }

    /** Thrown if the text is not plain; carries no details. */
    static final class NotPlain extends Exception {
        private static final long serialVersionUID = 1L;

        NotPlain() {
            super(null, null, false, false);
        }
    }

    /** Returns the start of the last token, as a {@link Spot}. */
    long spot() {
        return Spot.of(line, at - lineStart + 1);
    }

    /** Goes over one byte. */
    void step() {
        at++;
    }

    /** Goes over blanks and line ends; returns the byte that follows, or -1 at the end. */
    int next() throws NotPlain {
        int i = at;
        if (i + 1 < in.length) {
            byte first = in[i];
            if (first > ' ') {
                return first;
            }
            // what stands after a colon or a comma, if no line ends there
            byte second = in[i + 1];
            if (first == ' ' && second > ' ') {
                at = i + 1;
                return second;
            }
        }
        return blank();
    }

    /** Goes over one byte and then as {@link #next}. */
    int stepAndNext() throws NotPlain {
        at++;
        return next();
    }

    private int blank() throws NotPlain {
        int i = at;
        while (i < in.length) {
            byte b = in[i];
            if (b == '\n') {
                line++;
                lineStart = i + 1;
                // most bytes of a file are the blanks before its lines
                while (i + 9 <= in.length) {
                    long other = (long) EIGHT.get(in, i + 1) ^ EIGHT_BLANKS;
                    i += Long.numberOfTrailingZeros(other) >>> 3;
                    if (other != 0) {
                        break;
                    }
                }
            } else if (b != ' ' && b != '\t') {
                if (b != '\r') {
                    at = i;
                    return b < 0 ? 0 : b;
                }
                if (i + 1 == in.length || in[i + 1] != '\n') {
                    throw new NotPlain();
                }
            }
            i++;
        }
        at = i;
        return -1;
    }

    /** Goes over a word such as {@code true}. */
    void word(String word) throws NotPlain {
        for (int i = 0; i < word.length(); i++) {
            if (at == in.length || in[at++] != word.charAt(i)) {
                throw new NotPlain();
            }
        }
        endOfValue();
    }

    private void endOfValue() throws NotPlain {
        if (at == in.length || " \t\r\n,]}".indexOf(in[at]) < 0) {
            throw new NotPlain();
        }
    }

    /** Returns a number as written. */
    String number() throws NotPlain {
        int from = at;
        if (at < in.length && in[at] == '-') {
            at++;
        }
        int first = at;
        digits();
        if (in[first] == '0' && at - first > 1) {
            throw new NotPlain();
        }
        if (at < in.length && in[at] == '.') {
            at++;
            digits();
        }
        if (at < in.length && (in[at] | 0x20) == 'e') {
            at++;
            if (at < in.length && (in[at] == '-' || in[at] == '+')) {
                at++;
            }
            digits();
        }
        endOfValue();
        if (at - from > LONGEST_NUMBER) {
            throw new NotPlain();
        }
        return texts.text(from, at);
    }

    private void digits() throws NotPlain {
        int from = at;
        while (at < in.length && in[at] >= '0' && in[at] <= '9') {
            at++;
        }
        if (at == from) {
            throw new NotPlain();
        }
    }

    /**
     * Goes over a text with quotes, if it is the one expected.
     *
     * @param expected a text as {@link Keys#plain} has them
     * @return whether it was
     */
    boolean skip(byte[] expected) {
        int length = expected.length;
        int end = at + length;
        if (end > in.length || in[end - 1] != '"') {
            return false;
        }
        if (length < 8) {
            for (int i = 1; i < length; i++) {
                if (in[at + i] != expected[i]) {
                    return false;
                }
            }
        } else {
            for (int i = 0; i < length - 8; i += 8) {
                if ((long) EIGHT.get(in, at + i) != (long) EIGHT.get(expected, i)) {
                    return false;
                }
            }
            if ((long) EIGHT.get(in, end - 8) != (long) EIGHT.get(expected, length - 8)) {
                return false;
            }
        }
        at = end;
        return true;
    }

    /** Returns a text without its quotes. */
    String text() throws NotPlain {
        int from = at + 1;
        int i = from;
        while (i + 8 <= in.length) {
            long special = special((long) EIGHT.get(in, i));
            i += Long.numberOfTrailingZeros(special) >>> 3;
            if (special != 0) {
                break;
            }
        }
        while (i < in.length && in[i] >= ' ' && in[i] != '"' && in[i] != '\\' && in[i] != 0x7F) {
            i++;
        }
        if (i < in.length && in[i] == '"') {
            at = i + 1;
            return texts.text(from, i);
        }
        return rareText(from);
    }

    /**
     * Finds the first of eight bytes that may not just be taken into a text: a quote, a backslash,
     * or what is no printable ASCII. The lowest bit set in the result lies in that byte; bits above
     * it mean nothing.
     */
    private static long special(long eight) {
        long quote = eight ^ 0x2222222222222222L;
        long escape = eight ^ 0x5C5C5C5C5C5C5C5CL;
        long delete = eight ^ 0x7F7F7F7F7F7F7F7FL;
        long ones = 0x0101010101010101L;
        // a byte of a difference goes below zero here if it was zero, and a byte of text if it was
        // below a blank
        long below =
                ((quote - ones) & ~quote)
                        | ((escape - ones) & ~escape)
                        | ((delete - ones) & ~delete)
                        | (eight - EIGHT_BLANKS)
                        | eight;
        return below & 0x8080808080808080L;
    }

    /** Reads a text with characters beyond ASCII, or with the usual escapes. */
    private String rareText(int from) throws NotPlain {
        at = from;
        StringBuilder out = new StringBuilder();
        while (at < in.length && in[at] != '"') {
            if (in[at] == '\\') {
                int which = at + 1 < in.length ? "\"\\/bfnrt".indexOf(in[at + 1]) : -1;
                if (which < 0) {
                    throw new NotPlain();
                }
                out.append("\"\\/\b\f\n\r\t".charAt(which));
                at += 2;
            } else {
                int begin = at;
                while (at < in.length && in[at] != '"' && in[at] != '\\') {
                    at++;
                }
                String run = new String(in, begin, at - begin, StandardCharsets.UTF_8);
                if (Trees.strange(run)) {
                    throw new NotPlain();
                }
                out.append(run);
                lineStart += at - begin - run.length();
            }
        }
        if (at == in.length) {
            throw new NotPlain();
        }
        at++;
        return out.toString();
    }
}
