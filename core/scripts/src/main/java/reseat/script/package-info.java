/**
 * What a person who scripts finds on the bench: devices, tables, plans, checks and stock by short
 * names, the same in every language.
 *
 * <p>The {@link reseat.script.Bench} is what the console puts there; its public methods are the
 * functions that a script calls by name.
 */
@NullMarked
package reseat.script;

import org.jspecify.annotations.NullMarked;
