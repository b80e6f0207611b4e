/** Text utilities for messages. Internal; depends on nothing else of Reseat. */
@NullMarked
package reseat.internal.text;

import org.jspecify.annotations.NullMarked;
