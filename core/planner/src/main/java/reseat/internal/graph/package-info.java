/**
 * The facts of a device as numbers, and what every way to a goal needs. Internal: shared by step
 * graph and planner.
 */
@NullMarked
package reseat.internal.graph;

import org.jspecify.annotations.NullMarked;
