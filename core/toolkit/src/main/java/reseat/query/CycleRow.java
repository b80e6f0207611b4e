package reseat.query;

import reseat.model.Joint;

/**
 * A joint with a limited number of cycles.
 *
 * @param joint id of the joint
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param kind id of its kind
 * @param made how often it has been made, factory included
 * @param rated rated number of cycles of its kind
 * @param left how often it may still be made; negative if the limit is exceeded
 */
public record CycleRow(
        String joint, String pointer, String name, String kind, int made, int rated, int left) {

    /** Returns the row of a joint with a number of cycles made. */
    static CycleRow of(Joint joint, int made, int rated) {
        return new CycleRow(
                joint.id(),
                "/joints/" + joint.id(),
                joint.name(),
                joint.kind(),
                made,
                rated,
                rated - made);
    }
}
