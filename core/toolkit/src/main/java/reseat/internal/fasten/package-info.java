/** How the fastener computations work inside. Not exported. */
@NullMarked
package reseat.internal.fasten;

import org.jspecify.annotations.NullMarked;
