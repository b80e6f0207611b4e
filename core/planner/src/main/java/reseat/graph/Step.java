package reseat.graph;

import java.util.List;
import java.util.Optional;

/** A way to reach a fact: an AND node, possible when all of its conditions hold. */
public sealed interface Step {

    /** Returns its conditions; all of them must hold. */
    List<Condition> conditions();

    /** Returns whether it is possible at all. */
    Standing standing();

    /** Returns the id of the tool. */
    String tool();

    /** Returns the id of the posture. */
    String posture();

    /** Whether a step can be taken. */
    enum Standing {
        /** It may be taken. */
        OPEN,
        /** It needs the fact that it is to reach, so it reaches nothing. */
        POINTLESS,
        /** Nothing leads to it. */
        NEVER
    }

    /**
     * Joints that are alike are released by one of their ways.
     *
     * @param joints ids of the joints
     * @param way id of the way
     * @param tool id of the tool
     * @param posture id of the posture
     * @param costMs time and restore time of all of them together, in milliseconds
     * @param conditions what it needs
     * @param standing whether it can be taken
     */
    record ByWay(
            List<String> joints,
            String way,
            String tool,
            String posture,
            long costMs,
            List<Condition> conditions,
            Standing standing)
            implements Step {
        public ByWay {
            joints = List.copyOf(joints);
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * A part goes to a new place.
     *
     * @param part id of the part
     * @param without id of the part that stays behind; empty if it does not matter which parts do
     * @param tool id of the tool
     * @param posture id of the posture
     * @param conditions what it needs
     * @param standing whether it can be taken
     */
    record Going(
            String part,
            Optional<String> without,
            String tool,
            String posture,
            List<Condition> conditions,
            Standing standing)
            implements Step {
        public Going {
            conditions = List.copyOf(conditions);
        }
    }
}
