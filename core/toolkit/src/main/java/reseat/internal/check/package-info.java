/** The checks that ship, one class each or a few that share their facts. Not exported. */
@NullMarked
package reseat.internal.check;

import org.jspecify.annotations.NullMarked;
