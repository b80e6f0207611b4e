package reseat.query;

import java.util.List;

/**
 * A screw that a variant changes.
 *
 * @param variant id of the variant
 * @param joint id of the joint
 * @param pointer JSON Pointer for findings about this row
 * @param change what the variant does to it
 * @param baseType id of the screw type in the base device; empty if it has none there
 * @param variantType id of the screw type in the variant; empty if it has none there
 * @param differences what differs between the two screws, each as a sentence part
 * @param alike whether a person can confuse the two
 */
public record VariantScrewRow(
        String variant,
        String joint,
        String pointer,
        Change change,
        String baseType,
        String variantType,
        List<String> differences,
        boolean alike) {

    public VariantScrewRow {
        differences = List.copyOf(differences);
    }

    /** What a variant does to a screw. */
    public enum Change {
        /** The variant has a screw where the base device has none. */
        ADDED,
        /** The variant has no screw where the base device has one. */
        LEFT_OUT,
        /** Another screw, or the same type with other measures. */
        ANOTHER
    }
}
