/**
 * The shop's own stock: what there is, what a plan needs of it, and taking it for a job.
 *
 * <p>A plugin gives access to a stock by a {@link reseat.stock.StockSource}; opened, it is a {@link
 * reseat.stock.Stock}. {@link reseat.stock.StockItem}s are what is seen of it at one moment.
 */
@NullMarked
package reseat.stock;

import org.jspecify.annotations.NullMarked;
