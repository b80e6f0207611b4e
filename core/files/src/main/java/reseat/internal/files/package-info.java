/**
 * Reads device files: text to located tree, tree to model, with every problem on the way.
 *
 * <p>The way of a file: {@link reseat.internal.files.Sources} loads bytes within bounds, {@link
 * reseat.internal.files.Trees} parses YAML or JSON into one tree of {@link
 * reseat.internal.files.Node}s that know their places, {@link reseat.internal.files.MergePatch}
 * applies variants and defaults, {@link reseat.internal.files.SeatTables} adds the rows of CSV
 * files, {@link reseat.internal.files.ShapeCheck} holds the tree against the one description of the
 * {@link reseat.internal.files.Format}, {@link reseat.internal.files.Assembly} makes facts of it,
 * {@link reseat.internal.files.Soundness} and {@link reseat.internal.files.Reachability} look at
 * what the facts mean.
 */
@NullMarked
package reseat.internal.files;

import org.jspecify.annotations.NullMarked;
