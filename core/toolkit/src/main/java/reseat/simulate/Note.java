package reseat.simulate;

import java.util.List;

/**
 * A warning about an act. The act is still allowed.
 *
 * @param kind the kind of warning
 * @param joints ids of the joints that it is about, in the order of the device file
 * @param sentence the risk and what to do
 */
public record Note(Kind kind, List<String> joints, String sentence) {

    public Note {
        joints = List.copyOf(joints);
    }

    /** The kind of a warning. */
    public enum Kind {
        /** The posture changes while a part laid aside hangs by a joint. */
        TURNED_WHILE_HANGING,
        /**
         * The posture changes while released screws may still be in the holes of parts in place.
         */
        TURNED_WITH_LOOSE_SCREWS
    }
}
