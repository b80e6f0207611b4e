package reseat.stock.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lays out cells in columns. */
final class Table {

    private Table() {}

    /**
     * Returns the rows as lines, two spaces between columns.
     *
     * @param rows rows of as many cells each
     * @param right columns to align at the right, for numbers
     */
    public static List<String> of(List<List<String>> rows, int... right) {
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int at = column;
            widths.add(rows.stream().mapToInt(row -> width(row.get(at))).max().orElse(0));
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                String gap = " ".repeat(widths.get(column) - width(row.get(column)));
                boolean number = Arrays.binarySearch(right, column) >= 0;
                line.append(number ? gap + row.get(column) : row.get(column) + gap).append("  ");
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
