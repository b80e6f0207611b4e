/** Sealed handhelds: devices for one hand, sealed against dust and water. */
@NullMarked
package reseat.handheld;

import org.jspecify.annotations.NullMarked;
