/** Plans as pages and tables: a work sheet to print, a list of what to have in stock. */
@NullMarked
package reseat.sheets;

import org.jspecify.annotations.NullMarked;
