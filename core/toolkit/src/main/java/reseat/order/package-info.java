/**
 * Puts fixed acts into the cheapest order that keeps every "before" (the sequential ordering
 * problem).
 *
 * <p>An {@link reseat.order.OrderProblem} holds what following one act by another costs and which
 * act must come before which; {@link reseat.order.OrderSolver} returns an order, a lower bound that
 * is a real one, and whether the two meet. The package knows nothing of devices. {@link
 * reseat.order.SopFiles} reads the published test instances.
 */
@NullMarked
package reseat.order;

import org.jspecify.annotations.NullMarked;
