/**
 * Reads device files: text to located tree, tree to model, with every problem on the way.
 *
 * <p>The way of a file: {@link reseat.internal.read.Sources} loads bytes within bounds, {@link
 * reseat.internal.read.Trees} parses YAML or JSON into one tree of {@link
 * reseat.internal.read.Node}s that know their places, {@link reseat.internal.read.MergePatch}
 * applies variants and defaults, {@link reseat.internal.read.SeatTables} adds the rows of CSV
 * files, {@link reseat.internal.read.ShapeCheck} holds the tree against the one description of the
 * {@link reseat.internal.read.Format}, {@link reseat.internal.read.Assembly} makes facts of it,
 * {@link reseat.internal.read.Soundness} and {@link reseat.internal.read.Reachability} look at what
 * the facts mean.
 */
@NullMarked
package reseat.internal.read;

import org.jspecify.annotations.NullMarked;
