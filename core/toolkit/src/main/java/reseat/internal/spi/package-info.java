/** How the description of a plugin is found and compared with the version of the interface. */
@NullMarked
package reseat.internal.spi;

import org.jspecify.annotations.NullMarked;
