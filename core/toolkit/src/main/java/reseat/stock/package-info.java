/**
 * The shop's own stock: its lines, and reservations for jobs.
 *
 * <p>A plugin gives access to a stock through a {@link reseat.stock.StockSource}; opened, it is a
 * {@link reseat.stock.Stock}. {@link reseat.stock.StockItem}s are a snapshot of its lines.
 *
 * <p>A {@link reseat.stock.Reservation.Request} sets items aside for a job. What a plan needs of a
 * stock is compared by the plugin with the commands for the stock, in plugins/stock-desk.
 */
@NullMarked
package reseat.stock;

import org.jspecify.annotations.NullMarked;
