/** Plans: what to ask for, what comes back, and the rebuild that belongs to it. */
@NullMarked
package reseat.plan;

import org.jspecify.annotations.NullMarked;
