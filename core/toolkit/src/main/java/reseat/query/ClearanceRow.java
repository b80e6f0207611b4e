package reseat.query;

import java.util.Optional;
import reseat.model.Kind;

/**
 * A screw and a part behind its seat.
 *
 * @param joint id of the joint
 * @param pointer JSON Pointer for findings about this row
 * @param type id of the screw type
 * @param lengthMm length of the screw in millimetres
 * @param part id of the part behind
 * @param name its name
 * @param role role of that part, if the toolkit computes with it
 * @param clearanceMm distance from the tip to it in millimetres; negative where the tip is in it
 */
public record ClearanceRow(
        String joint,
        String pointer,
        String type,
        double lengthMm,
        String part,
        String name,
        Optional<Kind.Role> role,
        double clearanceMm) {}
