package reseat.text;

import java.util.ArrayList;
import java.util.List;

/**
 * CSV (RFC 4180) split into cells that know their place. The common libraries tell the line of a
 * row at best, and a place is what a person needs who looks for one cell among eighty screws.
 */
public final class CsvText {

    /** More is no table that a person keeps. */
    static final int MOST_CELLS = 500_000;

    private final String text;
    private char separator;
    private int at;
    private int line = 1;
    private int lineStart;
    private int cells;

    private CsvText(String text) {
        this.text = text;
        this.at = text.startsWith("\uFEFF") ? 1 : 0;
        this.lineStart = at;
    }

    /**
     * A cell.
     *
     * @param line line on which it begins, from 1
     * @param column column in which it begins, from 1
     * @param text its text, without quotes and without blanks around it
     */
    public record Cell(int line, int column, String text) {}

    /**
     * Splits a text. A comma, semicolon or tab separates, whichever the first row has most of;
     * cells may be quoted; lines that begin with # are comments; a byte order mark is passed over.
     *
     * @param text the text; lines end as on any system
     * @return the rows that are not blank
     * @throws CsvException if a quote is not closed, something follows a closed one, or there are
     *     more than half a million cells
     */
    public static List<List<Cell>> rows(String text) throws CsvException {
        CsvText csv = new CsvText(text);
        List<List<Cell>> rows = new ArrayList<>();
        while (csv.at < text.length()) {
            if (csv.passesOver()) {
                continue;
            }
            List<Cell> row = csv.row();
            if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Goes over a line that is blank or a comment; of the first other one takes the separator. */
    private boolean passesOver() {
        int end = at;
        while (end < text.length() && !endsLine(text.charAt(end))) {
            end++;
        }
        String whole = text.substring(at, end);
        if (whole.isBlank() || whole.startsWith("#")) {
            at = end;
            lineEnd();
            return true;
        }
        if (separator == 0) {
            separator = separator(whole);
        }
        return false;
    }

    private static char separator(String header) {
        char best = ',';
        for (char each : new char[] {';', '\t'}) {
            if (count(header, each) > count(header, best)) {
                best = each;
            }
        }
        return best;
    }

    private static long count(String header, char wanted) {
        return header.chars().filter(c -> c == wanted).count();
    }

    private List<Cell> row() throws CsvException {
        List<Cell> row = new ArrayList<>();
        do {
            row.add(cell());
        } while (next(separator));
        lineEnd();
        return row;
    }

    private void lineEnd() {
        next('\r');
        next('\n');
        line++;
        lineStart = at;
    }

    private Cell cell() throws CsvException {
        while (next(' ')) {
            // blanks before a cell are no part of it
        }
        int beginLine = line;
        int beginColumn = column();
        if (++cells > MOST_CELLS) {
            throw new CsvException(
                    beginLine, beginColumn, "the table has more than " + MOST_CELLS + " cells");
        }
        if (next('"')) {
            return new Cell(beginLine, beginColumn, quoted(beginLine, beginColumn));
        }
        int from = at;
        while (at < text.length() && !endsCell(text.charAt(at))) {
            at++;
        }
        return new Cell(beginLine, beginColumn, text.substring(from, at).strip());
    }

    private String quoted(int beginLine, int beginColumn) throws CsvException {
        StringBuilder out = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                out.append(c);
                if (c == '\n') {
                    line++;
                    lineStart = at;
                }
            } else if (next('"')) {
                out.append('"');
            } else {
                while (next(' ')) {
                    // blanks after the quote are no part of the cell
                }
                if (at < text.length() && !endsCell(text.charAt(at))) {
                    throw new CsvException(
                            line, column(), "something follows the closing quote of this cell");
                }
                return out.toString().strip();
            }
        }
        throw new CsvException(beginLine, beginColumn, "this quote is never closed");
    }

    private boolean next(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private boolean endsCell(char c) {
        return c == separator || endsLine(c);
    }

    private static boolean endsLine(char c) {
        return c == '\n' || c == '\r';
    }

    private int column() {
        return text.codePointCount(lineStart, at) + 1;
    }
}
