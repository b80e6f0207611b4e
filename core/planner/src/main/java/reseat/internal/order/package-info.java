/**
 * Puts fixed acts into the cheapest order that keeps every "before" (the sequential ordering
 * problem).
 *
 * <p>An {@link reseat.internal.order.OrderProblem} holds what following one act by another costs
 * and which act must come before which; {@link reseat.internal.order.OrderSolver} returns an order,
 * a lower bound that is a real one, and whether the two meet. The package knows nothing of devices.
 */
@NullMarked
package reseat.internal.order;

import org.jspecify.annotations.NullMarked;
