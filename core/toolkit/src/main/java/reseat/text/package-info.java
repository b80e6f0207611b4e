/**
 * How numbers, times, lists, tables and JSON are written, in one place, so that every message,
 * sheet and report writes them the same way. It depends on nothing else of Reseat.
 */
@NullMarked
package reseat.text;

import org.jspecify.annotations.NullMarked;
