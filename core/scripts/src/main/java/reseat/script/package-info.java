/**
 * The scripting API: devices, tables, plans, checks and stock under short names, the same in every
 * language.
 *
 * <p>The {@link reseat.script.Bench} is its entry point; its public methods are the functions that
 * a script calls by name.
 */
@NullMarked
package reseat.script;

import org.jspecify.annotations.NullMarked;
