/**
 * Finds the cheapest order of fixed acts that respects every precedence (the sequential ordering
 * problem).
 *
 * <p>An {@link reseat.internal.order.OrderProblem} holds what following one act by another costs
 * and which act must come before which; {@link reseat.internal.order.OrderSolver} returns an order,
 * a lower bound that is a real one, and whether the two meet. {@link
 * reseat.internal.order.RuledOrder} adds rules that leave a choice. The package knows nothing of
 * devices.
 *
 * <p>The planner's bounds on set-ups ({@code OrderBound} and what it is made of) stay apart: there
 * an item may be done in one of several classes at extra cost, so there is no cost of one item
 * after another. Limits are shared, and so is the insight that work which costs no set-up is done
 * at once.
 */
@NullMarked
package reseat.internal.order;

import org.jspecify.annotations.NullMarked;
