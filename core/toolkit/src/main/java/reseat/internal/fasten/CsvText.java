package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.List;
import reseat.model.Origin;

/**
 * CSV text split into cells with their locations. Comma, semicolon or tab, whichever the header row
 * has most of; cells may be quoted (RFC 4180); lines that start with # are comments; a byte order
 * mark is ignored.
 */
final class CsvText {

    /** One cell. */
    record Cell(String text, Origin at) {}

    private final String file;
    private final String text;
    private final List<List<Cell>> rows = new ArrayList<>();
    private int position;
    private int line = 1;
    private int lineStart;
    private char separator;

    private CsvText(String file, String text) {
        this.file = file;
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    static List<List<Cell>> parse(String file, String text) {
        CsvText csv = new CsvText(file, text);
        csv.run();
        return csv.rows;
    }

    private void run() {
        while (position < text.length()) {
            int end = lineEnd();
            String whole = text.substring(position, end);
            if (whole.isBlank() || whole.startsWith("#")) {
                position = end;
                newLine();
            } else {
                if (separator == 0) {
                    separator = guess(whole);
                }
                rows.add(row());
            }
        }
    }

    private List<Cell> row() {
        List<Cell> cells = new ArrayList<>();
        do {
            Origin at = new Origin(file, line, position - lineStart + 1);
            cells.add(new Cell(cell().strip(), at));
        } while (next(separator));
        newLine();
        return cells;
    }

    private String cell() {
        if (position < text.length() && text.charAt(position) == '"') {
            return quoted();
        }
        int from = position;
        while (position < text.length()
                && text.charAt(position) != separator
                && !isLineEnd(text.charAt(position))) {
            position++;
        }
        return text.substring(from, position);
    }

    private String quoted() {
        StringBuilder cell = new StringBuilder();
        position++;
        while (position < text.length()) {
            char c = text.charAt(position++);
            if (c == '"' && !next('"')) {
                break;
            }
            if (c == '\n') {
                line++;
                lineStart = position;
            }
            cell.append(c);
        }
        while (position < text.length()
                && text.charAt(position) != separator
                && !isLineEnd(text.charAt(position))) {
            position++;
        }
        return cell.toString();
    }

    private boolean next(char wanted) {
        if (position < text.length() && text.charAt(position) == wanted) {
            position++;
            return true;
        }
        return false;
    }

    private void newLine() {
        next('\r');
        next('\n');
        line++;
        lineStart = position;
    }

    private int lineEnd() {
        int end = position;
        while (end < text.length() && !isLineEnd(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }

    private static char guess(String header) {
        char best = ',';
        long most = -1;
        for (char candidate : new char[] {',', ';', '\t'}) {
            long count = header.chars().filter(c -> c == candidate).count();
            if (count > most) {
                most = count;
                best = candidate;
            }
        }
        return best;
    }
}
