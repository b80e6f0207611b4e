/** A shop's spreadsheet, saved as CSV, as a stock; reservations lie in a journal beside it. */
@NullMarked
package reseat.stock.csv;

import org.jspecify.annotations.NullMarked;
