/**
 * Checks of devices, and the findings that they report.
 *
 * <p>A {@link reseat.check.Check} describes itself by its {@link reseat.check.CheckInfo} and is run
 * on a {@link reseat.check.CheckInput}; it reports {@link reseat.check.Finding}s. All checks come
 * with plugins. Everything here is immutable; a check keeps no state between runs.
 */
@NullMarked
package reseat.check;

import org.jspecify.annotations.NullMarked;
