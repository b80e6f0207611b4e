/** A shop's database as a stock, through JDBC. */
@NullMarked
package reseat.stock.sql;

import org.jspecify.annotations.NullMarked;
