/**
 * The shop's own stock: what there is, what a plan needs of it, and taking it for a job.
 *
 * <p>A plugin gives access to a stock by a {@link reseat.stock.StockSource}; opened, it is a {@link
 * reseat.stock.Stock}. {@link reseat.stock.StockItem}s are what is seen of it at one moment.
 *
 * <p>{@link reseat.stock.Today} answers what can be done with it; in steps, {@link
 * reseat.stock.StockNeeds} says what a plan needs, {@link reseat.stock.Availability} what there is
 * of it, and its picks make a {@link reseat.stock.Reservation.Request}.
 */
@NullMarked
package reseat.stock;

import org.jspecify.annotations.NullMarked;
