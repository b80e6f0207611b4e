/** Computes sheets from plans. Closed; {@link reseat.sheet} says what comes out. */
@NullMarked
package reseat.internal.sheet;

import org.jspecify.annotations.NullMarked;
