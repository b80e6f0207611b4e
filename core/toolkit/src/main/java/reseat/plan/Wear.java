package reseat.plan;

/**
 * A joint that may be made only so often.
 *
 * @param joint id of the joint
 * @param made how often it will have been made when the rebuild is done, factory included
 * @param rated how often its kind may be made
 */
public record Wear(String joint, int made, int rated) {

    /** Tells whether it will have been made more often than it may. */
    public boolean isSpent() {
        return made > rated;
    }
}
