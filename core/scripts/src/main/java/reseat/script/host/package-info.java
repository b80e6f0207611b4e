/**
 * The hosts of scripts: JavaScript in a sandbox, Java by consent, both against the exported
 * toolkit. Scripts that are files run in a process of their own; see core/docs/script-safety.md.
 */
@NullMarked
package reseat.script.host;

import org.jspecify.annotations.NullMarked;
