/**
 * The step graph: what must come before what, computed from the facts of a device. Facts are the OR
 * nodes (a joint released, two parts apart, a supply cut), steps the AND nodes (a way to release, a
 * part that goes), and all that every way needs is known exactly as far as the graph tells it.
 */
@NullMarked
package reseat.graph;

import org.jspecify.annotations.NullMarked;
