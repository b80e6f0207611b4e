package reseat.simulate;

import java.util.List;
import java.util.Optional;
import reseat.model.CostedAct;

/**
 * An act that was carried out.
 *
 * @param costed the act and its cost at its place; the parts of a move are in the order of the
 *     device file
 * @param departure how the parts of a move left; empty for a release and a prepare act
 * @param tethers joints by which the parts of a move still hang, in the order of the device file;
 *     empty unless they were laid aside
 * @param gave joints that let go by themselves as the parts of a move came away, in the order of
 *     the device file; their times are in those of the act
 * @param freed parts that nothing outside their place holds any more since this act: those of a
 *     move that lifts off, and those laid aside earlier whose last joint a release undid; in the
 *     order of the device file
 * @param notes warnings
 */
public record Step(
        CostedAct costed,
        Optional<Departure> departure,
        List<String> tethers,
        List<String> gave,
        List<String> freed,
        List<Note> notes) {

    public Step {
        tethers = List.copyOf(tethers);
        gave = List.copyOf(gave);
        freed = List.copyOf(freed);
        notes = List.copyOf(notes);
    }

    /** How parts leave their place. */
    public enum Departure {
        /** Unreleased joints still lead out of the moved parts. */
        LAID_ASIDE,
        /** Nothing holds the moved parts any more. */
        LIFTED_OFF
    }
}
