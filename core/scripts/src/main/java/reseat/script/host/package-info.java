/**
 * The script hosts: JavaScript in a sandbox, Java with approval, both against the exported toolkit.
 * Script files run in a separate process; see core/docs/script-safety.md.
 */
@NullMarked
package reseat.script.host;

import org.jspecify.annotations.NullMarked;
