package reseat.internal.order;

import java.io.IOException;
import java.io.InputStream;

/** Cuts a stream into words and lines, knows the line, and holds no more than one of them. */
final class SopTokens {

    private static final int LONGEST_WORD = 40;
    private static final int LONGEST_LINE = 2000;

    private final String file;
    private final InputStream in;
    private final long mostBytes;
    private long bytes;
    private int next = -2;
    private int lines = 1;
    private int line = 1;

    SopTokens(String file, InputStream in, long mostBytes) {
        this.file = file;
        this.in = in;
        this.mostBytes = mostBytes;
    }

    /** The line of the last word. */
    int line() {
        return line;
    }

    SopFormatException fault(String what) {
        return new SopFormatException(file, line, what);
    }

    /** Looks at the next character that is no white space; -1 at the end. */
    int look() throws IOException {
        while (peek() >= 0 && peek() <= ' ') {
            take();
        }
        line = lines;
        return peek();
    }

    /** Reads a word; empty at the end. */
    String word() throws IOException {
        look();
        StringBuilder word = new StringBuilder();
        while (peek() > ' ') {
            word.append((char) take());
            if (word.length() > LONGEST_WORD) {
                throw fault("expected a number, found '" + printable(word) + "...'");
            }
        }
        return printable(word);
    }

    /** Reads the rest of the line, without white space around it. */
    String restOfLine() throws IOException {
        line = lines;
        StringBuilder rest = new StringBuilder();
        while (peek() >= 0 && peek() != '\n') {
            rest.append((char) take());
            if (rest.length() > LONGEST_LINE) {
                throw fault("the line is longer than " + LONGEST_LINE + " characters");
            }
        }
        return printable(rest).strip();
    }

    /** Tells whether nothing but white space is left of the line. */
    boolean atEndOfLine() throws IOException {
        while (peek() >= 0 && peek() <= ' ' && peek() != '\n') {
            take();
        }
        return peek() < 0 || peek() == '\n';
    }

    private int peek() throws IOException {
        if (next == -2) {
            next = in.read();
            if (++bytes > mostBytes) {
                line = lines;
                throw fault("the file is larger than " + mostBytes + " bytes");
            }
        }
        return next;
    }

    private int take() throws IOException {
        int taken = peek();
        next = -2;
        if (taken == '\n') {
            lines++;
        }
        return taken;
    }

    private static String printable(CharSequence text) {
        StringBuilder clean = new StringBuilder();
        text.chars()
                .forEach(
                        c -> clean.append(Character.isISOControl(c) && c != '\t' ? '?' : (char) c));
        return clean.toString();
    }
}
