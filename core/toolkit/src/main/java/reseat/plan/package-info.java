/** Plans: requests, results, and the rebuild of a plan. */
@NullMarked
package reseat.plan;

import org.jspecify.annotations.NullMarked;
