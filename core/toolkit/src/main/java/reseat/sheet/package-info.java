/**
 * The work sheet of a plan as a value. It is computed once, by {@link reseat.sheet.Sheet#of};
 * renderers (terminal, HTML, PDF, drawings) only lay it out.
 *
 * <p>Texts are English sentences or parts of sentences, without markup. Numbers and units are
 * joined by no-break spaces (U+00A0). Times are whole milliseconds.
 */
@NullMarked
package reseat.sheet;

import org.jspecify.annotations.NullMarked;
