/**
 * Times from published elements: Basic MOST index strings and the index card.
 *
 * <p>{@link reseat.internal.time.IndexString} adds up an index string and gives a {@link
 * reseat.model.Duration}; {@link reseat.internal.time.Card} is the card as data, each row marked as
 * read or remembered.
 *
 * <p>1 TMU = 0.036 s = 36 ms; an index stands for 10 TMU. All sums are exact, in whole
 * milliseconds.
 */
@NullMarked
package reseat.internal.time;

import org.jspecify.annotations.NullMarked;
