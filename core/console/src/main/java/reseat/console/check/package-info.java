/** Runs checks: the threads that run them, what becomes of one that fails, and known findings. */
@NullMarked
package reseat.console.check;

import org.jspecify.annotations.NullMarked;
