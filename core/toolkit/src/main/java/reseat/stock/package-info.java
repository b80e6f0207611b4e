/**
 * The shop's own stock: its lines, what a plan needs from it, and reservations for jobs.
 *
 * <p>A plugin gives access to a stock through a {@link reseat.stock.StockSource}; opened, it is a
 * {@link reseat.stock.Stock}. {@link reseat.stock.StockItem}s are a snapshot of its lines.
 *
 * <p>{@link reseat.stock.Today} determines which repairs are possible; in single steps, {@link
 * reseat.stock.StockNeeds} determines what a plan needs, {@link reseat.stock.Availability} what is
 * available, and its picks make a {@link reseat.stock.Reservation.Request}.
 */
@NullMarked
package reseat.stock;

import org.jspecify.annotations.NullMarked;
