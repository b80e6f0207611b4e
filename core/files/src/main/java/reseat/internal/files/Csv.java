package reseat.internal.files;

import java.util.ArrayList;
import java.util.List;
import reseat.model.Origin;

/**
 * Splits CSV (RFC 4180) into cells with their locations. Common libraries report the line of a row
 * at best, which is not enough to find one cell among eighty screws.
 */
final class Csv {

    private final String name;
    private final String text;
    private final char separator;
    private int at;
    private int line = 1;
    private int lineStart;

    private Csv(String name, String text) {
        this.name = name;
        this.text = text;
        this.separator = separator(text);
    }

    /**
     * A cell.
     *
     * @param at where it begins
     * @param text its text, without quotes and surrounding spaces
     */
    record Cell(Origin at, String text) {}

    /**
     * Splits a text.
     *
     * @param name name of the file, for places
     * @param text the text; lines end as on any system
     * @return the rows that are not blank; a comma, semicolon or tab separates, whichever the first
     *     row has most of
     * @throws TreeException if a quote is not closed, or text follows a closed one
     */
    static List<List<Cell>> rows(String name, String text) throws TreeException {
        Csv csv = new Csv(name, text);
        List<List<Cell>> rows = new ArrayList<>();
        long cells = 0;
        while (csv.at < text.length()) {
            List<Cell> row = csv.row();
            cells += row.size();
            if (cells > TreeBuilder.VALUES) {
                throw new TreeException(
                        row.get(0).at(),
                        "the table has more than " + TreeBuilder.VALUES + " cells");
            }
            if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static char separator(String text) {
        int end = 0;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        String header = text.substring(0, end);
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

    private List<Cell> row() throws TreeException {
        List<Cell> row = new ArrayList<>();
        while (true) {
            row.add(cell());
            if (at < text.length() && text.charAt(at) == separator) {
                at++;
            } else {
                lineEnd();
                return row;
            }
        }
    }

    private void lineEnd() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
        lineStart = at;
    }

    private Cell cell() throws TreeException {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        Origin begin = place();
        if (at < text.length() && text.charAt(at) == '"') {
            return new Cell(begin, quoted(begin));
        }
        int from = at;
        while (at < text.length() && !endsCell(text.charAt(at))) {
            at++;
        }
        return new Cell(begin, text.substring(from, at).strip());
    }

    private String quoted(Origin begin) throws TreeException {
        StringBuilder out = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                out.append(c);
                if (c == '\n') {
                    line++;
                    lineStart = at;
                }
            } else if (at < text.length() && text.charAt(at) == '"') {
                out.append('"');
                at++;
            } else {
                while (at < text.length() && text.charAt(at) == ' ') {
                    at++;
                }
                if (at < text.length() && !endsCell(text.charAt(at))) {
                    throw new TreeException(
                            place(), "unexpected text after the closing quote of this cell");
                }
                return out.toString().strip();
            }
        }
        throw new TreeException(begin, "this quote is never closed");
    }

    private boolean endsCell(char c) {
        return c == separator || c == '\n' || c == '\r';
    }

    private Origin place() {
        return new Origin(name, line, text.codePointCount(lineStart, at) + 1);
    }
}
