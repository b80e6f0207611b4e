/** Jobs: one plan carried out on one unit, and what is known about that unit. */
@NullMarked
package reseat.job;

import org.jspecify.annotations.NullMarked;
