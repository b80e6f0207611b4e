package reseat.model;

import java.util.Optional;

/**
 * A source of power.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 * @param of id of the part it comes from, such as a cell; empty for an adapter or a dock
 * @param first whether it is marked as one to cut before any work inside the device
 */
public record Supply(String id, String name, Optional<String> of, boolean first) {

    /** Creates a supply that comes from outside the device and is not marked. */
    public Supply(String id, String name) {
        this(id, name, Optional.empty(), false);
    }
}
