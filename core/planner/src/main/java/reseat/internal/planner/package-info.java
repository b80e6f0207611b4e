/** The planner's algorithms. Closed. */
@NullMarked
package reseat.internal.planner;

import org.jspecify.annotations.NullMarked;
