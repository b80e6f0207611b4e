/** What every area needs to word its messages. Closed; knows nothing of ours. */
@NullMarked
package reseat.internal.text;

import org.jspecify.annotations.NullMarked;
