package reseat.sheet;

/**
 * A line of a sheet with a label.
 *
 * @param label the label; empty where the line goes on with that of the line before
 * @param text what it says
 */
public record Entry(String label, String text) {}
