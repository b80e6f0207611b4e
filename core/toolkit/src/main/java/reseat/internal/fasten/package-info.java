/** Implementation of the fastener computations. Not exported. */
@NullMarked
package reseat.internal.fasten;

import org.jspecify.annotations.NullMarked;
