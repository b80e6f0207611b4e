package reseat.query;

import reseat.model.Joint;

/**
 * A joint that may be made only so often.
 *
 * @param joint id of the joint
 * @param pointer JSON Pointer of the fact that a finding would be about
 * @param name the name people use
 * @param kind id of its kind
 * @param made how often it has been made, factory included
 * @param rated how often its kind may be made
 * @param left how often it may still be made; negative where that is passed
 */
public record CycleRow(
        String joint, String pointer, String name, String kind, int made, int rated, int left) {

    /** Returns the row of a joint that has been made so often. */
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
