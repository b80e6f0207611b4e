/** Slates: flat devices with a display on the whole front. */
@NullMarked
package reseat.slate;

import org.jspecify.annotations.NullMarked;
