package reseat.simulate;

import java.util.List;

/**
 * A warning that belongs to an act. The act is allowed all the same.
 *
 * @param kind what it warns of
 * @param joints ids of the joints that it is about, in the order of the device file
 * @param sentence what to look out for and what to do
 */
public record Note(Kind kind, List<String> joints, String sentence) {

    public Note {
        joints = List.copyOf(joints);
    }

    /** What a note warns of. */
    public enum Kind {
        /** The posture changes while a part laid aside hangs by a joint. */
        TURNED_WHILE_HANGING,
        /**
         * The posture changes while released screws may still stand in the holes of parts that lie
         * in place.
         */
        TURNED_WITH_LOOSE_SCREWS
    }
}
