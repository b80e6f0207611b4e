/**
 * Finds the cheapest order of fixed acts that respects every precedence (the sequential ordering
 * problem).
 *
 * <p>An {@link reseat.internal.order.OrderProblem} holds what following one act by another costs
 * and which act must come before which; {@link reseat.internal.order.OrderSolver} returns an order,
 * a valid lower bound, and whether the two meet. The package is independent of devices.
 */
@NullMarked
package reseat.internal.order;

import org.jspecify.annotations.NullMarked;
