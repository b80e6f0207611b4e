/**
 * How checks are run: the threads that run them, and what becomes of one that fails. Not exported.
 */
@NullMarked
package reseat.internal.check;

import org.jspecify.annotations.NullMarked;
