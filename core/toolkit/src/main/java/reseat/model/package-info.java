/**
 * The facts of a device and the vocabulary built on them.
 *
 * <p>A {@link reseat.model.Device} states physical facts and never an order. {@link
 * reseat.model.Act}, {@link reseat.model.Goal}, {@link reseat.model.State} and {@link
 * reseat.model.SetupTable} are the vocabulary that the step graph, the planner and the simulator
 * share; this package depends on none of them. Everything here is immutable, holds its collections
 * in a defined order, and safe to share between threads.
 *
 * <p>Units: lengths in millimetres, torques in newton metres, times in whole milliseconds; the unit
 * is in the name of every bare number.
 */
@NullMarked
package reseat.model;

import org.jspecify.annotations.NullMarked;
