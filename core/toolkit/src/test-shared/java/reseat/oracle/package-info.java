/**
 * A second opinion for tests: the rules of the model written again over bit masks, exhaustive
 * search over them, and random devices to search. Shares no code with simulator, step graph or
 * planner.
 */
@NullMarked
package reseat.oracle;

import org.jspecify.annotations.NullMarked;
