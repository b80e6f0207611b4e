/**
 * How numbers, times, lists, tables and JSON are written, in one place, so that every message,
 * sheet and report writes them the same way; and how tables of text are read. Knows nothing of
 * ours; anything may use it.
 */
@NullMarked
package reseat.text;

import org.jspecify.annotations.NullMarked;
