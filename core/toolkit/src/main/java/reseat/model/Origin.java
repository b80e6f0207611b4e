package reseat.model;

/**
 * Where a fact was read.
 *
 * @param file the file as the user named it; never empty
 * @param line line, counted from 1; 0 where the whole file is meant
 * @param column column, counted from 1; 0 where the whole line is meant
 */
public record Origin(String file, int line, int column) implements Comparable<Origin> {

    /** The origin of facts that were created in memory, not read from a file. */
    public static final Origin MEMORY = new Origin("(memory)", 0, 0);

    public Origin {
        if (file.isEmpty()) {
            throw new IllegalArgumentException("an origin must name a file");
        }
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException(
                    "line and column are counted from 1: " + line + ":" + column);
        }
    }

    @Override
    public int compareTo(Origin other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    /** Returns {@code file:line:column}, leaving out what is not known. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
