/**
 * The work sheet of a plan as a value. It is computed once, by {@link reseat.sheet.Sheet#of}; a
 * renderer lays it out (terminal, HTML, PDF, drawings) and computes nothing.
 *
 * <p>Texts are English sentences or parts of sentences, without markup. Measures within them are
 * joined by no-break spaces (U+00A0). Times are whole milliseconds.
 */
@NullMarked
package reseat.sheet;

import org.jspecify.annotations.NullMarked;
