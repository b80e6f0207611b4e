/** Plans as pages and tables: a work sheet to print, a list of needs. */
@NullMarked
package reseat.sheets;

import org.jspecify.annotations.NullMarked;
