package reseat.plan;

import java.util.Optional;

/**
 * Something to have in stock before the device is opened.
 *
 * @param id id of the part or of the screw type
 * @param name the name people use
 * @param number the number it is ordered by; empty where it is not sold
 * @param count how many
 * @param reason why it is needed
 */
public record SpareNeed(String id, String name, Optional<String> number, int count, Reason reason) {

    /** Why a spare is needed. */
    public enum Reason {
        /** It is what the plan takes off; needed if it is replaced. */
        TARGET,
        /** The work destroys it. */
        RUINED,
        /** A screw whose locking patch one use spends. */
        LOCKING_PATCH
    }
}
