/**
 * The step graph: what must come before what, computed from the facts of a device. Facts are the OR
 * nodes (a joint released, two parts apart, a supply cut), steps the AND nodes (a way to release, a
 * part that goes), and the needs of every way are exact within this relaxation.
 */
@NullMarked
package reseat.graph;

import org.jspecify.annotations.NullMarked;
