/**
 * Reads device files: text to located tree, tree to model, reporting every problem found.
 *
 * <p>The processing of a file: {@link reseat.internal.files.Sources} loads bytes within bounds,
 * {@link reseat.internal.files.Trees} parses YAML or JSON into one tree of {@link
 * reseat.internal.files.Node}s with locations, {@link reseat.internal.files.MergePatch} applies
 * variants and defaults, {@link reseat.internal.files.SeatTables} adds the rows of CSV files,
 * {@link reseat.internal.files.ShapeCheck} checks the tree against the description of the {@link
 * reseat.internal.files.Format}, {@link reseat.internal.files.Assembly} creates facts from it,
 * {@link reseat.internal.files.Soundness} and {@link reseat.internal.files.Reachability} check the
 * consistency of the facts.
 */
@NullMarked
package reseat.internal.files;

import org.jspecify.annotations.NullMarked;
