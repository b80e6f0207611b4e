/** A shop's spreadsheet, saved as CSV, as a stock; reservations are in a journal next to it. */
@NullMarked
package reseat.stock.csv;

import org.jspecify.annotations.NullMarked;
