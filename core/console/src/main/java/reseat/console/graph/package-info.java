/** The step graph as text, and in the language of Graphviz. */
@NullMarked
package reseat.console.graph;

import org.jspecify.annotations.NullMarked;
