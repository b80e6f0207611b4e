/**
 * Loads plugins: finds them, reads their descriptions, gives each its own layer, and validates what
 * they contribute.
 */
@NullMarked
package reseat.internal.loader;

import org.jspecify.annotations.NullMarked;
