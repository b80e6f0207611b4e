/** Computes sheets from plans. Internal; {@link reseat.sheet} documents the result. */
@NullMarked
package reseat.internal.sheet;

import org.jspecify.annotations.NullMarked;
