/** Loads plugins: finds them, looks at what they say, gives each its own layer, and doubts it. */
@NullMarked
package reseat.internal.spi;

import org.jspecify.annotations.NullMarked;
