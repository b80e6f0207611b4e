/** Sealed handhelds: devices for one hand, tight against dust and water. */
@NullMarked
package reseat.handheld;

import org.jspecify.annotations.NullMarked;
