/** The planner's algorithms. Closed. */
@NullMarked
package reseat.internal.plan;

import org.jspecify.annotations.NullMarked;
