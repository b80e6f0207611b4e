/**
 * Bulk queries on devices and plans: each answer is a list of rows, so that checks and scripts
 * rarely iterate over seats themselves.
 *
 * <p>{@link reseat.query.DeviceFacts} and {@link reseat.query.PlanFacts} are the entry points. A
 * row is a record with the {@code pointer} for findings about it. Rows are computed once, on first
 * use, and never change.
 */
@NullMarked
package reseat.query;

import org.jspecify.annotations.NullMarked;
