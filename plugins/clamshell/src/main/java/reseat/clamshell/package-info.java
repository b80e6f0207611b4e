/** Clamshells: devices with a lid on hinges, display inside. */
@NullMarked
package reseat.clamshell;

import org.jspecify.annotations.NullMarked;
