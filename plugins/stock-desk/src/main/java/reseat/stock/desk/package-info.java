/**
 * The commands for the shop's stock: list, reserve, use, and what can be done today.
 *
 * <p>{@link reseat.stock.desk.Today} determines which repairs are possible; in single steps, {@link
 * reseat.stock.desk.StockNeeds} determines what a plan needs, {@link
 * reseat.stock.desk.Availability} what is available, and its picks make a {@link
 * reseat.stock.Reservation.Request}.
 */
package reseat.stock.desk;
