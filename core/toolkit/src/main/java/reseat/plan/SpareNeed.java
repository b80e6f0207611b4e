package reseat.plan;

import java.util.Optional;

/**
 * Something to have in stock before the device is opened.
 *
 * @param id id of the part or of the screw type
 * @param name display name
 * @param number order number; empty if none is known
 * @param count how many
 * @param reason why it is needed
 */
public record SpareNeed(String id, String name, Optional<String> number, int count, Reason reason) {

    /** Why a spare is needed. */
    public enum Reason {
        /** The plan takes it off; needed if it is replaced. */
        TARGET,
        /** The work destroys it. */
        RUINED,
        /** A screw with a locking patch, which holds only once. */
        LOCKING_PATCH
    }
}
