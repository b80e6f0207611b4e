package reseat.plan;

/**
 * A joint with a limited number of cycles.
 *
 * @param joint id of the joint
 * @param made how often it will have been made when the rebuild is done, factory included
 * @param rated rated number of cycles of its kind
 */
public record Wear(String joint, int made, int rated) {

    /** Returns whether it will exceed its rated cycles. */
    public boolean isSpent() {
        return made > rated;
    }
}
