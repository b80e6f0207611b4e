/**
 * Times from published elements: Basic MOST index strings, the index card, and service worksheets.
 *
 * <p>{@link reseat.internal.time.IndexString} adds up an index string and gives a {@link
 * reseat.model.Duration}; {@link reseat.internal.time.Card} is the card as data, each row marked as
 * read or remembered; {@link reseat.internal.time.Worksheet} adds up a service worksheet in time
 * and labour; {@link reseat.internal.time.PrintedSheet} recomputes a printed sheet.
 *
 * <p>1 TMU = 0.036 s = 36 ms; an index stands for 10 TMU. All sums are exact: whole milliseconds,
 * or decimal numbers as printed.
 */
@NullMarked
package reseat.internal.time;

import org.jspecify.annotations.NullMarked;
