package reseat.sheet;

/**
 * A line of a sheet with a label.
 *
 * @param label the label; empty if the line continues the previous one
 * @param text what it says
 */
public record Entry(String label, String text) {}
