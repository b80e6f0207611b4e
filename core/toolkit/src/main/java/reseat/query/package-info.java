/**
 * Questions to a device and to a plan, answered in bulk: each answer is a list of rows, so that
 * checks and scripts rarely walk over seats themselves.
 *
 * <p>{@link reseat.query.DeviceFacts} and {@link reseat.query.PlanFacts} answer; a row is a record
 * with the {@code pointer} that a finding about it would take. Rows are computed when they are
 * asked for, once, and never change.
 */
@NullMarked
package reseat.query;

import org.jspecify.annotations.NullMarked;
