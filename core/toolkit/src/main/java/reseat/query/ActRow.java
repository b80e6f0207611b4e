package reseat.query;

import java.util.List;
import java.util.Optional;
import reseat.model.Kind.Role;

/**
 * An act of a plan.
 *
 * @param index its place, counted from 0
 * @param id its stable id
 * @param kind what is done
 * @param subject id of the joint, of the first part or of the prepare act
 * @param pointer JSON Pointer for findings about this row
 * @param parts the parts that are moved, or that the joint holds
 * @param role role of the joint that is released
 * @param tool tool in hand
 * @param posture posture of the device
 * @param ms time of the act in milliseconds
 * @param setupMs set-up before it in milliseconds
 * @param live supplies that are not yet cut at this act
 * @param hazards ids of the hazards to report at it
 * @param handling other advice to print with it, each a sentence
 */
public record ActRow(
        int index,
        String id,
        Kind kind,
        String subject,
        String pointer,
        List<String> parts,
        Optional<Role> role,
        String tool,
        String posture,
        long ms,
        long setupMs,
        List<String> live,
        List<String> hazards,
        List<String> handling) {

    public ActRow {
        parts = List.copyOf(parts);
        live = List.copyOf(live);
        hazards = List.copyOf(hazards);
        handling = List.copyOf(handling);
    }

    /** What is done. */
    public enum Kind {
        PREPARE,
        RELEASE,
        MOVE
    }
}
