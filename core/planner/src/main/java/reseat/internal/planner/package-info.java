/** The planner's algorithms. Internal. */
@NullMarked
package reseat.internal.planner;

import org.jspecify.annotations.NullMarked;
